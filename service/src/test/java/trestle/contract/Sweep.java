package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import trestle.api.model.ApiFault;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.binding.Reason;
import trestle.binding.Refusal;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.Done;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MissingFields;
import trestle.figure.Theme;

/**
 * Asks a calculation for whatever it lets in, and says what is wrong with what comes back.
 *
 * @param calculation its name
 * @param schema of its request
 */
record Sweep(String calculation, JsonNode schema) {
    /** No valid request may cost more, however busy the machine is. */
    private static final long MOST_CPU_NS = 1_000_000_000;

    /** They are priced before they run, at up to a minute. */
    private static final long MOST_CPU_OF_A_STUDY_NS = 60_000_000_000L;

    /** What a contradiction asks for is done this often, so that the end itself gets its turn. */
    private static final int MOST_REPAIRS = 4;

    private static final Pattern JAVA_NAME = Pattern.compile(
            "\\b[a-z]{2,}[A-Z]\\w+|\\b(?:java|trestle|com|org)\\.\\w|Exception|\\bnull\\b|NaN|Infinity");

    /**
     * What came of one request.
     *
     * @param answered whether there was an answer, and no refusal
     * @param faults what is wrong with it
     */
    record Outcome(boolean answered, Set<String> faults) {}

    static Sweep of(String calculation) {
        return new Sweep(calculation, Contract.request(calculation));
    }

    /** A request with one field at one of its ends, and what that field needs or excludes mended. */
    Outcome tried(JsonNode base, End end) {
        ObjectNode request = Trees.with(base, schema, end.at(), end.value());
        for (int repair = 0; repair < MOST_REPAIRS; repair++) {
            try {
                return asked(request);
            } catch (Refusal refused) {
                return new Outcome(false, refused(refused));
            } catch (ImpossibleRequest | MissingFields impossible) {
                List<ApiFault> told = impossible instanceof MissingFields missing
                        ? missing.faults()
                        : ((ImpossibleRequest) impossible).faults();
                Set<String> faults = refused(told);
                ObjectNode mended = mended(request, told, end.at());
                if (!faults.isEmpty() || mended.equals(request)) {
                    return new Outcome(false, faults);
                }
                request = mended;
            } catch (RuntimeException | StackOverflowError thrown) {
                return new Outcome(
                        false,
                        Set.of("throws " + thrown.getClass().getSimpleName() + " in "
                                + thrown.getStackTrace()[0].getFileName()));
            }
        }
        return new Outcome(false, Set.of());
    }

    private Outcome asked(JsonNode request) {
        Calculation<?, ?, ?, ?> asked = Catalogue.named(calculation).orElseThrow();
        long before = cpuNs();
        JsonNode answer = answer(asked, request.deepCopy());
        long tookNs = cpuNs() - before;
        Set<String> faults = new LinkedHashSet<>();
        Misfits.of(answer, Contract.answer(calculation))
                .forEach(misfit -> faults.add("answers " + misfit.replaceAll("[0-9][0-9.E-]*", "#")));
        Places.unknown(answer, schema).forEach(at -> faults.add("points at " + at));
        if (tookNs
                > (Catalogue.isStudy(Catalogue.named(calculation).orElseThrow())
                        ? MOST_CPU_OF_A_STUDY_NS
                        : MOST_CPU_NS)) {
            faults.add("is slow");
        }
        return new Outcome(true, faults);
    }

    private static <Q, R, W, A> JsonNode answer(Calculation<Q, R, W, A> calculation, JsonNode request) {
        Done<Q, R, W> done = calculation.done(Binder.bind(request, calculation.requestType()), Certainty.ESTIMATED);
        ObjectNode answer = (ObjectNode) Json.MAPPER.valueToTree(calculation.answer(done));
        answer.set("workings", Json.MAPPER.valueToTree(calculation.workings(done)));
        String figure = calculation.figure(done, Theme.LIGHT);
        if (figure.contains("NaN") || figure.contains("Infinity")) {
            throw new IllegalStateException("a figure with a number that is none");
        }
        return answer;
    }

    private static Set<String> refused(Refusal refusal) {
        return refusal.reason() == Reason.IMPOSSIBLE
                ? Set.of()
                : Set.of("breaks the contract at "
                        + refusal.faults().stream().map(ApiFault::at).toList());
    }

    private Set<String> refused(List<ApiFault> faults) {
        Set<String> wrong = new LinkedHashSet<>();
        if (faults.isEmpty()) {
            wrong.add("is refused without a word");
        }
        for (ApiFault fault : faults) {
            if (JAVA_NAME.matcher(fault.message()).find()) {
                wrong.add("is told \"" + fault.message().replaceAll("[0-9][0-9.E-]*", "#") + "\"");
            }
            if (!Contract.hasPlace(schema, fault.at())) {
                wrong.add("is pointed at " + fault.at());
            }
        }
        return wrong;
    }

    private ObjectNode mended(ObjectNode request, List<ApiFault> faults, String at) {
        ObjectNode mended = request;
        for (ApiFault fault : faults) {
            boolean own = (at + "/").startsWith(fault.at() + "/");
            if (own || !Contract.hasPlace(schema, fault.at())) {
                continue;
            }
            if (fault.code().equals("missing")) {
                JsonNode value = Trees.least(Contract.at(schema, fault.at()));
                mended = Trees.with(mended, schema, fault.at(), value);
            } else if (fault.code().equals("contradiction")) {
                mended = Trees.without(mended, schema, fault.at());
            }
        }
        return mended;
    }

    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
