package trestle.flight;

import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Mass;
import trestle.units.Share;

/** The checks of a flight. */
final class EnduranceChecks {
    /** Less reserve than this is thin: common practice, no source. */
    private static final double USUAL_RESERVE_FRACTION = 0.2;

    /** A density altitude from which climbs and launches suffer noticeably: 15 % less air. */
    private static final double THIN_AIR_M = 1500;

    /** Beyond this change of mass a calibration speaks of another aircraft: common practice. */
    private static final double CALIBRATION_MASS_CHANGE = 0.25;

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
        judge.essential("level-flight", "an airspeed that can be flown", checks.source(), checks::flyable);
        checks.cruise();
        checks.wind();
        new LegChecks(flight, task.legs(), result.energy(), judge).all();
        checks.energy();
        checks.data();
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
        double greatest = flight.validAirspeeds().greatestMPerS();
        if (greatest < floor) {
            trial.of(greatest, "m/s")
                    .atLeast(floor, Basis.COMMON_PRACTICE)
                    .stop(
                            "no-recommended-airspeed",
                            "The power data end at %.1f m/s, below the %.1f m/s that is 1.2 times the stall"
                                    + " speed: no airspeed can be recommended.",
                            greatest,
                            floor);
            return;
        }
        trial.at(Subject.of(FlightPart.EFFICIENCY))
                .stopIf(
                        true,
                        "thrust-not-available",
                        "The propulsion makes no thrust equal to the drag at any airspeed from %.1f m/s up.",
                        floor);
    }

    /** The airspeed asked for, or else the one that the aircraft would be flown at. */
    private void cruise() {
        Subject subject = Subject.of(FlightPart.AIRSPEED);
        AirspeedChecks airspeeds = new AirspeedChecks(flight, judge);
        Optional<SpeedPoint> usual = result.bestRange().or(result::bestEndurance);
        if (task.airspeedMPerS().isPresent()) {
            airspeeds.judge(task.airspeedMPerS().getAsDouble(), subject, "the airspeed asked for");
        } else {
            String what = "the airspeed of best range";
            usual.ifPresentOrElse(
                    point -> airspeeds.judge(point.airspeedMPerS(), subject, what),
                    () -> airspeeds.notJudged(subject, what));
        }
        judge.check(
                "headwind-at-airspeed",
                "the airspeed asked for over the headwind",
                Subject.of(FlightPart.HEADWIND),
                this::askedInWind);
        judge.check(
                "pack-power-at-airspeed",
                "power of the pack at the airspeed asked for",
                subject,
                trial -> result.atAirspeed()
                        .ifPresentOrElse(point -> packPower(trial, point), () -> trial.notJudged(subject)));
    }

    private void askedInWind(Trial trial) {
        if (task.airspeedMPerS().isEmpty()) {
            trial.notJudged(Subject.of(FlightPart.AIRSPEED));
            return;
        }
        double airspeed = task.airspeedMPerS().getAsDouble();
        trial.of(airspeed, "m/s")
                .atLeast(task.headwindMPerS(), Basis.REQUEST)
                .stopIf(
                        airspeed <= task.headwindMPerS(),
                        "headwind-not-overcome",
                        "The airspeed asked for, %.1f m/s, does not beat the headwind of %.1f m/s: no ground is made.",
                        airspeed,
                        task.headwindMPerS());
    }

    private void wind() {
        Optional<SpeedPoint> slowest = result.bestEndurance().filter(p -> p.enduranceS() > 0);
        Subject headwind = Subject.of(FlightPart.HEADWIND);
        judge.check(
                "headwind-there-and-back",
                "both ways of the flight against the wind",
                headwind,
                trial -> slowest.ifPresentOrElse(p -> bothWays(trial), trial::notJudged));
        judge.check(
                "headwind-at-longest-endurance",
                "the airspeed of longest endurance over the headwind",
                headwind,
                trial -> slowest.ifPresentOrElse(p -> slowestInWind(trial, p.airspeedMPerS()), trial::notJudged));
    }

    private void bothWays(Trial trial) {
        trial.stopIf(
                result.bestRange().isEmpty() || result.radiusOfActionM().isEmpty(),
                "headwind-not-overcome",
                "No airspeed that can be flown beats a headwind of %.1f m/s: one way of the flight makes no ground.",
                Math.abs(task.headwindMPerS()));
    }

    private void slowestInWind(Trial trial, double airspeed) {
        trial.of(airspeed, "m/s")
                .atLeast(task.headwindMPerS(), Basis.REQUEST)
                .attentionIf(
                        airspeed <= task.headwindMPerS(),
                        "headwind-not-overcome",
                        "The airspeed of longest endurance, %.1f m/s, does not beat the headwind of %.1f m/s: no"
                                + " ground is made.",
                        airspeed,
                        task.headwindMPerS());
    }

    private void energy() {
        judge.essential("reserve", "energy kept in reserve", Subject.of(FlightPart.RESERVE), this::reserve);
        judge.check(
                "pack-power",
                "power of the pack at longest endurance",
                Subject.of(FlightPart.ENERGY),
                trial -> result.bestEndurance().ifPresentOrElse(p -> packPower(trial, p), trial::notJudged));
    }

    private void reserve(Trial trial) {
        double reserve = task.reserveFraction();
        double percent = Share.percentFromFraction(reserve);
        double usualPercent = Share.percentFromFraction(USUAL_RESERVE_FRACTION);
        trial.of(percent, "%")
                .atLeast(usualPercent, Basis.COMMON_PRACTICE)
                .attentionIf(
                        reserve == 0,
                        "reserve-zero",
                        "The reserve is %.0f %%: the times run to the last of the energy, where the"
                                + " motor stops; keep %.0f %% or so.",
                        percent,
                        usualPercent)
                .noteIf(
                        reserve < USUAL_RESERVE_FRACTION,
                        "reserve-thin",
                        "A reserve of %.0f %% is less than the %.0f %% that is usual.",
                        percent,
                        usualPercent);
    }

    private static void packPower(Trial trial, SpeedPoint point) {
        trial.stopIf(
                point.enduranceS() == 0,
                "pack-power-limit",
                "The pack cannot give the %.0f W that level flight at %.1f m/s takes.",
                point.powerW(),
                point.airspeedMPerS());
    }

    private void data() {
        judge.check(
                "calibration-mass",
                "take-off mass against that of the calibration",
                Subject.of(FlightPart.CALIBRATION),
                this::calibration);
        judge.check("best-range-data", "the airspeed of best range within the power data", source(), this::endOfData);
    }

    private void calibration(Trial trial) {
        if (!(task.power() instanceof CalibratedPower calibration)) {
            return;
        }
        double massG = Mass.gFromKg(task.airframe().massKg());
        double flownG = Mass.gFromKg(calibration.massKg());
        trial.of(massG, "g")
                .atMost(flownG, Basis.REQUEST)
                .attentionIf(
                        Math.abs(task.airframe().massKg() / calibration.massKg() - 1) > CALIBRATION_MASS_CHANGE,
                        "calibration-mass-far",
                        "The take-off mass of %.0f g is far from the %.0f g that the calibration was flown at.",
                        massG,
                        flownG);
    }

    private void endOfData(Trial trial) {
        double greatest = flight.validAirspeeds().greatestMPerS();
        if (result.bestRange().isEmpty() || Double.isInfinite(greatest)) {
            return;
        }
        double airspeed = result.bestRange().get().airspeedMPerS();
        trial.of(airspeed, "m/s")
                .atMost(greatest, Basis.REQUEST)
                .noteIf(
                        airspeed > AT_THE_END * greatest,
                        "best-range-at-end-of-data",
                        "The best range is at %.1f m/s because the power data end at %.1f m/s; more may lie beyond.",
                        airspeed,
                        greatest);
    }

    private void air(Trial trial) {
        trial.of(result.densityAltitudeM(), "m")
                .atMost(THIN_AIR_M, Basis.COMMON_PRACTICE)
                .noteIf(
                        result.densityAltitudeM() >= THIN_AIR_M,
                        "thin-air",
                        "The air is as thin as at %.0f m (noted from %.0f m up): stall speed and power"
                                + " are higher than at sea level.",
                        result.densityAltitudeM(),
                        THIN_AIR_M);
    }
}
