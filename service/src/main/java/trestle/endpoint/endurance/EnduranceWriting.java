package trestle.endpoint.endurance;

import java.util.Map;
import java.util.Optional;
import trestle.api.model.ApiCurvePoint;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiEnergyUse;
import trestle.api.model.ApiFlightPoint;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLegKind;
import trestle.api.model.ApiLegUse;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Writing;
import trestle.flight.CurvePoint;
import trestle.flight.EnduranceResult;
import trestle.flight.EnergyBudget;
import trestle.flight.Leg;
import trestle.flight.LegResult;
import trestle.flight.LegStatus;
import trestle.flight.PackOptimum;
import trestle.flight.SpeedPoint;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Time;

/** Writes an endurance into its answer. */
public final class EnduranceWriting {
    private EnduranceWriting() {}

    public static ApiEnduranceAnswer write(EnduranceResult result, ApiJudgement judgement) {
        return ApiEnduranceAnswer.builder()
                .judgement(judgement)
                .stallSpeedMPerS(result.stallSpeedMPerS())
                .airDensityKgPerM3(result.densityKgPerM3())
                .densityAltitudeM(result.densityAltitudeM())
                .bestEndurance(
                        result.bestEndurance().map(EnduranceWriting::point).orElse(null))
                .bestRange(result.bestRange().map(EnduranceWriting::point).orElse(null))
                .atAirspeed(result.atAirspeed().map(EnduranceWriting::point).orElse(null))
                .radiusOfActionKm(Writing.in(result.radiusOfActionM(), Length::kmFromM))
                .energy(energy(result))
                .curve(result.curve().stream().map(EnduranceWriting::point).toList())
                .packMassForLongestEnduranceG(result.packOptimum()
                        .map(optimum -> Mass.gFromKg(optimum.packMassKg()))
                        .orElse(null))
                .stallSpeedWithThatPackMPerS(
                        result.packOptimum().map(PackOptimum::stallSpeedMPerS).orElse(null))
                .longestEnduranceH(result.packOptimum()
                        .map(optimum -> Time.hFromS(optimum.enduranceS()))
                        .orElse(null))
                .build();
    }

    /**
     * The numbers that carry a band: at the airspeed asked for, else at the best.
     *
     * @param result the flight
     * @param figures takes each under its name
     */
    public static void figures(EnduranceResult result, Map<MainFigure, Double> figures) {
        Optional<SpeedPoint> endurance = result.atAirspeed().or(result::bestEndurance);
        Optional<SpeedPoint> range = result.atAirspeed().or(result::bestRange);
        endurance.ifPresent(point -> {
            figures.put(MainFigure.ENDURANCE, Time.hFromS(point.enduranceS()));
            figures.put(MainFigure.CRUISE_POWER, point.powerW());
        });
        range.ifPresent(point -> figures.put(MainFigure.GROUND_RANGE, Length.kmFromM(point.groundRangeM())));
        figures.put(MainFigure.STALL_SPEED, result.stallSpeedMPerS());
    }

    private static ApiFlightPoint point(SpeedPoint point) {
        boolean overGround = point.energyPerGroundMJ().isPresent();
        return ApiFlightPoint.builder()
                .airspeedMPerS(point.airspeedMPerS())
                .powerW(point.powerW())
                .currentA(Writing.boxed(point.currentA()))
                .liftCoefficient(point.liftCoefficient())
                .enduranceH(Time.hFromS(point.enduranceS()))
                .stillAirRangeKm(Length.kmFromM(point.stillAirRangeM()))
                .groundRangeKm(overGround ? Length.kmFromM(point.groundRangeM()) : null)
                .energyWhPerKm(Writing.in(point.energyPerGroundMJ(), perM -> Energy.whFromJ(perM * Length.mFromKm(1))))
                .build();
    }

    private static ApiCurvePoint point(CurvePoint point) {
        return ApiCurvePoint.builder()
                .airspeedMPerS(point.airspeedMPerS())
                .powerW(point.powerW())
                .enduranceH(Time.hFromS(point.enduranceS()))
                .groundRangeKm(point.groundRangeM() > 0 ? Length.kmFromM(point.groundRangeM()) : null)
                .build();
    }

    private static ApiEnergyUse energy(EnduranceResult result) {
        EnergyBudget budget = result.energy();
        boolean legs = !budget.legs().isEmpty();
        return ApiEnergyUse.builder()
                .availableWh(Energy.whFromJ(budget.availableJ()))
                .reserveWh(Energy.whFromJ(budget.reserveJ()))
                .legsWh(legs ? Energy.whFromJ(budget.plannedJ()) : null)
                .remainingWh(legs ? Energy.whFromJ(budget.availableJ() - budget.reserveJ() - budget.plannedJ()) : null)
                .lowestVoltageV(Writing.boxed(result.lowestVoltageV()))
                .legs(budget.legs().stream().map(EnduranceWriting::leg).toList())
                .build();
    }

    private static ApiLegUse leg(LegResult leg) {
        return ApiLegUse.builder()
                .kind(kind(leg.leg()))
                .startS(leg.startS())
                .durationS(leg.plannedDurationS())
                .airspeedMPerS(leg.airspeedMPerS())
                .powerW(leg.powerW())
                .energyWh(Energy.whFromJ(leg.energyJ()))
                .distanceKm(Length.kmFromM(leg.groundDistanceM()))
                .lowestVoltageV(Writing.boxed(leg.lowestVoltageV()))
                .completed(leg.status() == LegStatus.FLOWN)
                .build();
    }

    private static ApiLegKind kind(Leg leg) {
        if (leg instanceof Leg.Climb) {
            return ApiLegKind.CLIMB;
        }
        if (leg instanceof Leg.Cruise) {
            return ApiLegKind.CRUISE;
        }
        return leg instanceof Leg.Loiter ? ApiLegKind.LOITER : ApiLegKind.DESCENT;
    }
}
