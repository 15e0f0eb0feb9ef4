package trestle.joint;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.launch.Climb;
import trestle.numeric.Guard;

/**
 * An aircraft at its safe climb speed.
 *
 * @param airspeedMPerS that airspeed, m/s, above 0
 * @param dragN drag of level flight there, N
 * @param weightN weight, N, above 0
 */
public record Climbing(double airspeedMPerS, double dragN, double weightN) {
    /** Checks the physics. */
    public Climbing {
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.positive("weightN", weightN);
    }

    /**
     * An aircraft at 1.3 stall speeds.
     *
     * @param airframe the aircraft
     * @param polar its drag
     * @param densityKgPerM3 density of the air, kg/m³
     * @return it at that airspeed
     */
    public static Climbing of(Airframe airframe, DragPolar polar, double densityKgPerM3) {
        double airspeedMPerS = airframe.climbSpeedMPerS(densityKgPerM3);
        LevelDrag drag = new LevelDrag(polar, airframe.massKg(), airframe.wingAreaM2(), densityKgPerM3);
        return new Climbing(airspeedMPerS, drag.dragN(airspeedMPerS), airframe.massKg() * GRAVITY_M_PER_S2);
    }

    /**
     * Rate of climb, {@code V (T - D) / W}, straight up at most.
     *
     * @param thrustN thrust, N
     * @return rate, m/s; below 0 where it sinks
     */
    public double rateMPerS(double thrustN) {
        return Climb.of(thrustN, dragN, weightN, airspeedMPerS).rateMPerS();
    }
}
