package trestle.flight;

import static trestle.finding.Severity.STOP;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of a flight: what flies, in which wind, and what its data are worth. */
final class EnduranceChecks {
    /** A density altitude from which climbs and launches suffer noticeably: 15 % less air. */
    private static final double THIN_AIR_M = 1500;

    private static final double AT_THE_END = 0.999;

    private final EnduranceTask task;
    private final SteadyFlight flight;
    private final EnduranceResult result;
    private final Judge judge;

    private EnduranceChecks(EnduranceTask task, SteadyFlight flight, EnduranceResult result, Judge judge) {
        this.task = task;
        this.flight = flight;
        this.result = result;
        this.judge = judge;
    }

    static void judge(EnduranceTask task, SteadyFlight flight, EnduranceResult result, Judge judge) {
        EnduranceChecks checks = new EnduranceChecks(task, flight, result, judge);
        AirspeedChecks airspeeds = new AirspeedChecks(flight, judge);
        judge.essential("level-flight", "an airspeed that can be flown", checks.source(), checks::flyable);
        checks.cruise(airspeeds);
        judge.check("headwind", "airspeed over the headwind", Subject.of(FlightPart.HEADWIND), checks::wind);
        new LegChecks(task, flight, result.energy(), judge).all(airspeeds);
        EnergyChecks.judge(task, result, judge);
        checks.data();
        AirframeChecks.judge(
                task.airframe(), Subject.of(FlightPart.WING_SPAN), Subject.of(FlightPart.TAKEOFF_MASS), judge);
        if (task.power() instanceof PolarPower polar) {
            AirframeChecks.judge(task.airframe(), polar.polar(), Subject.of(FlightPart.DRAG), judge);
        }
        judge.check("air-density", "density altitude", Subject.of(FlightPart.CONDITIONS), checks::air);
    }

    private Subject source() {
        if (task.power() instanceof MeasuredPower) {
            return Subject.of(FlightPart.POWER_CURVE);
        }
        return Subject.of(task.power() instanceof CalibratedPower ? FlightPart.CALIBRATION : FlightPart.DRAG);
    }

    private void flyable(Trial trial) {
        if (result.bestEndurance().isPresent()) {
            return;
        }
        double floor = flight.floorMPerS();
        double last = flight.validAirspeeds().greatestMPerS();
        if (last < floor) {
            trial.of(last, "m/s")
                    .atLeast(floor, Basis.COMMON_PRACTICE)
                    .stop(
                            "no-recommended-airspeed",
                            "The power data end at %.1f m/s, below %.1f m/s, 1.2 times the stall speed (common practice):"
                                    + " measure up to there.",
                            last,
                            floor);
            return;
        }
        trial.at(Subject.of(FlightPart.EFFICIENCY))
                .stopIf(
                        true,
                        "thrust-not-available",
                        "The propulsion makes no thrust equal to the drag at any airspeed from %.1f m/s up: take a larger"
                                + " motor or propeller, or more voltage.",
                        floor);
    }

    /** The airspeed asked for, or else the one that the aircraft would be flown at. */
    private void cruise(AirspeedChecks airspeeds) {
        Subject subject = Subject.of(FlightPart.AIRSPEED);
        if (task.airspeedMPerS().isPresent()) {
            airspeeds.judge(task.airspeedMPerS().getAsDouble(), subject, "the airspeed asked for");
            return;
        }
        String what = "the airspeed of best range";
        result.bestRange()
                .or(result::bestEndurance)
                .ifPresentOrElse(
                        point -> airspeeds.judge(point.airspeedMPerS(), subject, what),
                        () -> airspeeds.notJudged(subject, what));
    }

    /** Too much wind is one cause, whatever it keeps from making ground. */
    private void wind(Trial trial) {
        Optional<SpeedPoint> slowest = result.bestEndurance().filter(p -> p.enduranceS() > 0);
        double headwind = task.headwindMPerS();
        OptionalDouble asked = task.airspeedMPerS();
        if (asked.isPresent() && asked.getAsDouble() <= headwind) {
            trial.of(asked.getAsDouble(), "m/s")
                    .atLeast(headwind, Basis.REQUEST)
                    .stopIf(
                            true,
                            "headwind-not-overcome",
                            "The airspeed asked for, %.1f m/s, does not exceed the headwind of %.1f m/s: fly faster, or"
                                    + " wait for less wind.",
                            asked.getAsDouble(),
                            headwind);
            return;
        }
        if (slowest.isEmpty()) {
            trial.asSaid(true, STOP);
            return;
        }
        double airspeed = slowest.get().airspeedMPerS();
        trial.stopIf(
                        result.bestRange().isEmpty() || result.radiusOfActionM().isEmpty(),
                        "headwind-not-overcome",
                        "No flyable airspeed exceeds the headwind of %.1f m/s: the upwind leg makes no progress; wait for"
                                + " less wind.",
                        Math.abs(headwind))
                .of(asked.orElse(airspeed), "m/s")
                .atLeast(headwind, Basis.REQUEST)
                .attentionIf(
                        asked.isEmpty() && airspeed <= headwind,
                        "headwind-not-overcome",
                        "The airspeed of longest endurance, %.1f m/s, does not exceed the headwind of %.1f m/s: fly the"
                                + " airspeed of best range against it.",
                        airspeed,
                        headwind);
    }

    private void data() {
        if (task.power() instanceof CalibratedPower calibration) {
            CalibrationChecks.judge(task.airframe(), calibration, judge);
        }
        judge.check("best-range-data", "the airspeed of best range within the power data", source(), this::endOfData);
    }

    private void endOfData(Trial trial) {
        double last = flight.validAirspeeds().greatestMPerS();
        if (result.bestRange().isEmpty() || Double.isInfinite(last)) {
            return;
        }
        double airspeed = result.bestRange().get().airspeedMPerS();
        trial.of(airspeed, "m/s")
                .atMost(last, Basis.REQUEST)
                .noteIf(
                        airspeed > AT_THE_END * last,
                        "best-range-at-end-of-data",
                        "The best range is at %.1f m/s because the power data end there; measure faster for more.",
                        airspeed);
    }

    private void air(Trial trial) {
        trial.of(result.densityAltitudeM(), "m")
                .atMost(THIN_AIR_M, Basis.COMMON_PRACTICE)
                .noteIf(
                        result.densityAltitudeM() >= THIN_AIR_M,
                        "thin-air",
                        "The air is as thin as at %.0f m (noted from %.0f m up, common practice): stall speed and power"
                                + " are higher than at sea level.",
                        result.densityAltitudeM(),
                        THIN_AIR_M);
    }
}
