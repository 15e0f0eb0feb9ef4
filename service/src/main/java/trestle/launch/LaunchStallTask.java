package trestle.launch;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.numeric.Guard;

/**
 * What {@link LaunchStall} is asked.
 *
 * @param airframe the aircraft
 * @param polar its drag polar
 * @param thrust thrust at full power in this air
 * @param air the air
 * @param headwindMPerS wind against the launch, m/s; below 0 for a tailwind
 * @param launch how it gets away
 * @param motorDelayS time from release until the motor pulls, s; a dolly has it on from the start
 * @param turn the turn to report on
 * @param turnAirspeedMPerS airspeed of the turn, m/s; empty for 1.3 of the stall speed in it
 */
public record LaunchStallTask(
        Airframe airframe,
        DragPolar polar,
        Thrust thrust,
        AirState air,
        double headwindMPerS,
        Launch launch,
        double motorDelayS,
        Turn turn,
        OptionalDouble turnAirspeedMPerS) {
    /** Checks the physics. */
    public LaunchStallTask {
        Guard.present("airframe", airframe);
        Guard.present("polar", polar);
        Guard.present("thrust", thrust);
        Guard.present("air", air);
        Guard.within("headwindMPerS", headwindMPerS, -50, 50);
        Guard.present("launch", launch);
        Guard.within("motorDelayS", motorDelayS, 0, 10);
        Guard.present("turn", turn);
        turnAirspeedMPerS.ifPresent(v -> Guard.positive("turnAirspeedMPerS", v));
    }
}
