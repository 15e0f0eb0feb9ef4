package trestle.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The one way to judge: takes each check of a calculation in turn, keeps how it came out, and keeps
 * the sentence of what did not pass. Assumptions are noted here too.
 *
 * <pre>{@code
 * judge.check("rail-input", "input of rail 9 V", Subject.of(RailPart.INPUT_MAX, 0), trial -> trial
 *         .of(fullV, "V")
 *         .atMost(limitV, Basis.REQUEST)
 *         .stop("input-over-range", "The full pack's %.1f V is above the %.1f V ...", fullV, limitV));
 * }</pre>
 */
public final class Judge {
    private final List<Check> checks = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    /** A judge that has judged nothing. */
    public Judge() {}

    /**
     * Judges something that the verdict does not hang on alone.
     *
     * @param code stable kebab-case name of what is judged
     * @param about the same in a builder's words
     * @param subject where it stands
     * @param trial states value, limits and sentences; says nothing where all is well
     */
    public void check(String code, String about, Subject subject, Consumer<Trial> trial) {
        judge(code, about, subject, false, trial);
    }

    /**
     * Judges something without which the verdict cannot be fit.
     *
     * @param code stable kebab-case name of what is judged
     * @param about the same in a builder's words
     * @param subject where it stands
     * @param trial states value, limits and sentences; says nothing where all is well
     */
    public void essential(String code, String about, Subject subject, Consumer<Trial> trial) {
        judge(code, about, subject, true, trial);
    }

    /**
     * Says what is worth knowing and no judgement.
     *
     * @param code stable kebab-case name
     * @param subject what it is about
     * @param sentence one sentence, with places for the values as {@link String#format} has them
     * @param values the values
     */
    public void note(String code, Subject subject, String sentence, Object... values) {
        findings.add(Finding.of(Severity.NOTE, code, subject, text(sentence, values)));
    }

    /**
     * Notes a model choice that touched a number.
     *
     * @param subject what was assumed about
     * @param assumed the value taken, with its unit, or the choice made
     * @param because why, in a few words
     */
    public void assume(Subject subject, String assumed, String because) {
        assumptions.add(new Assumption(subject, assumed, because));
    }

    /**
     * Takes over what a part of the calculation thinks of its numbers.
     *
     * @param part a judgement on the same subjects
     */
    public void join(Judgement part) {
        checks.addAll(part.checks());
        findings.addAll(part.findings());
        assumptions.addAll(part.assumptions());
    }

    /**
     * What was judged so far.
     *
     * @return checks, findings and assumptions in their order
     */
    public Judgement judgement() {
        return new Judgement(checks, findings, assumptions);
    }

    /**
     * A sentence with its values, the same in every country.
     *
     * @param sentence as {@link String#format} has it
     * @param values the values
     * @return the text
     */
    public static String text(String sentence, Object... values) {
        return Sentence.filled(sentence, values);
    }

    /**
     * A value that takes long to work out: it is, where its sentence is said.
     *
     * @param value works it out
     * @return a value for a sentence
     */
    public static Supplier<String> later(Supplier<String> value) {
        return value;
    }

    private void judge(String code, String about, Subject subject, boolean essential, Consumer<Trial> trial) {
        Trial on = new Trial(subject);
        trial.accept(on);
        checks.add(on.check(code, about, essential));
        findings.addAll(on.findings());
    }

    /** An optional number from one that may be beyond all numbers. */
    static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
