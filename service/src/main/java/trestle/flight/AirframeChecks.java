package trestle.flight;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;

/** Whether mass, wing and drag can be those of one aircraft of 0.5 to 60 kg, or a unit has slipped. */
public final class AirframeChecks {
    /** Aspect ratios of ordinary aircraft, and those of any: common practice, no source. */
    private static final double USUAL_ASPECT_RATIO_MIN = 3;

    private static final double USUAL_ASPECT_RATIO_MAX = 25;
    private static final double ASPECT_RATIO_MIN = 1;
    private static final double ASPECT_RATIO_MAX = 50;

    /** Wing loadings of ordinary aircraft, and those of any, g/dm²: common practice, no source. */
    private static final double USUAL_LOADING_MIN_G_PER_DM2 = 10;

    private static final double USUAL_LOADING_MAX_G_PER_DM2 = 300;
    private static final double LOADING_MIN_G_PER_DM2 = 3;
    private static final double LOADING_MAX_G_PER_DM2 = 1000;

    private static final double PLANE_WING_EFFICIENCY = 1;

    private AirframeChecks() {}

    /**
     * Judges span against area, and mass against area.
     *
     * @param airframe the aircraft
     * @param span where its span stands
     * @param mass where its mass stands
     * @param judge hears of it
     */
    public static void judge(Airframe airframe, Subject span, Subject mass, Judge judge) {
        judge.check("aspect-ratio", "span against wing area", span, trial -> aspectRatio(trial, airframe));
        judge.check("wing-loading", "take-off mass against wing area", mass, trial -> loading(trial, airframe));
    }

    /**
     * Notes an efficiency above that of a plane wing.
     *
     * @param airframe the aircraft
     * @param polar its polar
     * @param drag where it stands
     * @param judge hears of it
     */
    public static void judge(Airframe airframe, DragPolar polar, Subject drag, Judge judge) {
        double efficiency = 1 / (Math.PI * polar.inducedFactor() * airframe.aspectRatio());
        judge.check(
                "oswald-efficiency",
                "Oswald efficiency",
                drag,
                trial -> trial.of(efficiency, "")
                        .atMost(PLANE_WING_EFFICIENCY, Basis.COMMON_PRACTICE)
                        .noteIf(
                                efficiency > PLANE_WING_EFFICIENCY + 1e-9,
                                "oswald-efficiency-high",
                                "An Oswald efficiency of %.2f is above the 1 of a plane wing (common practice): keep it"
                                        + " for winglets, a closed wing or a published polar that says so, else give"
                                        + " 0.7 to 0.9.",
                                efficiency));
    }

    private static void aspectRatio(Trial trial, Airframe airframe) {
        double ratio = airframe.aspectRatio();
        double spanMm = Length.mmFromM(airframe.wingSpanM());
        double areaDm2 = Area.dm2FromM2(airframe.wingAreaM2());
        String small =
                "A span of %.0f mm on %.1f dm² makes an aspect ratio of %.2g, below %.0f (common practice): give the"
                        + " span from tip to tip, not that of one half.";
        String large =
                "A span of %.0f mm on %.1f dm² makes an aspect ratio of %.3g, above %.0f (common practice): give the"
                        + " area of both halves, in dm².";
        trial.of(ratio, "")
                .atLeast(ASPECT_RATIO_MIN, Basis.COMMON_PRACTICE)
                .stop("aspect-ratio-implausible", small, spanMm, areaDm2, ratio, ASPECT_RATIO_MIN)
                .atMost(ASPECT_RATIO_MAX, Basis.COMMON_PRACTICE)
                .stop("aspect-ratio-implausible", large, spanMm, areaDm2, ratio, ASPECT_RATIO_MAX)
                .atLeast(USUAL_ASPECT_RATIO_MIN, Basis.COMMON_PRACTICE)
                .attention("aspect-ratio-implausible", small, spanMm, areaDm2, ratio, USUAL_ASPECT_RATIO_MIN)
                .atMost(USUAL_ASPECT_RATIO_MAX, Basis.COMMON_PRACTICE)
                .attention("aspect-ratio-implausible", large, spanMm, areaDm2, ratio, USUAL_ASPECT_RATIO_MAX);
    }

    private static void loading(Trial trial, Airframe airframe) {
        double massG = Mass.gFromKg(airframe.massKg());
        double areaDm2 = Area.dm2FromM2(airframe.wingAreaM2());
        double loading = massG / areaDm2;
        String light =
                "%.0f g on %.1f dm² makes a wing loading of %.2g g/dm², below %.0f (common practice): give the mass"
                        + " in grams and the area in dm².";
        String heavy =
                "%.0f g on %.1f dm² makes a wing loading of %.0f g/dm², above %.0f (common practice): give the mass"
                        + " in grams, and the area of both halves in dm².";
        trial.of(loading, "g/dm²")
                .atLeast(LOADING_MIN_G_PER_DM2, Basis.COMMON_PRACTICE)
                .stop("wing-loading-implausible", light, massG, areaDm2, loading, LOADING_MIN_G_PER_DM2)
                .atMost(LOADING_MAX_G_PER_DM2, Basis.COMMON_PRACTICE)
                .stop("wing-loading-implausible", heavy, massG, areaDm2, loading, LOADING_MAX_G_PER_DM2)
                .atLeast(USUAL_LOADING_MIN_G_PER_DM2, Basis.COMMON_PRACTICE)
                .attention("wing-loading-implausible", light, massG, areaDm2, loading, USUAL_LOADING_MIN_G_PER_DM2)
                .atMost(USUAL_LOADING_MAX_G_PER_DM2, Basis.COMMON_PRACTICE)
                .attention("wing-loading-implausible", heavy, massG, areaDm2, loading, USUAL_LOADING_MAX_G_PER_DM2);
    }
}
