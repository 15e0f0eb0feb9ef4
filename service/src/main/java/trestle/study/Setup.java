package trestle.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import trestle.api.model.ApiFault;
import trestle.api.model.ApiStudiedCalculation;
import trestle.binding.Binder;
import trestle.binding.FieldPath;
import trestle.binding.Json;
import trestle.binding.Nearest;
import trestle.binding.PathCheck;
import trestle.binding.Refusal;
import trestle.endpoint.Calculation;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.PartName;

/**
 * Reads what every study is told: which calculation, its request, and what is wanted of its answer.
 *
 * @param lookup finds a calculation by its name
 */
record Setup(Function<String, Calculation<?, ?, ?, ?>> lookup) {

    /**
     * A figure that is wanted.
     *
     * @param pick its pointer in the answer
     * @param at JSON Pointer of that pointer in the study's request
     */
    record Wanted(String pick, String at) {
        static List<Wanted> of(List<String> picks, String at) {
            return IntStream.range(0, picks.size())
                    .mapToObj(i -> new Wanted(picks.get(i), at + "/" + i))
                    .toList();
        }
    }

    /**
     * What is studied.
     *
     * @param named the calculation
     * @param base its request
     * @param part of it, or null
     * @param run of that part, or null
     * @param picks the figures of its answer that are wanted
     * @return the calculation with its base, which it has taken once
     * @throws ImpossibleRequest with every fault found
     */
    Studied<?, ?, ?> of(
            ApiStudiedCalculation named, Map<String, Object> base, String part, String run, List<Wanted> picks) {
        Calculation<?, ?, ?, ?> calculation = part(lookup.apply(named.value()), part, run);
        List<FieldPath> paths = new ArrayList<>();
        List<ApiFault> faults = new ArrayList<>();
        for (Wanted wanted : picks) {
            FieldPath path = FieldPath.ofPointer(wanted.pick());
            paths.add(path);
            PathCheck.objection(path, calculation.answerType(), "in the answer")
                    .ifPresent(because -> faults.add(new ApiFault(wanted.at(), "nothing_to_pick", because)));
        }
        if (!faults.isEmpty()) {
            throw new ImpossibleRequest(faults);
        }
        ObjectNode typed = Json.MAPPER.valueToTree(base);
        Studied<?, ?, ?> studied = new Studied<>(calculation, typed, paths);
        required(studied);
        return studied;
    }

    private static Calculation<?, ?, ?, ?> part(Calculation<?, ?, ?, ?> calculation, String part, String run) {
        if (part == null) {
            if (run != null) {
                throw fault("/review_run", "contradiction", "review_run goes with review_part only");
            }
            return calculation;
        }
        if (!calculation.parts().contains(part)) {
            throw fault(
                    "/review_part",
                    "unknown_value",
                    calculation.parts().isEmpty()
                            ? calculation.name() + " is answered whole"
                            : Nearest.to(part, calculation.parts(), "a part of " + calculation.name()));
        }
        return calculation.part(new PartName(part, Optional.ofNullable(run)));
    }

    /** A base that is wrong by itself is wrong at every point: it is said once, at its own places. */
    private static void required(Studied<?, ?, ?> studied) {
        try {
            // Binding reads numbers that stand as text, in place; from here on the base has its types.
            Binder.bindEither(studied.base(), studied.calculation().requestType());
            studied.answer(Map.of());
        } catch (Refusal refused) {
            List<ApiFault> within = refused.faults().stream()
                    .map(fault -> new ApiFault("/base" + fault.at(), fault.code(), fault.message()))
                    .toList();
            throw within.isEmpty()
                    ? fault("/base", "refused", String.valueOf(refused.getMessage()))
                    : new ImpossibleRequest(within);
        }
    }

    /**
     * The way to a value of the request, which the study sets.
     *
     * @param studied what is studied
     * @param pointer of the request
     * @param at JSON Pointer of that pointer
     * @return the way
     * @throws ImpossibleRequest where no value can stand there
     */
    static FieldPath place(Studied<?, ?, ?> studied, String pointer, String at) {
        FieldPath path = FieldPath.ofPointer(pointer);
        PathCheck.objection(path, studied.calculation().requestType(), "a field here")
                .ifPresent(because -> {
                    throw fault(at, "no_such_place", because);
                });
        return path;
    }

    static ImpossibleRequest fault(String at, String code, String message) {
        return new ImpossibleRequest(List.of(new ApiFault(at, code, message)));
    }
}
