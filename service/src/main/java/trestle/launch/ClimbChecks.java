package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Angle;

/** The checks of thrust, climb and turn, and of the air. */
final class ClimbChecks {
    /** A climb flatter than this clears little: common practice, no source. */
    private static final double USUAL_CLIMB_RAD = Math.toRadians(5);

    /** A density altitude from which launches suffer noticeably: 15 % less air. */
    private static final double THIN_AIR_M = 1500;

    /** Thrust at rest over weight that few aircraft have: common practice, no source. */
    private static final double HIGH_THRUST_TO_WEIGHT = 4;

    /** Thrust is held against drag at this many airspeeds between the stall and twice it. */
    private static final int THRUST_CHECKS = 21;

    private final LaunchAndClimbTask task;
    private final LaunchAndClimbResult result;

    private ClimbChecks(LaunchAndClimbTask task, LaunchAndClimbResult result) {
        this.task = task;
        this.result = result;
    }

    static void judge(LaunchAndClimbTask task, LaunchAndClimbResult result, Judge judge) {
        ClimbChecks checks = new ClimbChecks(task, result);
        Subject thrust = Subject.of(LaunchPart.THRUST);
        judge.essential("climb", "thrust and angle of the climb at full power", thrust, checks::climb);
        judge.check("thrust-to-weight", "thrust at rest against weight", thrust, checks::plausible);
        judge.check("thrust-data", "the thrust curve up to the climb speed", thrust, checks::data);
        judge.check("turn", "airspeed of the turn over the stall in it", Subject.of(LaunchPart.TURN), checks::turn);
        judge.check("air-density", "density altitude", Subject.of(LaunchPart.CONDITIONS), checks::air);
    }

    private void climb(Trial trial) {
        double climb = result.climbSpeedMPerS();
        double dragN = LaunchAndClimb.dragN(task, climb);
        double thrustN = task.thrust().thrustN(climb);
        boolean pulls = thrustEverReachesDrag();
        if (!pulls || thrustN <= dragN) {
            trial.of(thrustN, "N")
                    .atLeast(dragN, Basis.COMPUTED)
                    .stopIf(
                            !pulls,
                            "thrust-never-reaches-drag",
                            "The thrust stays below the drag at every airspeed from the stall to twice it: %.1f N against"
                                    + " %.1f N at the climb speed: take a larger propeller or a stronger motor.",
                            thrustN,
                            dragN)
                    .stopIf(
                            true,
                            "no-climb",
                            "At the climb speed of %.1f m/s the thrust of %.1f N does not exceed the drag of %.1f N: take"
                                    + " more pitch or more thrust.",
                            climb,
                            thrustN,
                            dragN);
            return;
        }
        double climbDeg = Angle.degFromRad(result.climb().angleRad());
        double usualDeg = Angle.degFromRad(USUAL_CLIMB_RAD);
        trial.of(climbDeg, "°")
                .atLeast(usualDeg, Basis.COMMON_PRACTICE)
                .attention(
                        "climb-shallow",
                        "The climb of %.1f° is below the %.0f° needed to clear obstacles at a field's edge (common"
                                + " practice): give it more thrust or less mass.",
                        climbDeg,
                        usualDeg);
    }

    private void plausible(Trial trial) {
        double thrustN = task.thrust().thrustN(0);
        double ratio = thrustN / (task.airframe().massKg() * GRAVITY_M_PER_S2);
        trial.of(ratio, "")
                .atMost(HIGH_THRUST_TO_WEIGHT, Basis.COMMON_PRACTICE)
                .attention(
                        "thrust-implausible",
                        "A thrust at rest of %.0f N is %.1f times the weight, above %.0f (common practice): give newtons, not"
                                + " grams of thrust.",
                        thrustN,
                        ratio,
                        HIGH_THRUST_TO_WEIGHT);
    }

    private boolean thrustEverReachesDrag() {
        double stall = result.stallSpeedMPerS();
        for (int i = 0; i < THRUST_CHECKS; i++) {
            double airspeed = stall * (1 + i / (THRUST_CHECKS - 1.0));
            if (task.thrust().thrustN(airspeed) > LaunchAndClimb.dragN(task, airspeed)) {
                return true;
            }
        }
        return false;
    }

    private void data(Trial trial) {
        if (task.thrust() instanceof ThrustCurve curve) {
            double climb = result.climbSpeedMPerS();
            trial.of(curve.lastAirspeedMPerS(), "m/s")
                    .atLeast(climb, Basis.COMPUTED)
                    .note(
                            "thrust-curve-extrapolated",
                            "The thrust curve ends at %.1f m/s, below the climb speed of %.1f m/s: its last line is"
                                    + " carried on; give a point beyond.",
                            curve.lastAirspeedMPerS(),
                            climb);
        }
    }

    private void turn(Trial trial) {
        trial.of(result.turnAirspeedMPerS(), "m/s")
                .atLeast(result.stallSpeedTurningMPerS(), Basis.COMPUTED)
                .stop(
                        "stall-in-turn",
                        "The turn at %.2f m/s is below the stall speed of %.2f m/s in it: fly %.1f m/s, 1.3 times that,"
                                + " or bank less.",
                        result.turnAirspeedMPerS(),
                        result.stallSpeedTurningMPerS(),
                        LaunchAndClimb.CLIMB_IN_STALL_SPEEDS * result.stallSpeedTurningMPerS());
    }

    private void air(Trial trial) {
        trial.of(result.densityAltitudeM(), "m")
                .atMost(THIN_AIR_M, Basis.COMMON_PRACTICE)
                .noteIf(
                        result.densityAltitudeM() >= THIN_AIR_M,
                        "thin-air",
                        "The air is as thin as at %.0f m (noted from %.0f m up, common practice): the launch must be"
                                + " faster, and the propeller pulls less.",
                        result.densityAltitudeM(),
                        THIN_AIR_M);
    }
}
