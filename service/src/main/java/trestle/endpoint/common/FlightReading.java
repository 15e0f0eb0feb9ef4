package trestle.endpoint.common;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.api.model.ApiConditions;
import trestle.api.model.ApiDragPolar;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiFlightLeg;
import trestle.atmosphere.StandardAtmosphere;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.flight.Airframe;
import trestle.flight.Conditions;
import trestle.flight.DragPolar;
import trestle.flight.Extent;
import trestle.flight.Leg;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Pressure;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/** Reads the day and the flight, which several requests share. */
public final class FlightReading {
    /** No wing is outside: a span or an area in another unit. */
    private static final double LOWEST_ASPECT_RATIO = 0.2;

    private static final double HIGHEST_ASPECT_RATIO = 100;

    private FlightReading() {}

    private static double square(double number) {
        return number * number;
    }

    /**
     * The aircraft in level flight.
     *
     * @param massKg mass at take-off, kg
     * @param wingAreaDm2 wing area, dm²
     * @param wingSpanMm wing span, mm
     * @param maxLiftCoefficient of the request, or null
     * @param reading notes the default
     * @return the airframe
     */
    public static Airframe airframe(
            double massKg, double wingAreaDm2, double wingSpanMm, Double maxLiftCoefficient, Reading reading) {
        double aspectRatio = square(Length.mFromMm(wingSpanMm)) / Area.m2FromDm2(wingAreaDm2);
        if (aspectRatio < LOWEST_ASPECT_RATIO || aspectRatio > HIGHEST_ASPECT_RATIO) {
            reading.fault(
                    ApiEnduranceRequest.WING_SPAN_MM.at(""),
                    "contradiction",
                    String.format(
                            Locale.ROOT,
                            "%s on %s makes an aspect ratio of %.3g; wings have %.1f to %.0f",
                            FieldUnit.withUnit(wingSpanMm, "_mm"),
                            FieldUnit.withUnit(wingAreaDm2, "_dm2"),
                            aspectRatio,
                            LOWEST_ASPECT_RATIO,
                            HIGHEST_ASPECT_RATIO));
        }
        return new Airframe(
                massKg,
                Area.m2FromDm2(wingAreaDm2),
                Length.mFromMm(wingSpanMm),
                reading.orDefault(
                        maxLiftCoefficient,
                        ApiEnduranceRequest.MAX_LIFT_COEFFICIENT,
                        "",
                        "the request gives none; common practice, no source"));
    }

    /**
     * Notes an airspeed that does not lie above that of the point before it.
     *
     * @param airspeedMPerS airspeed of the point, m/s
     * @param beforeMPerS that of the point before it, m/s
     * @param at JSON Pointer of the point
     * @param reading notes the contradiction
     * @return whether it rises
     */
    public static boolean rises(double airspeedMPerS, double beforeMPerS, String at, Reading reading) {
        boolean rises = airspeedMPerS > beforeMPerS;
        if (!rises) {
            reading.fault(
                    ApiFlightLeg.AIRSPEED_M_PER_S.at(at), "contradiction", "airspeeds must rise from point to point");
        }
        return rises;
    }

    /**
     * The air.
     *
     * @param conditions of the request, or null
     * @param at JSON Pointer of the conditions
     * @param reading notes defaults
     * @return the conditions
     */
    public static Conditions conditions(ApiConditions conditions, String at, Reading reading) {
        Double altitudeM = conditions == null ? null : conditions.altitudeM();
        Double temperatureC = conditions == null ? null : conditions.temperatureC();
        Double pressureHpa = conditions == null ? null : conditions.pressureHpa();
        double heightM = reading.orDefault(altitudeM, ApiConditions.ALTITUDE_M, at, "the request gives none");
        if (temperatureC == null) {
            reading.assume(
                    ApiConditions.TEMPERATURE_C.at(at),
                    String.format(Locale.ROOT, "%.1f °C", Temperature.cFromK(StandardAtmosphere.temperatureK(heightM))),
                    "the standard atmosphere at that altitude");
        }
        return new Conditions(
                heightM,
                temperatureC == null ? OptionalDouble.empty() : OptionalDouble.of(Temperature.kFromC(temperatureC)),
                pressureHpa == null ? OptionalDouble.empty() : OptionalDouble.of(Pressure.paFromHpa(pressureHpa)));
    }

    /**
     * The legs of a flight.
     *
     * @param legs of the request, or null
     * @param airspeedMPerS airspeed of legs that give none, or null
     * @param headwindMPerS wind on legs that give none
     * @param at JSON Pointer of the list
     * @param reading notes contradictions
     * @return the legs that are whole
     */
    public static List<Leg> legs(
            List<ApiFlightLeg> legs, Double airspeedMPerS, double headwindMPerS, String at, Reading reading) {
        List<ApiFlightLeg> given = Reading.listed(legs);
        return IntStream.range(0, given.size())
                .mapToObj(i -> new LegReading(given.get(i), at + "/" + i, reading).leg(airspeedMPerS, headwindMPerS))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Reads one leg: which fields it takes depends on its kind. */
    private record LegReading(ApiFlightLeg leg, String at, Reading reading) {

        Optional<Leg> leg(Double airspeedMPerS, double headwindMPerS) {
            OptionalDouble airspeed = Reading.optional(Reading.or(leg.airspeedMPerS(), airspeedMPerS));
            return switch (leg.kind()) {
                case CLIMB -> climb(Reading.optional(leg.airspeedMPerS()));
                case CRUISE -> cruise(airspeed, Reading.or(leg.headwindMPerS(), headwindMPerS));
                case LOITER -> loiter(Reading.optional(leg.airspeedMPerS()));
                case DESCENT -> descent(airspeed);
            };
        }

        private Optional<Leg> climb(OptionalDouble airspeed) {
            if (!needs("height_m", leg.heightM())
                    | !needs("climb_rate_m_per_s", leg.climbRateMPerS())
                    | !takesNo("distance_km", leg.distanceKm())
                    | !takesNo("duration_min", leg.durationMin())
                    | !takesNo("descent_rate_m_per_s", leg.descentRateMPerS())) {
                return Optional.empty();
            }
            return Optional.of(new Leg.Climb(leg.heightM(), leg.climbRateMPerS(), airspeed));
        }

        private Optional<Leg> cruise(OptionalDouble airspeed, double headwindMPerS) {
            reading.exactlyOne(at, List.of("distance_km", "duration_min"), leg.distanceKm(), leg.durationMin());
            boolean one = (leg.distanceKm() == null) != (leg.durationMin() == null);
            if (!one
                    | !takesNo("height_m", leg.heightM())
                    | !takesNo("climb_rate_m_per_s", leg.climbRateMPerS())
                    | !takesNo("descent_rate_m_per_s", leg.descentRateMPerS())) {
                return Optional.empty();
            }
            Extent extent = leg.distanceKm() != null
                    ? new Extent.Distance(Length.mFromKm(leg.distanceKm()))
                    : new Extent.Duration(Time.sFromMin(leg.durationMin()));
            return Optional.of(new Leg.Cruise(extent, headwindMPerS, airspeed));
        }

        private Optional<Leg> loiter(OptionalDouble airspeed) {
            if (!needs("duration_min", leg.durationMin())
                    | !takesNo("height_m", leg.heightM())
                    | !takesNo("distance_km", leg.distanceKm())) {
                return Optional.empty();
            }
            return Optional.of(new Leg.Loiter(Time.sFromMin(leg.durationMin()), airspeed));
        }

        private Optional<Leg> descent(OptionalDouble airspeed) {
            if (!needs("height_m", leg.heightM())
                    | !needs("descent_rate_m_per_s", leg.descentRateMPerS())
                    | !takesNo("distance_km", leg.distanceKm())
                    | !takesNo("duration_min", leg.durationMin())
                    | !takesNo("climb_rate_m_per_s", leg.climbRateMPerS())) {
                return Optional.empty();
            }
            double percent =
                    reading.orDefault(leg.powerPercent(), ApiFlightLeg.POWER_PERCENT, at, "the request gives none");
            return Optional.of(new Leg.Descent(
                    leg.heightM(), leg.descentRateMPerS(), Share.fractionFromPercent(percent), airspeed));
        }

        private boolean needs(String field, Object value) {
            return reading.needs("a " + leg.kind(), at, field, value);
        }

        private boolean takesNo(String field, Object value) {
            return reading.takesNo("a " + leg.kind(), at, field, value);
        }
    }

    /** The drag polar of a wing of an aspect ratio. */
    public static DragPolar polar(ApiDragPolar drag, double aspectRatio) {
        return DragPolar.of(drag.zeroLiftCoefficient(), drag.oswaldEfficiency(), aspectRatio);
    }

    /** The reserve of a request, as a share. */
    public static double reserveFraction(Double reservePercent, String at, Reading reading) {
        return Share.fractionFromPercent(reading.orDefault(
                reservePercent,
                ApiEnduranceRequest.RESERVE_PERCENT,
                at,
                "the request gives none; common practice, no source"));
    }
}
