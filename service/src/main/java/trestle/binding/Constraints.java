package trestle.binding;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.MessageInterpolator;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hibernate.validator.HibernateValidator;
import trestle.endpoint.FieldUnit;

/** Holds a bound request against the ranges and sizes of the contract. */
final class Constraints {
    private static final Validator VALIDATOR = Validation.byProvider(HibernateValidator.class)
            .configure()
            .ignoreXmlConfiguration()
            .messageInterpolator(new Untouched())
            .buildValidatorFactory()
            .getValidator();

    private Constraints() {}

    /**
     * Notes every violation that is not the echo of a fault already known. Of many, only those are
     * put in words that are noted: a request may break a limit some ten thousand times.
     *
     * @param request a generated model
     * @param cutLists how many entries a list had before it was cut, by its pointer
     * @param faults so far
     */
    static void check(Object request, Map<String, Integer> cutLists, Faults faults) {
        if (faults.full()) {
            return;
        }
        VALIDATOR.validate(request).stream()
                .map(Constraints::place)
                .sorted((a, b) -> a.at.compareTo(b.at))
                .filter(placed -> !faults.cover(placed.at))
                .toList()
                .forEach(placed -> faults.add(placed.at, code(placed.constraint()), () -> words(placed, cutLists)));
    }

    /** What fields that have a form of their own look like. */
    private static final Map<String, String> FORMS = Map.of(
            "layout", ", like 7s3p",
            "size", ", like 15x8",
            "at", ", a JSON Pointer like /items/0/mass_g",
            "pick", ", a JSON Pointer like /best_range/airspeed_m_per_s");

    private record Placed(String at, String name, ConstraintViolation<?> violation) {
        String constraint() {
            return violation
                    .getConstraintDescriptor()
                    .getAnnotation()
                    .annotationType()
                    .getSimpleName();
        }
    }

    private static String code(String constraint) {
        return switch (constraint) {
            case "NotNull" -> "missing";
            case "Min", "DecimalMin" -> "below_minimum";
            case "Max", "DecimalMax" -> "above_maximum";
            case "Size" -> "wrong_size";
            default -> "wrong_form";
        };
    }

    private static String words(Placed placed, Map<String, Integer> cutLists) {
        Object value = placed.violation.getInvalidValue();
        Map<String, Object> limits = placed.violation.getConstraintDescriptor().getAttributes();
        String name = placed.name;
        return switch (code(placed.constraint())) {
            case "missing" -> name + " is missing";
            case "below_minimum" -> range(name, value, limits, "above", "at least");
            case "above_maximum" -> range(name, value, limits, "below", "at most");
            case "wrong_size" -> size(name, cutLists.getOrDefault(placed.at, sizeOf(value)), value, limits);
            default -> name + " is not of the form it must have" + FORMS.getOrDefault(name, "");
        };
    }

    private static String range(String name, Object value, Map<String, Object> limits, String open, String closed) {
        boolean exclusive = Boolean.FALSE.equals(limits.get("inclusive"));
        return String.format(
                Locale.ROOT,
                "%s is %s: it must be %s %s",
                name,
                FieldUnit.withUnit(value, name),
                exclusive ? open : closed,
                FieldUnit.withUnit(limits.get("value"), name));
    }

    private static int sizeOf(Object value) {
        return value instanceof List<?> list ? list.size() : ((String) value).length();
    }

    private static String size(String name, int size, Object value, Map<String, Object> limits) {
        String what = value instanceof List<?> ? "entries" : "characters";
        int least = (Integer) limits.get("min");
        int most = (Integer) limits.get("max");
        return String.format(
                Locale.ROOT,
                "%s has %d %s: it must have %s",
                name,
                size,
                what,
                most == Integer.MAX_VALUE ? "at least " + least : least + " to " + most);
    }

    /** Turns the path of a violation, in Java names, into a pointer in the names on the wire. */
    private static Placed place(ConstraintViolation<?> violation) {
        StringBuilder pointer = new StringBuilder();
        String name = "";
        Class<?> model = violation.getRootBeanClass();
        for (Path.Node node : violation.getPropertyPath()) {
            if (node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (node.getName() == null || node.getName().startsWith("<")) {
                continue;
            }
            Shape shape = Shape.of(model);
            name = shape.wireNames().get(node.getName());
            pointer.append('/').append(name);
            model = next(shape.fields().get(name));
        }
        return new Placed(pointer.toString(), name, violation);
    }

    private static Class<?> next(Shape.Kind kind) {
        if (kind instanceof Shape.Listed listed) {
            return next(listed.element());
        }
        return kind instanceof Shape.Nested nested ? nested.model() : Object.class;
    }

    /**
     * Leaves messages as they are: ours are made from the constraint itself, and the stock
     * interpolator would bring an expression language for texts that nobody sees.
     */
    private static final class Untouched implements MessageInterpolator {
        @Override
        public String interpolate(String template, Context context) {
            return template;
        }

        @Override
        public String interpolate(String template, Context context, Locale locale) {
            return template;
        }
    }
}
