package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.numeric.Guard;

/**
 * A drive to be matched.
 *
 * @param system motors, controllers, propellers, supply
 * @param air the air
 * @param cruise what cruise asks; empty where only the drive itself is of interest
 * @param takeoffMassKg mass, kg, for thrust to weight; empty where unknown
 * @param airspeedsMPerS airspeeds of the curve, m/s, 0 or more each; an empty list asks for even
 *     steps from rest to where thrust ends
 * @param limits what else holds the drive back
 */
public record PropulsionTask(
        PropulsionSystem system,
        AirState air,
        Optional<CruiseDemand> cruise,
        OptionalDouble takeoffMassKg,
        List<Double> airspeedsMPerS,
        DriveLimits limits) {
    /** Checks the physics and copies the list. */
    public PropulsionTask {
        Guard.present("system", system);
        Guard.present("air", air);
        takeoffMassKg.ifPresent(mass -> Guard.positive("takeoffMassKg", mass));
        airspeedsMPerS = List.copyOf(airspeedsMPerS);
        airspeedsMPerS.forEach(airspeed -> Guard.notNegative("airspeedMPerS", airspeed));
        Guard.present("limits", limits);
    }

    /**
     * A drive that nothing but the ratings of its parts holds back.
     *
     * @param system as above
     * @param air as above
     * @param cruise as above
     * @param takeoffMassKg as above
     * @param airspeedsMPerS as above
     */
    public PropulsionTask(
            PropulsionSystem system,
            AirState air,
            Optional<CruiseDemand> cruise,
            OptionalDouble takeoffMassKg,
            List<Double> airspeedsMPerS) {
        this(system, air, cruise, takeoffMassKg, airspeedsMPerS, DriveLimits.none());
    }
}
