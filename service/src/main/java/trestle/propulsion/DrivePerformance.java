package trestle.propulsion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trestle.atmosphere.StandardAtmosphere;

/**
 * What a drive does.
 *
 * @param atRest full throttle at rest; empty where the supply cannot turn the propeller
 * @param cruise the throttle that holds cruise; empty where nothing was asked or thrust falls short
 * @param fullThrottleInCruise full throttle at the cruise airspeed
 * @param thrustToWeightRatio static thrust over weight
 * @param topSpeedMPerS fastest level flight, m/s; empty where no drag was given or thrust never
 *     reaches it
 * @param zeroThrustSpeedMPerS airspeed at which thrust at full throttle ends, m/s
 * @param pitchSpeedMPerS printed pitch times rotation at full throttle at rest, m/s: the trade's
 *     measure
 * @param tipMachRatio greatest speed of the blade tips over that of sound, at full throttle
 * @param curve full throttle over airspeed, in the order asked; airspeeds without a state are left
 *     out
 * @param fastest full throttle at top speed
 */
public record DrivePerformance(
        Optional<OperatingPoint> atRest,
        Optional<OperatingPoint> cruise,
        Optional<OperatingPoint> fullThrottleInCruise,
        OptionalDouble thrustToWeightRatio,
        OptionalDouble topSpeedMPerS,
        OptionalDouble zeroThrustSpeedMPerS,
        OptionalDouble pitchSpeedMPerS,
        OptionalDouble tipMachRatio,
        List<OperatingPoint> curve,
        Optional<OperatingPoint> fastest) {
    /** Even steps of a curve for which no airspeeds were asked. */
    private static final int CURVE_STEPS = 20;

    /** Copies the list. */
    public DrivePerformance {
        curve = List.copyOf(curve);
    }

    /** Works out the performance of a drive. */
    static DrivePerformance of(PropulsionTask task, PowerTrain train) {
        Optional<OperatingPoint> atRest = train.atFullThrottle(0);
        Optional<OperatingPoint> inCruise = task.cruise().flatMap(c -> train.atFullThrottle(c.airspeedMPerS()));
        OptionalDouble zeroThrust = FlightSpeeds.zeroThrustMPerS(train, 1);
        OptionalDouble top = topSpeed(task, train, zeroThrust);
        Optional<OperatingPoint> fastest = top.stream().boxed().findFirst().flatMap(train::atFullThrottle);
        List<OperatingPoint> curve = airspeeds(task, zeroThrust).stream()
                .flatMap(airspeed -> train.atFullThrottle(airspeed).stream())
                .toList();
        return new DrivePerformance(
                atRest,
                task.cruise().flatMap(c -> train.holding(c.thrustN(), c.airspeedMPerS())),
                inCruise,
                thrustToWeight(task, atRest),
                top,
                zeroThrust,
                pitchSpeed(task, atRest),
                fullThrottle(atRest, inCruise, fastest, curve)
                        .mapToDouble(OperatingPoint::tipMachRatio)
                        .max(),
                curve,
                fastest);
    }

    /** Every state at full throttle: the ones that loads are held against. */
    List<OperatingPoint> atFullThrottle() {
        return fullThrottle(atRest, fullThrottleInCruise, fastest, curve).toList();
    }

    /**
     * The states at full throttle of level flight: no faster than its top speed. Where no drag is known, all states;
     * where thrust never reaches drag, rest alone.
     */
    List<OperatingPoint> level(boolean dragKnown) {
        if (!dragKnown) {
            return atFullThrottle();
        }
        double top = topSpeedMPerS.orElse(0);
        return atFullThrottle().stream().filter(p -> p.airspeedMPerS() <= top).toList();
    }

    private static Stream<OperatingPoint> fullThrottle(
            Optional<OperatingPoint> atRest,
            Optional<OperatingPoint> inCruise,
            Optional<OperatingPoint> fastest,
            List<OperatingPoint> curve) {
        return Stream.of(atRest.stream(), inCruise.stream(), fastest.stream(), curve.stream())
                .flatMap(points -> points);
    }

    private static OptionalDouble topSpeed(PropulsionTask task, PowerTrain train, OptionalDouble zeroThrust) {
        return task.cruise().isPresent() && zeroThrust.isPresent()
                ? FlightSpeeds.topMPerS(train, task.cruise().get(), 1, zeroThrust.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble thrustToWeight(PropulsionTask task, Optional<OperatingPoint> atRest) {
        return task.takeoffMassKg().isPresent() && atRest.isPresent()
                ? OptionalDouble.of(atRest.get().thrustN()
                        / (task.takeoffMassKg().getAsDouble() * StandardAtmosphere.GRAVITY_M_PER_S2))
                : OptionalDouble.empty();
    }

    private static OptionalDouble pitchSpeed(PropulsionTask task, Optional<OperatingPoint> atRest) {
        double pitchM = task.system().propeller().pitchM();
        return atRest.stream()
                .mapToDouble(p -> p.rotationRadPerS() / (2 * Math.PI) * pitchM)
                .findFirst();
    }

    private static List<Double> airspeeds(PropulsionTask task, OptionalDouble zeroThrust) {
        if (!task.airspeedsMPerS().isEmpty() || zeroThrust.isEmpty()) {
            return task.airspeedsMPerS();
        }
        List<Double> even = new ArrayList<>();
        for (int step = 0; step <= CURVE_STEPS; step++) {
            even.add(zeroThrust.getAsDouble() * step / CURVE_STEPS);
        }
        return even;
    }
}
