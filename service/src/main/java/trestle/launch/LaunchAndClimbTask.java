package trestle.launch;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.numeric.Guard;

/**
 * What {@link LaunchAndClimb} is asked.
 *
 * @param airframe the aircraft
 * @param polar its drag polar
 * @param thrust thrust at full power in this air
 * @param air the air
 * @param wind the wind that the launch is judged in
 * @param launch how it is launched
 * @param limits what aircraft and hook are good for
 * @param motorDelayS time from release until the motor pulls, s; a dolly has it on from the start
 * @param turn the turn to report on
 * @param turnAirspeedMPerS airspeed of the turn, m/s; empty for 1.3 of the stall speed in it
 */
public record LaunchAndClimbTask(
        Airframe airframe,
        DragPolar polar,
        Thrust thrust,
        AirState air,
        LaunchWind wind,
        Launch launch,
        LaunchLimits limits,
        double motorDelayS,
        Turn turn,
        OptionalDouble turnAirspeedMPerS) {
    /** Checks the physics. */
    public LaunchAndClimbTask {
        Guard.present("airframe", airframe);
        Guard.present("polar", polar);
        Guard.present("thrust", thrust);
        Guard.present("air", air);
        Guard.present("wind", wind);
        Guard.present("launch", launch);
        Guard.present("limits", limits);
        Guard.within("motorDelayS", motorDelayS, 0, 10);
        Guard.present("turn", turn);
        turnAirspeedMPerS.ifPresent(v -> Guard.positive("turnAirspeedMPerS", v));
    }

    /** The same question about another launch. */
    LaunchAndClimbTask with(Launch other) {
        return new LaunchAndClimbTask(
                airframe, polar, thrust, air, wind, other, limits, motorDelayS, turn, turnAirspeedMPerS);
    }

    /** The same question in another wind. */
    LaunchAndClimbTask with(LaunchWind other) {
        return new LaunchAndClimbTask(
                airframe, polar, thrust, air, other, launch, limits, motorDelayS, turn, turnAirspeedMPerS);
    }
}
