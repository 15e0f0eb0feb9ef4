package trestle.study;

import java.util.List;
import java.util.Locale;
import trestle.binding.FieldPath;
import trestle.endpoint.FieldUnit;

/** How a study speaks of the fields of another calculation. */
final class StudyWords {
    static final List<String> CAUTIONS = List.of(
            "A study is as good as its base and its calculation, and judges nothing of the aircraft: ask the calculation itself at"
                    + " what you choose, and read its findings and cautions before you build or fly it.");

    private StudyWords() {}

    /** The unit of a field, 1 for a pure number. */
    static String unit(FieldPath path) {
        String unit = FieldUnit.of(path.pointer());
        return unit.isEmpty() ? "1" : unit;
    }

    /** A field in words, without its unit: {@code launch.stretch_m} is "launch stretch". */
    static String named(FieldPath path) {
        String last =
                path.steps().isEmpty() ? "" : path.steps().get(path.steps().size() - 1);
        String unit = FieldUnit.suffixOf(last);
        String bare = last.substring(0, last.length() - unit.length()).replace('_', ' ');
        return bare.isBlank() ? last : bare;
    }

    /** The same with the unit behind it, as an axis has it. */
    static String titled(FieldPath path) {
        String unit = FieldUnit.of(path.pointer());
        return unit.isEmpty() ? named(path) : named(path) + ", " + unit;
    }

    static String measured(FieldPath path, double value) {
        String unit = FieldUnit.of(path.pointer());
        return unit.isEmpty() ? number(value) : number(value) + " " + unit;
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.4g", value)
                .replaceAll("(\\.[0-9]*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
