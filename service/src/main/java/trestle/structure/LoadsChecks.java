package trestle.structure;

import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of wing and speeds. */
final class LoadsChecks {
    /** Less to spare than this asks for a test; an engineering assumption. */
    static final double THIN_RESERVE = 1.25;

    /** Tip deflection at 1 g over the half span beyond which linear theory fades; common practice. */
    static final double FAR_BENT = 0.1;

    /** Never exceed is near from this share on; common practice. */
    static final double NEAR_NEVER_EXCEED = 0.9;

    private static final Subject SPARS = Subject.of(LoadsPart.SPARS);
    private static final Basis THEORY = Basis.source("beam theory with the strengths that the assumptions list");

    private final LoadsTask task;
    private final LoadsResult result;

    private LoadsChecks(LoadsTask task, LoadsResult result) {
        this.task = task;
        this.result = result;
    }

    static Judgement of(LoadsTask task, LoadsResult result) {
        LoadsChecks checks = new LoadsChecks(task, result);
        Judge judge = new Judge();
        judge.essential("wing-strength", "weakest part of the spars at the design load", SPARS, checks::spars);
        judge.check("local-buckling", "walls of thin tubes at breaking load", SPARS, checks::buckling);
        judge.check("wing-deflection", "bend of the wing in level flight", SPARS, checks::deflection);
        JointChecks.judge(task, result, judge);
        judge.check("manoeuvre-speed", "a full pull at the fastest airspeed", at(LoadsPart.CRUISE), checks::pull);
        judge.check("gust", "a gust at the planned airspeed", at(LoadsPart.CRUISE), checks::gust);
        judge.check("never-exceed", "fastest airspeed against never exceed", at(LoadsPart.NEVER_EXCEED), checks::fast);
        PartChecks.judge(task, result, judge);
        judge.check("flutter", "flutter", at(LoadsPart.ALL), LoadsChecks::flutter);
        LoadsAssumptions.list(task, judge);
        return judge.judgement();
    }

    private static Subject at(LoadsPart part) {
        return Subject.of(part);
    }

    private static void flutter(Trial trial) {
        trial.notJudged(
                List.of(),
                Severity.NOTE,
                "flutter-not-judged",
                "Flutter is not judged: it needs stiffness, mass distribution and play, which no field describes.");
    }

    private double design() {
        return task.designLoadFactor();
    }

    private void spars(Trial trial) {
        if (result.weakest().isEmpty()) {
            trial.notJudged(
                    List.of(SPARS),
                    Severity.ATTENTION,
                    "spar-missing",
                    "The wing bends where no spar is listed: give spars from the middle outwards without a gap.");
            return;
        }
        StationStress worst = StationStress.worst(task, result.loadsAtDesign());
        double reserve = worst.stress().reserve();
        trial.of(reserve, "")
                .atLeast(1, THEORY)
                .stop(
                        "spar-too-weak",
                        "The %s bears %.0f MPa %.0f mm from the middle at %.1f g and may bear %.0f (%s): it stands %.1f g; %sstay"
                                + " below %.1f m/s.",
                        worst.spar().said(),
                        mpa(worst.stress().stressPa()),
                        1000 * worst.lateralM(),
                        design(),
                        mpa(worst.stress().allowedPa()),
                        word(worst.stress().mode()),
                        design() * reserve,
                        stronger(worst),
                        Flight.manoeuvreMPerS(result.stallMPerS(), design() * reserve))
                .atLeast(THIN_RESERVE, Basis.COMMON_PRACTICE)
                .attention(
                        "spar-reserve-thin",
                        "The %s has %.0f %% to spare at %.1f g: before flying, hang %.0f N on each half wing, %.0f mm from"
                                + " the middle.",
                        worst.spar().said(),
                        100 * (reserve - 1),
                        design(),
                        result.proof().halfWingLoadN(),
                        1000 * result.proof().lateralM());
    }

    static String word(FailureMode mode) {
        return mode.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    static double mpa(double pa) {
        return pa / 1e6;
    }

    private String stronger(StationStress worst) {
        OptionalDouble outside = worst.thickerTubeM(task);
        if (outside.isEmpty()) {
            return "use a stronger one, or ";
        }
        Section section = worst.spar().section();
        double inside = outside.getAsDouble() - section.heightM() + section.insideDiameterM();
        return "use a " + Spar.mm(outside.getAsDouble()) + "/" + Spar.mm(inside) + " mm tube, or ";
    }

    private void buckling(Trial trial) {
        StationStress.buckling(task, result.loadsAtDesign())
                .ifPresent(worst -> trial.of(worst.stress().reserve(), "")
                        .atLeast(1, Basis.source("NASA SP-8007 (from memory)"))
                        .asSaid(bucklesFirst(), Severity.ATTENTION)
                        .attention(
                                "local-buckling",
                                "The wall of the %s buckles at %.0f MPa, and %.1f g asks %.0f with the factor of safety:"
                                        + " use a thicker wall.",
                                worst.spar().said(),
                                mpa(worst.stress().allowedPa() * task.factorOfSafety()),
                                design(),
                                mpa(worst.stress().stressPa() * task.factorOfSafety())));
    }

    /** The strength of the spar is then judged by it, and has its sentence. */
    private boolean bucklesFirst() {
        return result.weakest().isPresent()
                && StationStress.worst(task, result.loadsAtDesign()).stress().mode() == FailureMode.LOCAL_BUCKLING
                && StationStress.worst(task, result.loadsAtDesign()).stress().reserve() < 1;
    }

    private void deflection(Trial trial) {
        if (result.tipOneGM().isEmpty()) {
            trial.notJudged(SPARS);
            return;
        }
        double share = Math.abs(result.tipOneGM().getAsDouble()) / task.wing().halfSpanM();
        trial.of(100 * share, "%")
                .atMost(100 * FAR_BENT, Basis.COMMON_PRACTICE)
                .note(
                        "wing-bends-far",
                        "The tip bends %.0f mm in level flight, %.0f %% of the half span: beyond 10 %% these loads are rough;"
                                + " twice the stiffness halves it.",
                        1000 * Math.abs(result.tipOneGM().getAsDouble()),
                        100 * share);
    }

    private void pull(Trial trial) {
        double fastest = Math.max(task.cruiseMPerS(), task.topMPerS().orElse(0));
        double safe = result.manoeuvreMPerS();
        trial.of(fastest, "m/s")
                .atMost(safe, Basis.COMPUTED)
                .attention(
                        "pull-can-break",
                        "Above %.1f m/s a full pull loads the wing past %.1f g; it reaches %.1f m/s: fly below %.1f m/s"
                                + " where the air or the pilot is rough, or cut the up elevator.",
                        safe,
                        result.limitLoadFactor(),
                        fastest,
                        safe);
    }

    private void gust(Trial trial) {
        double limit = result.limitLoadFactor();
        double loaded = result.gust().up(task.cruiseMPerS());
        trial.of(loaded, "")
                .atMost(limit, Basis.COMPUTED)
                .attention(
                        "gust-above-limit",
                        "A gust of %.1f m/s at %.1f m/s loads %.1f g against %.1f g: in rough air fly at %.1f m/s or less.",
                        task.gustMPerS(),
                        task.cruiseMPerS(),
                        loaded,
                        limit,
                        result.gust().speedAtMPerS(limit, task.cruiseMPerS()));
    }

    private void fast(Trial trial) {
        double fastest = Math.max(task.cruiseMPerS(), task.topMPerS().orElse(0));
        if (task.neverExceedMPerS().isEmpty()) {
            trial.notJudged(
                    List.of(at(LoadsPart.NEVER_EXCEED)),
                    Severity.NOTE,
                    "never-exceed-unknown",
                    "No never-exceed speed is stated, so none is checked; it reaches %.1f m/s.",
                    fastest);
            return;
        }
        double never = task.neverExceedMPerS().getAsDouble();
        String sentence =
                "%.1f m/s in level flight is %.0f %% of the %.1f m/s that you state as never to be exceeded: limit"
                        + " the throttle or plan slower.";
        trial.of(fastest, "m/s")
                .atMost(never, Basis.REQUEST)
                .stop("never-exceed-near", sentence, fastest, 100 * fastest / never, never)
                .atMost(NEAR_NEVER_EXCEED * never, Basis.COMMON_PRACTICE)
                .attention("never-exceed-near", sentence, fastest, 100 * fastest / never, never);
    }
}
