package trestle.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One check while it is judged. State the value, then each limit with what is to be said beyond it,
 * the gravest first: the first that is passed decides, and the rest are not looked at. A check that
 * says nothing has passed; its margin is to the first limit.
 */
public final class Trial {
    /** On which side of a limit a value is well. */
    private enum Side {
        AT_MOST,
        AT_LEAST
    }

    private Subject subject;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Subject> give = new ArrayList<>();
    private Outcome outcome;
    private OptionalDouble value = OptionalDouble.empty();
    private String unit = "";
    private boolean placed;
    private Held held;
    private Held reported;

    /** A limit as it is held against the value. */
    private record Held(double limit, Side side, Basis basis) {}

    Trial(Subject subject) {
        this.subject = subject;
    }

    /**
     * The number that is judged.
     *
     * @param judged the number
     * @param in its unit as printed; empty for a pure number
     * @return this
     */
    public Trial of(double judged, String in) {
        value = OptionalDouble.of(judged);
        unit = in;
        return this;
    }

    /**
     * The place that is judged, counted from an origin that is anyone's choice, so that a share of its limit would mean
     * nothing: no margin is told.
     *
     * @param judged the place
     * @param in its unit as printed
     * @return this
     */
    public Trial place(double judged, String in) {
        placed = true;
        return of(judged, in);
    }

    /**
     * Holds the number against a maximum from here on.
     *
     * @param limit the maximum
     * @param basis where it is from
     * @return this
     */
    public Trial atMost(double limit, Basis basis) {
        return hold(new Held(limit, Side.AT_MOST, basis));
    }

    /**
     * Holds the number against a minimum from here on.
     *
     * @param limit the minimum
     * @param basis where it is from
     * @return this
     */
    public Trial atLeast(double limit, Basis basis) {
        return hold(new Held(limit, Side.AT_LEAST, basis));
    }

    /**
     * Points elsewhere from here on.
     *
     * @param where what the builder has to look at
     * @return this
     */
    public Trial at(Subject where) {
        if (outcome == null) {
            subject = where;
        }
        return this;
    }

    /**
     * Stops where the number is beyond the limit that is held.
     *
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial stop(String code, String sentence, Object... values) {
        return stopIf(beyond(), code, sentence, values);
    }

    /**
     * Asks for attention where the number is beyond the limit that is held.
     *
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial attention(String code, String sentence, Object... values) {
        return attentionIf(beyond(), code, sentence, values);
    }

    /**
     * Notes where the number is beyond the limit that is held; the check has passed all the same.
     *
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial note(String code, String sentence, Object... values) {
        return noteIf(beyond(), code, sentence, values);
    }

    /**
     * Stops.
     *
     * @param broken whether
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial stopIf(boolean broken, String code, String sentence, Object... values) {
        return decide(broken, Severity.STOP, code, sentence, values);
    }

    /**
     * Asks for attention.
     *
     * @param broken whether
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial attentionIf(boolean broken, String code, String sentence, Object... values) {
        return decide(broken, Severity.ATTENTION, code, sentence, values);
    }

    /**
     * Notes; the check has passed all the same.
     *
     * @param broken whether
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial noteIf(boolean broken, String code, String sentence, Object... values) {
        return decide(broken, Severity.NOTE, code, sentence, values);
    }

    /**
     * Takes a grade without a sentence, where the finding of another check already says it: one cause, one finding.
     *
     * @param broken whether
     * @param severity the grade
     * @return this
     */
    public Trial asSaid(boolean broken, Severity severity) {
        grade(broken, severity);
        return this;
    }

    /**
     * Says that this cannot be judged.
     *
     * @param missing what would let it be
     * @return this
     */
    public Trial notJudged(Subject... missing) {
        if (outcome == null) {
            outcome = Outcome.NOT_JUDGED;
            give.addAll(List.of(missing));
        }
        return this;
    }

    /**
     * Says that this cannot be judged, in a sentence of its own.
     *
     * @param missing what would let it be
     * @param severity of the finding
     * @param code of the finding
     * @param sentence with places for the values
     * @param values the values
     * @return this
     */
    public Trial notJudged(List<Subject> missing, Severity severity, String code, String sentence, Object... values) {
        if (outcome == null) {
            notJudged(missing.toArray(Subject[]::new));
            findings.add(finding(severity, code, sentence, values));
        }
        return this;
    }

    Check check(String code, String about, boolean essential) {
        return new Check(
                code,
                about,
                subject,
                outcome == null ? Outcome.PASSED : outcome,
                value,
                reported == null ? OptionalDouble.empty() : OptionalDouble.of(reported.limit()),
                unit,
                margin(),
                reported == null ? Basis.COMPUTED : reported.basis(),
                give,
                essential);
    }

    List<Finding> findings() {
        return findings;
    }

    private Trial hold(Held next) {
        held = next;
        if (reported == null) {
            reported = next;
        }
        return this;
    }

    private boolean beyond() {
        if (value.isEmpty()) {
            return false;
        }
        double judged = value.getAsDouble();
        return held.side() == Side.AT_MOST ? judged > held.limit() : judged < held.limit();
    }

    private Trial decide(boolean broken, Severity severity, String code, String sentence, Object... values) {
        if (grade(broken, severity)) {
            findings.add(finding(severity, code, sentence, values));
        }
        return this;
    }

    private boolean grade(boolean broken, Severity severity) {
        if (!broken || outcome != null) {
            return false;
        }
        outcome = switch (severity) {
            case STOP -> Outcome.STOP;
            case ATTENTION -> Outcome.ATTENTION;
            case NOTE -> Outcome.PASSED;
        };
        if (held != null && severity != Severity.NOTE) {
            reported = held;
        }
        return true;
    }

    private Finding finding(Severity severity, String code, String sentence, Object... values) {
        OptionalDouble limit = held == null ? OptionalDouble.empty() : OptionalDouble.of(held.limit());
        return new Finding(severity, code, Judge.text(sentence, values), subject, value, limit);
    }

    private OptionalDouble margin() {
        if (placed || value.isEmpty() || reported == null || reported.limit() == 0) {
            return OptionalDouble.empty();
        }
        double room = reported.side() == Side.AT_MOST
                ? reported.limit() - value.getAsDouble()
                : value.getAsDouble() - reported.limit();
        boolean wellAndBeyond = room < 0 && (outcome == null || outcome == Outcome.PASSED);
        return wellAndBeyond ? OptionalDouble.empty() : Judge.finite(100 * room / Math.abs(reported.limit()));
    }
}
