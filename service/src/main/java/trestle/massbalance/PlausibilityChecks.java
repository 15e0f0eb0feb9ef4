package trestle.massbalance;

import java.util.Comparator;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;

/**
 * The checks of masses and sizes against what such an aircraft can have, which catch slips of the keyboard; every bound is
 * common practice, no source.
 */
final class PlausibilityChecks {
    static final double LIGHTEST_KG = 0.5;
    static final double HEAVIEST_KG = 60;

    /** Beyond a bound by this factor a mass is a slip and no odd aircraft. */
    static final double FAR_FACTOR = 10;

    /** Mass over area to the power of 1.5, kg/m³: about 3 for a solar aircraft, 8 for a mapping one, 35 for a dense one. */
    static final double LEAST_CUBIC_LOADING = 1.5;

    static final double GREATEST_CUBIC_LOADING = 60;

    static final double LEAST_ASPECT_RATIO = 2;
    static final double GREATEST_ASPECT_RATIO = 25;
    static final double FAR_ASPECT_FACTOR = 2;

    /** A wing both this slender and this lightly loaded is a usual one with its whole span typed for one half. */
    static final double DOUBLED_ASPECT_RATIO = 19;

    static final double DOUBLED_CUBIC_LOADING = 3.5;

    static final double LEAST_TAIL_VOLUME = 0.1;
    static final double GREATEST_TAIL_VOLUME = 2.5;

    private static final Subject ITEMS = Subject.of(BalancePart.ITEMS);
    private static final Subject PANELS = Subject.of(BalancePart.PANELS);
    private static final Subject TAIL = Subject.of(BalancePart.TAIL);

    static final double LEAST_ROLL_RATIO = 0.12;
    static final double GREATEST_ROLL_RATIO = 0.45;

    private static final Basis ROLL_BASIS = Basis.source(
            "R. Beard, T. McLain, Small Unmanned Aircraft: two aircraft, second-hand; with room on both sides");

    private static final Subject ITEM_SPREAD = Subject.of(BalancePart.ITEMS);

    private final Situation found;

    private PlausibilityChecks(Situation found) {
        this.found = found;
    }

    static void judge(Situation found, Judge judge) {
        PlausibilityChecks checks = new PlausibilityChecks(found);
        judge.check("plausible-mass", "total mass against what such aircraft have", ITEMS, checks::mass);
        judge.check("plausible-span", "aspect ratio against what such aircraft have", PANELS, checks::span);
        judge.check("plausible-wing-loading", "wing loading against what such aircraft have", PANELS, checks::loading);
        judge.check("plausible-tail", "tail volume against what such aircraft have", TAIL, checks::tail);
    }

    /**
     * Roll radius of gyration over half the span: 0.17 to 0.38 on two published small aircraft (R. Beard, T. McLain, Small
     * Unmanned Aircraft), with room on both sides.
     */
    static void rollInertia(Optional<Inertia> inertia, Situation found, Judge judge) {
        judge.check("plausible-roll-inertia", "roll inertia against what such aircraft have", ITEMS, trial -> {
            if (inertia.isEmpty()) {
                trial.notJudged(ITEM_SPREAD);
                return;
            }
            double halfSpanM = found.planform().orElseThrow().spanM() / 2;
            double ratio = Math.sqrt(inertia.get().rollKgM2() / found.list().massKg()) / halfSpanM;
            String sentence =
                    "The roll radius of gyration is %.3f of half the span (usual: %.2f to %.2f): an item that lies"
                            + " along the wing or tail probably lacks its spread, or has a wrong one.";
            trial.of(ratio, "")
                    .atMost(GREATEST_ROLL_RATIO, ROLL_BASIS)
                    .attention("roll-inertia-implausible", sentence, ratio, LEAST_ROLL_RATIO, GREATEST_ROLL_RATIO)
                    .atLeast(LEAST_ROLL_RATIO, ROLL_BASIS)
                    .attention("roll-inertia-implausible", sentence, ratio, LEAST_ROLL_RATIO, GREATEST_ROLL_RATIO);
        });
    }

    private boolean light() {
        return found.centre().massKg() < LIGHTEST_KG;
    }

    private boolean heavy() {
        return found.centre().massKg() > HEAVIEST_KG;
    }

    private void mass(Trial trial) {
        double massKg = found.centre().massKg();
        Item heaviest = found.task().items().stream()
                .max(Comparator.comparingDouble(Item::totalMassKg))
                .orElseThrow();
        String low =
                "All on board weighs %s, below the %.0f g of the lightest aircraft of this kind (common practice): look"
                        + " for masses typed in kg, as mass_g and reading_g count in g.";
        String high =
                "All on board weighs %.0f g, above the %.0f g of the heaviest aircraft of this kind (common practice),"
                        + " most of it the %s: look for a mass of a whole batch in mass_g, which is that of one piece, or in another"
                        + " unit.";
        Trial held = trial.of(Mass.gFromKg(massKg), "g");
        if (light()) {
            held.atLeast(Mass.gFromKg(LIGHTEST_KG), Basis.COMMON_PRACTICE)
                    .stopIf(
                            massKg < LIGHTEST_KG / FAR_FACTOR,
                            "mass-implausibly-low",
                            low,
                            Said.mass(massKg),
                            Mass.gFromKg(LIGHTEST_KG))
                    .attention("mass-implausibly-low", low, Said.mass(massKg), Mass.gFromKg(LIGHTEST_KG));
        } else {
            held.atMost(Mass.gFromKg(HEAVIEST_KG), Basis.COMMON_PRACTICE)
                    .stopIf(
                            massKg > HEAVIEST_KG * FAR_FACTOR,
                            "mass-implausibly-high",
                            high,
                            Mass.gFromKg(massKg),
                            Mass.gFromKg(HEAVIEST_KG),
                            heaviest.name())
                    .attention(
                            "mass-implausibly-high",
                            high,
                            Mass.gFromKg(massKg),
                            Mass.gFromKg(HEAVIEST_KG),
                            heaviest.name());
        }
    }

    private double cubicLoading(Planform wing) {
        return found.centre().massKg() / Math.pow(wing.areaM2(), 1.5);
    }

    private boolean doubled(Planform wing) {
        return wing.aspectRatio() > DOUBLED_ASPECT_RATIO && cubicLoading(wing) < DOUBLED_CUBIC_LOADING && !light();
    }

    private boolean spanOff(Planform wing) {
        return doubled(wing) || wing.aspectRatio() > GREATEST_ASPECT_RATIO || wing.aspectRatio() < LEAST_ASPECT_RATIO;
    }

    private void span(Trial trial) {
        if (found.planform().isEmpty()) {
            trial.notJudged(Subject.of(BalancePart.WING));
            return;
        }
        Planform wing = found.planform().get();
        double aspect = wing.aspectRatio();
        String slender = "A span of %.0f mm on a mean aerodynamic chord of %.0f mm is an aspect ratio of %.1f (common"
                + " practice: %.0f to %.0f): look for the whole span typed for one half, as the panels' span_mm adds up to"
                + " half the span.";
        String stubby = "A span of %.0f mm on a mean aerodynamic chord of %.0f mm is an aspect ratio of %.2f (common"
                + " practice: %.0f to %.0f): look for a span typed in cm, or a chord that is too large.";
        String light =
                "A wing of %.0f mm span and aspect ratio %.1f that carries only %.1f g/dm² is rare (common practice):"
                        + " look for the whole span typed for one half, as the panels' span_mm adds up to half the span.";
        Object[] numbers = {
            Length.mmFromM(wing.spanM()),
            Length.mmFromM(wing.meanAerodynamicChordM()),
            aspect,
            LEAST_ASPECT_RATIO,
            GREATEST_ASPECT_RATIO
        };
        trial.of(aspect, "")
                .atMost(GREATEST_ASPECT_RATIO, Basis.COMMON_PRACTICE)
                .stopIf(aspect > FAR_ASPECT_FACTOR * GREATEST_ASPECT_RATIO, "span-implausibly-long", slender, numbers)
                .attention("span-implausibly-long", slender, numbers)
                .attentionIf(
                        doubled(wing),
                        "span-implausibly-long",
                        light,
                        Length.mmFromM(wing.spanM()),
                        aspect,
                        gPerDm2(found.centre().massKg() / wing.areaM2()))
                .atLeast(LEAST_ASPECT_RATIO, Basis.COMMON_PRACTICE)
                .stopIf(aspect < LEAST_ASPECT_RATIO / FAR_ASPECT_FACTOR / 2, "span-implausibly-short", stubby, numbers)
                .attention("span-implausibly-short", stubby, numbers);
    }

    private void loading(Trial trial) {
        if (found.planform().isEmpty()) {
            trial.notJudged(Subject.of(BalancePart.WING));
            return;
        }
        Planform wing = found.planform().get();
        double perM2 = found.centre().massKg() / wing.areaM2();
        double least = gPerDm2(LEAST_CUBIC_LOADING * Math.sqrt(wing.areaM2()));
        double most = gPerDm2(GREATEST_CUBIC_LOADING * Math.sqrt(wing.areaM2()));
        double loading = gPerDm2(perM2);
        String sentence =
                "The wing loading of %.1f g/dm² is %s the %.0f g/dm² that a wing of %.1f dm² carries %s (common"
                        + " practice): check the masses in g and the panels' chords and spans in mm, one half of the wing.";
        double dm2 = Area.dm2FromM2(wing.areaM2());
        boolean said = light() || heavy() || spanOff(wing);
        trial.of(loading, "g/dm²")
                .atMost(most, Basis.COMMON_PRACTICE)
                .asSaid(said && loading > most, Severity.ATTENTION)
                .stopIf(
                        loading > FAR_FACTOR * most,
                        "wing-loading-implausible",
                        sentence,
                        loading,
                        "above",
                        most,
                        dm2,
                        "at most")
                .attention("wing-loading-implausible", sentence, loading, "above", most, dm2, "at most")
                .atLeast(least, Basis.COMMON_PRACTICE)
                .asSaid(said && loading < least, Severity.ATTENTION)
                .stopIf(
                        loading < least / FAR_FACTOR,
                        "wing-loading-implausible",
                        sentence,
                        loading,
                        "below",
                        least,
                        dm2,
                        "at least")
                .attention("wing-loading-implausible", sentence, loading, "below", least, dm2, "at least");
    }

    private static double gPerDm2(double kgPerM2) {
        return Mass.gFromKg(kgPerM2) / Area.dm2FromM2(1);
    }

    private void tail(Trial trial) {
        double volume = found.neutralPoint().map(NeutralPoint::tailVolumeRatio).orElse(0.0);
        if (volume == 0) {
            trial.notJudged(found.planform().isEmpty() ? Subject.of(BalancePart.WING) : Subject.of(BalancePart.TAIL));
            return;
        }
        String sentence =
                "The tail volume coefficient is %.2f (common practice: %.1f to %.1f): check area_dm2 of the tail,"
                        + " in dm², and its arm.";
        boolean said = spanOff(found.planform().orElseThrow());
        trial.of(volume, "")
                .atMost(GREATEST_TAIL_VOLUME, Basis.COMMON_PRACTICE)
                .asSaid(said && (volume > GREATEST_TAIL_VOLUME || volume < LEAST_TAIL_VOLUME), Severity.ATTENTION)
                .stopIf(
                        volume > FAR_FACTOR * GREATEST_TAIL_VOLUME,
                        "tail-implausible",
                        sentence,
                        volume,
                        LEAST_TAIL_VOLUME,
                        GREATEST_TAIL_VOLUME)
                .attention("tail-implausible", sentence, volume, LEAST_TAIL_VOLUME, GREATEST_TAIL_VOLUME)
                .atLeast(LEAST_TAIL_VOLUME, Basis.COMMON_PRACTICE)
                .attention("tail-implausible", sentence, volume, LEAST_TAIL_VOLUME, GREATEST_TAIL_VOLUME);
    }
}
