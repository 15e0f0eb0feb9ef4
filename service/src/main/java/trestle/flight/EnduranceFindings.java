package trestle.flight;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.NOTE;
import static trestle.finding.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** What {@link Endurance} has to say about a flight. */
final class EnduranceFindings {
    /** Less reserve than this is thin: common practice, no source. */
    private static final double USUAL_RESERVE_FRACTION = 0.2;

    /** A density altitude from which climbs and launches suffer noticeably: 15 % less air. */
    private static final double THIN_AIR_M = 1500;

    /** Beyond this change of mass a calibration speaks of another aircraft: common practice. */
    private static final double CALIBRATION_MASS_CHANGE = 0.25;

    private final EnduranceTask task;
    private final SteadyFlight flight;
    private final EnduranceResult result;
    private final List<Finding> findings = new ArrayList<>();

    private EnduranceFindings(EnduranceTask task, SteadyFlight flight, EnduranceResult result) {
        this.task = task;
        this.flight = flight;
        this.result = result;
    }

    static List<Finding> of(EnduranceTask task, SteadyFlight flight, EnduranceResult result) {
        EnduranceFindings all = new EnduranceFindings(task, flight, result);
        all.flyable();
        all.askedAirspeed();
        all.wind();
        all.findings.addAll(LegFindings.of(flight, result.energy()));
        all.energy();
        all.source();
        all.air();
        return all.findings;
    }

    private void flyable() {
        if (result.bestEndurance().isPresent()) {
            return;
        }
        AirspeedRange valid = flight.validAirspeeds();
        if (valid.greatestMPerS() < flight.floorMPerS()) {
            add(
                    STOP,
                    "no-recommended-airspeed",
                    sourcePart(),
                    valid.greatestMPerS(),
                    flight.floorMPerS(),
                    "The power data end at %.1f m/s, below the %.1f m/s that is 1.2 times the stall"
                            + " speed: no airspeed can be recommended.");
            return;
        }
        findings.add(Finding.of(
                STOP,
                "thrust-not-available",
                Subject.of(FlightPart.EFFICIENCY),
                text(
                        "The propulsion makes no thrust equal to the drag at any airspeed" + " from %.1f m/s up.",
                        flight.floorMPerS())));
    }

    private void askedAirspeed() {
        if (task.airspeedMPerS().isEmpty()) {
            return;
        }
        double airspeed = task.airspeedMPerS().getAsDouble();
        findings.addAll(new AirspeedFindings(flight)
                .about(airspeed, Subject.of(FlightPart.AIRSPEED), "the airspeed asked for"));
        if (airspeed <= task.headwindMPerS()) {
            headwind(STOP, airspeed, "The airspeed asked for,");
        }
        result.atAirspeed().ifPresent(point -> powerLimit(point, FlightPart.AIRSPEED));
    }

    private FlightPart sourcePart() {
        if (task.power() instanceof MeasuredPower) {
            return FlightPart.POWER_CURVE;
        }
        return task.power() instanceof CalibratedPower ? FlightPart.CALIBRATION : FlightPart.DRAG;
    }

    private void wind() {
        double headwind = task.headwindMPerS();
        boolean flies = result.bestEndurance().filter(p -> p.enduranceS() > 0).isPresent();
        if (!flies) {
            return;
        }
        if (result.bestRange().isEmpty() || result.radiusOfActionM().isEmpty()) {
            findings.add(Finding.of(
                    STOP,
                    "headwind-not-overcome",
                    Subject.of(FlightPart.HEADWIND),
                    text(
                            "No airspeed that can be flown beats a headwind of %.1f m/s:"
                                    + " one way of the flight makes no ground.",
                            Math.abs(headwind))));
        }
        double airspeed = result.bestEndurance().get().airspeedMPerS();
        if (airspeed <= headwind) {
            headwind(ATTENTION, airspeed, "The airspeed of longest endurance,");
        }
    }

    private void headwind(Severity severity, double airspeed, String what) {
        add(
                severity,
                "headwind-not-overcome",
                FlightPart.HEADWIND,
                airspeed,
                task.headwindMPerS(),
                what + " %.1f m/s, does not beat the headwind of %.1f m/s: no ground is made.");
    }

    private void energy() {
        double reserve = task.reserveFraction();
        if (reserve == 0) {
            add(
                    ATTENTION,
                    "reserve-zero",
                    FlightPart.RESERVE,
                    0,
                    100 * USUAL_RESERVE_FRACTION,
                    "The reserve is %.0f %%: the times run to the last of the energy, where the"
                            + " motor stops; keep %.0f %% or so.");
        } else if (reserve < USUAL_RESERVE_FRACTION) {
            add(
                    NOTE,
                    "reserve-thin",
                    FlightPart.RESERVE,
                    100 * reserve,
                    100 * USUAL_RESERVE_FRACTION,
                    "A reserve of %.0f %% is less than the %.0f %% that is usual.");
        }
        result.bestEndurance().ifPresent(point -> powerLimit(point, FlightPart.ENERGY));
    }

    private void powerLimit(SpeedPoint point, FlightPart part) {
        if (point.enduranceS() == 0) {
            findings.add(Finding.of(
                    STOP,
                    "pack-power-limit",
                    Subject.of(part),
                    text(
                            "The pack cannot give the %.0f W that level flight at %.1f m/s" + " takes.",
                            point.powerW(), point.airspeedMPerS())));
        }
    }

    private void source() {
        if (task.power() instanceof CalibratedPower calibration) {
            double change = task.airframe().massKg() / calibration.massKg() - 1;
            if (Math.abs(change) > CALIBRATION_MASS_CHANGE) {
                add(
                        ATTENTION,
                        "calibration-mass-far",
                        FlightPart.CALIBRATION,
                        1000 * task.airframe().massKg(),
                        1000 * calibration.massKg(),
                        "The take-off mass of %.0f g is far from the %.0f g that the calibration" + " was flown at.");
            }
        }
        double greatest = flight.validAirspeeds().greatestMPerS();
        result.bestRange()
                .filter(point -> point.airspeedMPerS() > 0.999 * greatest)
                .ifPresent(point -> add(
                        NOTE,
                        "best-range-at-end-of-data",
                        sourcePart(),
                        point.airspeedMPerS(),
                        greatest,
                        "The best range is at %.1f m/s because the power data end at %.1f m/s; more may lie beyond."));
    }

    private void air() {
        if (result.densityAltitudeM() >= THIN_AIR_M) {
            add(
                    NOTE,
                    "thin-air",
                    FlightPart.CONDITIONS,
                    result.densityAltitudeM(),
                    THIN_AIR_M,
                    "The air is as thin as at %.0f m (noted from %.0f m up): stall speed and power"
                            + " are higher than at sea level.");
        }
    }

    /** The message has two places: for the value and for the limit. */
    private void add(Severity severity, String code, FlightPart part, double value, double limit, String message) {
        findings.add(Finding.of(severity, code, Subject.of(part), value, limit, text(message, value, limit)));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
