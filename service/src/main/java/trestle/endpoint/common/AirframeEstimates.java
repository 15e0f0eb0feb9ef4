package trestle.endpoint.common;

import java.util.Locale;
import java.util.Optional;
import trestle.api.Field;
import trestle.api.model.ApiAirframeKind;
import trestle.api.model.ApiConditions;
import trestle.api.model.ApiDragPolar;
import trestle.api.model.ApiWingSection;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.endpoint.Estimating;
import trestle.endpoint.Reading;
import trestle.estimate.AirframeKind;
import trestle.estimate.Estimate;
import trestle.estimate.SpanEfficiency;
import trestle.estimate.SystemsPower;
import trestle.estimate.WingSection;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;

/**
 * Estimates drag and lift of an airframe from what is known of it.
 *
 * @param massG mass at take-off, g
 * @param wingAreaDm2 wing area, dm²
 * @param wingSpanMm wing span, mm
 * @param airspeedMPerS airspeed that the drag is wanted at, m/s; null where none is asked for
 * @param conditions the air, or null
 * @param kind how it is built, or null
 * @param section what section its wing has, or null
 * @param estimating gives the estimates
 */
public record AirframeEstimates(
        double massG,
        double wingAreaDm2,
        double wingSpanMm,
        Double airspeedMPerS,
        ApiConditions conditions,
        ApiAirframeKind kind,
        ApiWingSection section,
        Estimating estimating) {
    /** Where an aircraft of this sort cruises, for the Reynolds number alone, on which drag hangs by a fourth root. */
    private static final double USUAL_LIFT_COEFFICIENT = 0.7;

    /** Beyond these the rule is not followed any further. */
    private static final double LEAST_REYNOLDS = 3e4;

    private static final double GREATEST_REYNOLDS = 5e6;

    private static final String DRAG_SOURCE =
            "usual practice, on five published aircraft (second hand) and D. Raymer, Aircraft Design, table 12.3";

    private static final String SPAN_SOURCE =
            "M. Niță, D. Scholz, Estimating the Oswald Factor, DLRK 2012, equations 36"
                    + " and 37 (second hand); profile part from wind-tunnel sections";

    private static final String LIFT_SOURCE =
            "wind-tunnel sections (University of Illinois), made a wing by D. Raymer, Aircraft Design (from memory)";

    /**
     * The drag polar with what it lacks.
     *
     * @param given of the request, or null
     * @param at JSON Pointer of the polar
     * @return the polar; with gaps where nothing may be estimated, which is noted
     */
    public ApiDragPolar polar(ApiDragPolar given, String at) {
        ApiDragPolar polar = given == null ? ApiDragPolar.builder().build() : given;
        return ApiDragPolar.builder()
                .zeroLiftCoefficient(estimating.needed(
                        polar.zeroLiftCoefficient(), ApiDragPolar.ZERO_LIFT_COEFFICIENT, at, this::zeroLift))
                .oswaldEfficiency(estimating.needed(
                        polar.oswaldEfficiency(), ApiDragPolar.OSWALD_EFFICIENCY, at, this::spanEfficiency))
                .build();
    }

    /**
     * The maximum lift coefficient.
     *
     * @param given of the request, or null
     * @param field its field
     * @param owner JSON Pointer of the object that it belongs to
     * @return the number; null where it is not given and must not be estimated
     */
    public Double maxLift(Double given, Field<Double> field, String owner) {
        return estimating.usual(
                given,
                field,
                owner,
                () -> Estimate.of(
                        wingHas().maxLiftCoefficient(),
                        section == null
                                ? "a wing of unknown section, without flaps"
                                : "section " + word(section) + ", without flaps",
                        LIFT_SOURCE));
    }

    /**
     * Power for everything but the motors.
     *
     * @param given of the request, or null
     * @param field its field
     * @param owner JSON Pointer of the object that it belongs to
     * @return the number; null where it is not given and must not be estimated
     */
    public Double systemsPower(Double given, Field<Double> field, String owner) {
        double massKg = Mass.kgFromG(massG);
        return estimating.usual(
                given,
                field,
                owner,
                () -> Estimate.of(SystemsPower.ofMass(massKg), SystemsPower.classOf(massKg), Estimate.USUAL_PRACTICE));
    }

    private Estimate zeroLift() {
        String chord = String.format(Locale.ROOT, "mean chord of %.2f m", meanChordM());
        return Estimate.of(
                builtAs().zeroLiftDrag(reynolds()),
                kind == null ? "an airframe of unknown kind, " + chord : "kind " + word(kind) + ", " + chord,
                DRAG_SOURCE);
    }

    private Estimate spanEfficiency() {
        double aspectRatio = Length.mFromMm(wingSpanMm) / meanChordM();
        return Estimate.of(
                SpanEfficiency.ofAspectRatio(aspectRatio),
                String.format(Locale.ROOT, "aspect ratio of %.1f", aspectRatio),
                SPAN_SOURCE);
    }

    private double meanChordM() {
        return Area.m2FromDm2(wingAreaDm2) / Length.mFromMm(wingSpanMm);
    }

    private double reynolds() {
        AirState air = FlightReading.conditions(conditions, "", new Reading()).air();
        double reynolds = air.densityKgPerM3() * airspeed(air) * meanChordM() / air.viscosityPaS();
        return Math.max(LEAST_REYNOLDS, Math.min(GREATEST_REYNOLDS, reynolds));
    }

    private double airspeed(AirState air) {
        return Optional.ofNullable(airspeedMPerS).orElseGet(() -> {
            double weightN = Mass.kgFromG(massG) * StandardAtmosphere.GRAVITY_M_PER_S2;
            double areaM2 = Area.m2FromDm2(wingAreaDm2);
            return Math.sqrt(2 * weightN / (air.densityKgPerM3() * areaM2 * USUAL_LIFT_COEFFICIENT));
        });
    }

    private AirframeKind builtAs() {
        return kind == null ? AirframeKind.UNKNOWN : AirframeKind.valueOf(kind.name());
    }

    private WingSection wingHas() {
        return section == null ? WingSection.UNKNOWN : WingSection.valueOf(section.name());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
