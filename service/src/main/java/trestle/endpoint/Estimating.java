package trestle.endpoint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import trestle.api.Field;
import trestle.api.model.ApiFault;
import trestle.estimate.Draw;
import trestle.estimate.Estimate;
import trestle.estimate.Spread;

/**
 * One pass over a request before it is read: puts an estimate where the request says nothing, at one draw of all that is
 * not known, and notes each. Where estimating is forbidden it notes instead what is missing.
 */
public final class Estimating {
    /** A bound that a builder gives is taken as two standard deviations, here as everywhere. */
    private static final double DEVIATIONS_IN_A_BOUND = 2;

    private final Draw draw;
    private final boolean allowed;
    private final Map<String, Unknown> unknowns = new LinkedHashMap<>();
    private final List<ApiFault> faults = new ArrayList<>();
    private final List<ApiFault> impossible = new ArrayList<>();

    /**
     * A pass at one draw.
     *
     * @param draw a deviate for each unknown, by its pointer
     * @param allowed whether what is left out may be estimated
     */
    Estimating(Draw draw, boolean allowed) {
        this.draw = draw;
        this.allowed = allowed;
    }

    /**
     * Whether what is left out may be estimated.
     *
     * @return false where the request must say it all
     */
    public boolean allowed() {
        return allowed;
    }

    /**
     * The number given, or an estimate of one that nothing else may stand in for.
     *
     * @param given value of the request, or null
     * @param field its field
     * @param owner JSON Pointer of the object that it belongs to
     * @param rule estimates it, in the unit of the field
     * @return a number; null where it is missing and must not be estimated, which is noted
     */
    public Double needed(Double given, Field<?> field, String owner, Supplier<Estimate> rule) {
        if (given == null && !allowed) {
            missing(field.at(owner), field.name());
            return null;
        }
        return usual(given, field, owner, rule);
    }

    /**
     * The number given, or an estimate of one that has a default too.
     *
     * @param given value of the request, or null
     * @param field its field
     * @param owner JSON Pointer of the object that it belongs to
     * @param rule estimates it, in the unit of the field
     * @return a number; null where it is not given and must not be estimated: the reading takes the default
     */
    public Double usual(Double given, Field<?> field, String owner, Supplier<Estimate> rule) {
        if (given != null || !allowed) {
            return given;
        }
        return drawn(field.at(owner), rule.get());
    }

    /**
     * A number that is taken as known but for how well a model, or what is given, holds.
     *
     * @param at JSON Pointer of what would make it known
     * @param rule how far it may lie off
     * @return the number at this draw; that at the median where nothing may be estimated
     */
    public double drawn(String at, Estimate rule) {
        if (!allowed) {
            return rule.spread().median();
        }
        unknowns.put(at, new Unknown(at, rule.spread(), rule.from(), rule.source(), false));
        double own = draw.z(at);
        double z = rule.link()
                .filter(link -> unknowns.containsKey(link.unknown()))
                .map(link -> link.deviate(draw.z(link.unknown()), own))
                .orElse(own);
        return rule.spread().at(z);
    }

    /**
     * A number that is given with a bound on its error.
     *
     * @param value the number, or null
     * @param bound the bound on either side, or null
     * @param at JSON Pointer of the number
     * @return the number at this draw; null where none is given
     */
    public Double within(Double value, Double bound, String at) {
        if (value == null || bound == null || bound == 0) {
            return value;
        }
        Spread spread = Spread.normal(value, bound / DEVIATIONS_IN_A_BOUND);
        unknowns.put(at, new Unknown(at, spread, FieldUnit.withUnit(bound, at) + " either way", "the request", true));
        return spread.at(draw.z(at));
    }

    /** Notes that a field is missing. */
    public void missing(String at, String name) {
        faults.add(new ApiFault(at, "missing", name + " is missing"));
    }

    /** Notes that one thing is said twice. */
    public void contradiction(String at, String message) {
        impossible.add(new ApiFault(at, "contradiction", message));
    }

    /** Notes that no rule reaches what is asked. */
    public void outOfReach(String at, String message) {
        impossible.add(new ApiFault(at, "no_estimate", message));
    }

    /**
     * Throws if anything is missing, or beyond every rule.
     *
     * @throws MissingFields where the request must say more
     * @throws ImpossibleRequest where what is asked for lies outside the rules
     */
    public void refuseMissing() {
        if (!faults.isEmpty()) {
            throw new MissingFields(faults);
        }
        if (!impossible.isEmpty()) {
            throw new ImpossibleRequest(impossible);
        }
    }

    /** What is not known for sure, in the order in which it was met. */
    List<Unknown> unknowns() {
        return List.copyOf(unknowns.values());
    }
}
