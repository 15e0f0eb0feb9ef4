package trestle.structure;

import java.util.OptionalDouble;

/**
 * What a surface asks of its servo.
 *
 * @param name what it is called
 * @param hingeMomentNm N m
 * @param servoTorqueNm with friction, N m
 * @param loadFraction of the stall torque; absent without a servo
 * @param currentA A; absent where its currents are not known
 * @param blowBackMPerS airspeed at which the servo stalls, m/s; absent without a servo
 */
public record SurfaceLoad(
        String name,
        double hingeMomentNm,
        double servoTorqueNm,
        OptionalDouble loadFraction,
        OptionalDouble currentA,
        OptionalDouble blowBackMPerS) {
    static SurfaceLoad of(ControlSurface surface) {
        double needed = surface.neededNm();
        OptionalDouble torque = surface.servoTorqueNm();
        boolean currents = torque.isPresent()
                && surface.stallCurrentA().isPresent()
                && surface.idleCurrentA().isPresent();
        return new SurfaceLoad(
                surface.name(),
                surface.hingeMomentNm(),
                needed,
                torque.isPresent() ? OptionalDouble.of(needed / torque.getAsDouble()) : torque,
                currents ? OptionalDouble.of(currentA(surface, needed / torque.getAsDouble())) : OptionalDouble.empty(),
                torque.isPresent() && needed > 0
                        ? OptionalDouble.of(surface.airspeedMPerS() * Math.sqrt(torque.getAsDouble() / needed))
                        : OptionalDouble.empty());
    }

    private static double currentA(ControlSurface surface, double load) {
        double idle = surface.idleCurrentA().orElseThrow();
        return idle + (surface.stallCurrentA().orElseThrow() - idle) * Math.min(1, load);
    }
}
