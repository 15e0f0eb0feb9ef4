package trestle.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** One way to judge: what is stated once becomes a check, and a sentence where it does not pass. */
class JudgeTest {
    private enum Part {
        WHOLE,
        ITEM,
        LIMIT
    }

    private static final Subject WHOLE = Subject.of(Part.WHOLE);
    private static final Subject ITEM = Subject.of(Part.ITEM, 3);
    private static final Subject LIMIT = Subject.of(Part.LIMIT);
    private static final Basis HANDBOOK = Basis.source("A Handbook, section 4");

    private static Judgement judged(Consumer<Trial> trial) {
        Judge judge = new Judge();
        judge.check("mass", "take-off mass", WHOLE, trial);
        return judge.judgement();
    }

    private static Check check(Consumer<Trial> trial) {
        assertThat(judged(trial).checks()).hasSize(1);
        return judged(trial).checks().get(0);
    }

    private static Judgement ofMass(double massG) {
        return judged(trial -> trial.of(massG, "g")
                .atMost(7000, Basis.REQUEST)
                .stop("too-heavy", "%.0f g is above %.0f g.", massG, 7000.0)
                .atMost(6000, Basis.COMMON_PRACTICE)
                .attention("heavy", "%.0f g is above %.0f g.", massG, 6000.0)
                .atMost(5000, HANDBOOK)
                .note("not-light", "%.0f g is no light aircraft.", massG));
    }

    @Test
    void whatIsWithinEveryLimitPassesWithItsMarginToTheFirst() {
        assertThat(ofMass(4200).findings()).isEmpty();
        assertThat(ofMass(4200).checks())
                .containsExactly(new Check(
                        "mass",
                        "take-off mass",
                        WHOLE,
                        Outcome.PASSED,
                        OptionalDouble.of(4200),
                        OptionalDouble.of(7000),
                        "g",
                        OptionalDouble.of(40),
                        Basis.REQUEST,
                        List.of(),
                        false));
    }

    @Test
    void theGravestLimitThatIsPassedDecides() {
        Judgement stop = ofMass(7700);
        assertThat(stop.findings())
                .containsExactly(new Finding(
                        Severity.STOP,
                        "too-heavy",
                        "7700 g is above 7000 g.",
                        WHOLE,
                        OptionalDouble.of(7700),
                        OptionalDouble.of(7000)));
        assertThat(stop.checks().get(0).outcome()).isEqualTo(Outcome.STOP);
        assertThat(stop.checks().get(0).marginPercent()).hasValue(-10);

        Judgement attention = ofMass(6600);
        assertThat(attention.findings()).extracting(Finding::code).containsExactly("heavy");
        assertThat(attention.findings()).extracting(Finding::limit).containsExactly(OptionalDouble.of(6000));
        assertThat(attention.checks().get(0))
                .extracting(Check::outcome, Check::limit, Check::basis, Check::marginPercent)
                .containsExactly(
                        Outcome.ATTENTION, OptionalDouble.of(6000), Basis.COMMON_PRACTICE, OptionalDouble.of(-10));
    }

    /** A note asks for nothing: its check has passed, and keeps the limit that it is about. */
    @Test
    void aNoteLeavesItsCheckPassed() {
        Judgement noted = ofMass(5600);
        assertThat(noted.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
        assertThat(noted.findings()).extracting(Finding::limit).containsExactly(OptionalDouble.of(5000));
        assertThat(noted.checks().get(0))
                .extracting(Check::outcome, Check::limit, Check::marginPercent)
                .containsExactly(Outcome.PASSED, OptionalDouble.of(7000), OptionalDouble.of(20));
    }

    @Test
    void aLimitThatIsJustMetIsKept() {
        assertThat(ofMass(7000).findings()).extracting(Finding::code).containsExactly("heavy");
        assertThat(ofMass(6000).findings()).extracting(Finding::code).containsExactly("not-light");
        assertThat(ofMass(5000).findings()).isEmpty();
        Consumer<Trial> least =
                trial -> trial.of(5, "%").atLeast(5, Basis.DEFAULT).stop("thin", "Thin.");
        assertThat(judged(least).findings()).isEmpty();
    }

    @Test
    void aLeastIsHeldFromBelow() {
        Judgement thin = judged(
                trial -> trial.of(4, "%").atLeast(5, Basis.COMPUTED).attention("thin", "%.0f %% is below 5 %%.", 4.0));
        assertThat(thin.findings()).extracting(Finding::message).containsExactly("4 % is below 5 %.");
        assertThat(thin.checks().get(0).marginPercent()).hasValue(-20);
        assertThat(check(trial -> trial.of(7, "%").atLeast(5, Basis.COMPUTED).stop("thin", "Thin."))
                        .marginPercent())
                .hasValue(40);
    }

    /** What is gravest stands first; a grade that comes after a decision is not looked at. */
    @Test
    void theFirstGradeThatHoldsIsTheOnlyOne() {
        Judgement first = judged(trial -> trial.attentionIf(false, "a", "A.")
                .attentionIf(true, "b", "B.")
                .stopIf(true, "c", "C.")
                .noteIf(true, "d", "D."));
        assertThat(first.findings()).extracting(Finding::code).containsExactly("b");
        assertThat(first.checks().get(0).outcome()).isEqualTo(Outcome.ATTENTION);
        assertThat(first.checks().get(0))
                .extracting(Check::value, Check::limit, Check::unit, Check::marginPercent, Check::basis)
                .containsExactly(
                        OptionalDouble.empty(), OptionalDouble.empty(), "", OptionalDouble.empty(), Basis.COMPUTED);
        assertThat(judged(trial -> trial.stopIf(true, "c", "C.")).findings())
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(judged(trial -> trial.noteIf(true, "d", "D.").stopIf(true, "c", "C."))
                        .checks()
                        .get(0)
                        .outcome())
                .isEqualTo(Outcome.PASSED);
    }

    @Test
    void withoutANumberNoLimitIsPassed() {
        assertThat(judged(trial -> trial.atMost(1, Basis.REQUEST).stop("a", "A."))
                        .findings())
                .isEmpty();
    }

    @Test
    void aFindingPointsWhereTheTrialDoesWhenItIsGiven() {
        Judgement moved = judged(trial -> trial.at(ITEM).stopIf(true, "a", "A.").at(LIMIT));
        assertThat(moved.findings()).extracting(Finding::subject).containsExactly(ITEM);
        assertThat(moved.checks()).extracting(Check::subject).containsExactly(ITEM);
        assertThat(check(trial -> trial.at(LIMIT)).subject()).isEqualTo(LIMIT);
    }

    @Test
    void whatIsMissingIsNamed() {
        Check check = check(trial -> trial.notJudged(ITEM, LIMIT).of(9, "g").stopIf(true, "a", "A."));
        assertThat(check.outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(check.give()).containsExactly(ITEM, LIMIT);
        assertThat(judged(trial -> trial.notJudged(ITEM).stopIf(true, "a", "A."))
                        .findings())
                .isEmpty();
    }

    @Test
    void whatIsDecidedIsJudged() {
        Check check = check(trial -> trial.attentionIf(true, "a", "A.").notJudged(ITEM));
        assertThat(check.outcome()).isEqualTo(Outcome.ATTENTION);
        assertThat(check.give()).isEmpty();
        Judgement decided = judged(
                trial -> trial.attentionIf(true, "a", "A.").notJudged(List.of(ITEM), Severity.NOTE, "b", "%s.", "B"));
        assertThat(decided.findings()).extracting(Finding::code).containsExactly("a");
    }

    @Test
    void whatCannotBeJudgedMaySaySo() {
        Judgement said =
                judged(trial -> trial.notJudged(List.of(ITEM), Severity.NOTE, "no-item", "Give %s.", "an item"));
        assertThat(said.findings())
                .containsExactly(new Finding(
                        Severity.NOTE,
                        "no-item",
                        "Give an item.",
                        WHOLE,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
        assertThat(said.checks().get(0).give()).containsExactly(ITEM);
        assertThat(said.checks().get(0).outcome()).isEqualTo(Outcome.NOT_JUDGED);
    }

    /** One cause, one finding: the check does not pass, and says nothing of its own. */
    @Test
    void aGradeMayBeTakenAsSaidElsewhere() {
        Judgement silent = judged(trial -> trial.of(8, "g")
                .atMost(4, Basis.REQUEST)
                .asSaid(false, Severity.STOP)
                .asSaid(true, Severity.ATTENTION)
                .stop("a", "A."));
        assertThat(silent.findings()).isEmpty();
        assertThat(silent.checks().get(0))
                .extracting(Check::outcome, Check::limit, Check::marginPercent)
                .containsExactly(Outcome.ATTENTION, OptionalDouble.of(4), OptionalDouble.of(-100));
    }

    @Test
    void aMarginToNothingIsNone() {
        assertThat(check(trial -> trial.of(3, "m/s").atMost(0, Basis.REQUEST).stop("a", "A."))
                        .marginPercent())
                .isEmpty();
        assertThat(check(trial -> trial.of(3, "m/s")).marginPercent()).isEmpty();
        assertThat(check(trial -> trial.of(1e300, "m/s").atMost(-1e-300, Basis.REQUEST))
                        .marginPercent())
                .isEmpty();
    }

    /** A share of a negative limit is a share of its size. */
    @Test
    void aMarginCountsTheSizeOfItsLimit() {
        assertThat(check(trial -> trial.of(-5, "°C").atLeast(-20, Basis.REQUEST).stop("a", "A."))
                        .marginPercent())
                .hasValue(75);
    }

    /** How far aft a thing stands is no amount: a share of an arm tells nothing. */
    @Test
    void aPlaceHasNoMargin() {
        assertThat(check(trial -> trial.place(500, "mm")
                                .atMost(540, Basis.REQUEST)
                                .stop("a", "A."))
                        .marginPercent())
                .isEmpty();
        assertThat(check(trial -> trial.place(560, "mm")
                                .atMost(540, Basis.REQUEST)
                                .stop("a", "A."))
                        .outcome())
                .isEqualTo(Outcome.STOP);
    }

    /** What passed although it lies beyond the first limit has no margin to tell. */
    @Test
    void whatPassedBeyondItsLimitHasNoMargin() {
        assertThat(check(trial -> trial.of(8, "g").atMost(4, Basis.REQUEST)).marginPercent())
                .isEmpty();
        assertThat(check(trial -> trial.of(8, "g").atMost(4, Basis.REQUEST).note("a", "A."))
                        .marginPercent())
                .isEmpty();
        assertThat(check(trial -> trial.of(4, "g").atMost(4, Basis.REQUEST)).marginPercent())
                .hasValue(0);
    }

    @Test
    void onlyAnEssentialCheckIsEssential() {
        Judge judge = new Judge();
        judge.essential("a", "a thing", WHOLE, trial -> {});
        judge.check("b", "another", WHOLE, trial -> {});
        assertThat(judge.judgement().checks()).extracting(Check::essential).containsExactly(true, false);
        assertThat(judge.judgement().checks()).extracting(Check::code).containsExactly("a", "b");
        assertThat(judge.judgement().checks()).extracting(Check::about).containsExactly("a thing", "another");
    }

    @Test
    void notesAndAssumptionsStandBesideTheChecks() {
        Judge judge = new Judge();
        judge.note("known", ITEM, "%.1f and %d.", 1.5, 2);
        judge.assume(LIMIT, "20 °C", "none is given");
        assertThat(judge.judgement().checks()).isEmpty();
        assertThat(judge.judgement().findings())
                .containsExactly(new Finding(
                        Severity.NOTE, "known", "1.5 and 2.", ITEM, OptionalDouble.empty(), OptionalDouble.empty()));
        assertThat(judge.judgement().assumptions()).containsExactly(new Assumption(LIMIT, "20 °C", "none is given"));
    }

    @Test
    void aPartOfTheCalculationIsTakenOverWhole() {
        Judge part = new Judge();
        part.check("b", "another", ITEM, trial -> trial.stopIf(true, "bad", "Bad."));
        part.assume(LIMIT, "20 °C", "none is given");
        Judge whole = new Judge();
        whole.check("a", "a thing", WHOLE, trial -> {});
        whole.join(part.judgement());
        assertThat(whole.judgement().checks()).extracting(Check::code).containsExactly("a", "b");
        assertThat(whole.judgement().findings()).extracting(Finding::code).containsExactly("bad");
        assertThat(whole.judgement().assumptions()).hasSize(1);
    }

    @Test
    void aJudgementStaysAsItIs() {
        Judge judge = new Judge();
        judge.note("a", WHOLE, "A.");
        Judgement early = judge.judgement();
        judge.note("b", WHOLE, "B.");
        assertThat(early.findings()).hasSize(1);
        List<Check> checks = new ArrayList<>();
        Judgement copy = new Judgement(checks, List.of(), List.of());
        checks.add(check(trial -> {}));
        assertThat(copy.checks()).isEmpty();
    }

    @Test
    void numbersReadTheSameInEveryCountry() {
        Locale here = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Judge.text("%.2f g", 1.5)).isEqualTo("1.50 g");
        } finally {
            Locale.setDefault(here);
        }
    }
}
