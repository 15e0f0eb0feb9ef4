package trestle.propulsion;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.numeric.Guard;
import trestle.numeric.Root;

/**
 * The drive in one air, ready to be asked: for thrust at an airspeed, or for the throttle and the
 * efficiency that hold a thrust.
 *
 * <p>The propeller is tabulated once, here; every question after that is a root or two. Instances
 * do not change and may be shared.
 */
public final class PowerTrain {
    /** Slowest rotation looked at, over the fastest. */
    private static final double SLOWEST_RATIO = 1e-3;

    /** Past this many times the end of the map the wind drives every propeller. */
    private static final double FARTHEST_RATIO = 4;

    /** Accuracy of rotation and voltage, over their greatest value. */
    private static final double ACCURACY_RATIO = 1e-10;

    /** So near to full throttle is full throttle: the rounding of a root. */
    private static final double LEAST_SPARE_RATIO = 1e-7;

    private final PropulsionSystem system;
    private final AirState air;
    private final Motor motor;
    private final Controller controller;
    private final VoltageSource source;
    private final PropellerMap propeller;
    private final double diameterM;
    private final double densityKgPerM3;
    private final double soundMPerS;
    private final double fastestRevPerS;
    private final double restVoltageV;

    private PowerTrain(PropulsionSystem system, AirState air, Optional<PowerTrain> like) {
        this.system = system;
        this.air = air;
        motor = system.motor();
        controller = system.controller();
        source = system.supply().source();
        diameterM = system.propeller().diameterM();
        densityKgPerM3 = air.densityKgPerM3();
        soundMPerS = air.speedOfSoundMPerS();
        fastestRevPerS = system.noLoadRotationRadPerS() / (2 * Math.PI);
        restVoltageV = system.supply().restVoltageV();
        propeller = like.filter(other -> other.turnsAlike(this))
                .map(PowerTrain::propeller)
                .orElseGet(() -> PropellerMap.of(system.propeller(), air, fastestRevPerS));
    }

    private boolean turnsAlike(PowerTrain other) {
        return fastestRevPerS == other.fastestRevPerS
                && air.equals(other.air)
                && system.propeller().equals(other.system.propeller());
    }

    /**
     * Makes a drive ready in an air.
     *
     * @param system motors, controllers, propellers, supply
     * @param air the air
     * @return the drive
     */
    public static PowerTrain of(PropulsionSystem system, AirState air) {
        return of(system, air, Optional.empty());
    }

    /**
     * Makes a drive ready in an air, with the tabulated propeller of another where it is the same and turns alike: a
     * drive on other wires needs no new one.
     *
     * @param system motors, controllers, propellers, supply
     * @param air the air
     * @param like another drive
     * @return the drive
     */
    public static PowerTrain of(PropulsionSystem system, AirState air, Optional<PowerTrain> like) {
        return new PowerTrain(Guard.present("system", system), Guard.present("air", air), like);
    }

    /**
     * The state at full throttle.
     *
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return the state; empty where the wind drives the propeller faster than the motor would, or
     *     the supply collapses
     */
    public Optional<OperatingPoint> atFullThrottle(double airspeedMPerS) {
        return atThrottle(1, airspeedMPerS);
    }

    /**
     * The state at a throttle.
     *
     * @param throttleFraction share of the supply's voltage passed on, above 0 to 1
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return the state; empty where the wind drives the propeller faster than the motor would, or
     *     the supply collapses
     */
    public Optional<OperatingPoint> atThrottle(double throttleFraction, double airspeedMPerS) {
        Guard.within("throttleFraction", throttleFraction, Double.MIN_NORMAL, 1);
        Guard.notNegative("airspeedMPerS", airspeedMPerS);
        double high = throttleFraction * fastestRevPerS;
        OptionalDouble revPerS = Root.between(
                n -> spareVoltageV(n, throttleFraction, airspeedMPerS),
                Math.min(high, slowestRevPerS(airspeedMPerS)),
                high,
                high * ACCURACY_RATIO);
        if (revPerS.isEmpty()) {
            return Optional.empty();
        }
        Shaft shaft = shaft(revPerS.getAsDouble(), airspeedMPerS);
        return shaft.currentA() < 0
                ? Optional.empty()
                : Optional.of(point(shaft, shaft.outputVoltageV() / throttleFraction));
    }

    /**
     * The state at full throttle on a voltage, whatever the supply would have: for a supply that sags by a law of its own.
     *
     * @param voltageV voltage at the controllers, V, above 0; no more than the supply has at rest
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return the state; empty where the wind drives the propeller faster than the motor would
     */
    public Optional<OperatingPoint> fedAt(double voltageV, double airspeedMPerS) {
        Guard.positive("voltageV", voltageV);
        Guard.notNegative("airspeedMPerS", airspeedMPerS);
        OptionalDouble revPerS = Root.between(
                n -> voltageV - shaft(n, airspeedMPerS).outputVoltageV(),
                Math.min(fastestRevPerS, slowestRevPerS(airspeedMPerS)),
                fastestRevPerS,
                fastestRevPerS * ACCURACY_RATIO);
        if (revPerS.isEmpty()) {
            return Optional.empty();
        }
        Shaft shaft = shaft(revPerS.getAsDouble(), airspeedMPerS);
        return shaft.currentA() < 0 ? Optional.empty() : Optional.of(point(shaft, voltageV));
    }

    /**
     * The state that holds a thrust at an airspeed.
     *
     * @param thrustN thrust of all motors, N, above 0
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return the state; empty where full throttle gives less, or where the propeller would drive the motor
     */
    public Optional<OperatingPoint> holding(double thrustN, double airspeedMPerS) {
        Guard.positive("thrustN", thrustN);
        Guard.notNegative("airspeedMPerS", airspeedMPerS);
        double eachN = thrustN / system.motorCount();
        OptionalDouble revPerS = Root.between(
                n -> propellerThrustN(n, airspeedMPerS) - eachN,
                Math.min(fastestRevPerS, slowestRevPerS(airspeedMPerS)),
                fastestRevPerS,
                fastestRevPerS * ACCURACY_RATIO);
        double leastSpareV = -LEAST_SPARE_RATIO * restVoltageV;
        if (revPerS.isEmpty() || spareVoltageV(revPerS.getAsDouble(), 1, airspeedMPerS) < leastSpareV) {
            return Optional.empty();
        }
        Shaft shaft = shaft(revPerS.getAsDouble(), airspeedMPerS);
        return shaft.currentA() < 0 ? Optional.empty() : Optional.of(point(shaft, supplyVoltageV(shaft)));
    }

    /**
     * Thrust at full throttle: the curve that a launch needs.
     *
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return thrust of all motors, N, below 0 where the propellers brake; empty as in {@link
     *     #atFullThrottle}
     */
    public OptionalDouble thrustN(double airspeedMPerS) {
        return thrustN(1, airspeedMPerS);
    }

    /** Thrust at a throttle, N; empty as in {@link #atThrottle}. */
    OptionalDouble thrustN(double throttleFraction, double airspeedMPerS) {
        Optional<OperatingPoint> point = atThrottle(throttleFraction, airspeedMPerS);
        return point.isPresent() ? OptionalDouble.of(point.get().thrustN()) : OptionalDouble.empty();
    }

    /**
     * Efficiency of each step while a thrust is held: what endurance needs.
     *
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @param thrustN thrust of all motors, N, above 0
     * @return the efficiencies; empty where full throttle gives less
     */
    public Optional<Efficiency> efficiency(double airspeedMPerS, double thrustN) {
        return holding(thrustN, airspeedMPerS).map(OperatingPoint::efficiency);
    }

    /** The drive's parts. */
    PropulsionSystem system() {
        return system;
    }

    /** The propeller's map. */
    PropellerMap propeller() {
        return propeller;
    }

    /** Airspeed at which the propeller surely brakes, m/s. */
    double greatestAirspeedMPerS() {
        return FARTHEST_RATIO * propeller.greatestAdvanceRatio() * fastestRevPerS * diameterM;
    }

    /** One shaft and the electrical output of its controller. */
    private record Shaft(
            double revPerS,
            double airspeedMPerS,
            double thrustN,
            double torqueNm,
            double currentA,
            double outputVoltageV) {
        double rotationRadPerS() {
            return 2 * Math.PI * revPerS;
        }
    }

    private Shaft shaft(double revPerS, double airspeedMPerS) {
        PropellerCoefficients c = propeller.at(airspeedMPerS / (revPerS * diameterM), revPerS);
        double scaleN = thrustScaleN(revPerS);
        double torqueNm = c.power() * scaleN * diameterM / (2 * Math.PI);
        double rotationRadPerS = 2 * Math.PI * revPerS;
        double currentA = motor.currentA(torqueNm, rotationRadPerS);
        double outputVoltageV = motor.voltageV(currentA, rotationRadPerS) + currentA * controller.resistanceOhm();
        return new Shaft(revPerS, airspeedMPerS, c.thrust() * scaleN, torqueNm, currentA, outputVoltageV);
    }

    private double propellerThrustN(double revPerS, double airspeedMPerS) {
        return propeller.at(airspeedMPerS / (revPerS * diameterM), revPerS).thrust() * thrustScaleN(revPerS);
    }

    /** {@code ρ n² D⁴}. */
    private double thrustScaleN(double revPerS) {
        return densityKgPerM3 * revPerS * revPerS * system.propeller().diameterToTheFourthM4();
    }

    /**
     * Voltage that the supply has left over what this rotation takes, both before the controller.
     */
    private double spareVoltageV(double revPerS, double throttleFraction, double airspeedMPerS) {
        Shaft shaft = shaft(revPerS, airspeedMPerS);
        double takenV = shaft.outputVoltageV() / throttleFraction;
        return source.terminalVoltageV(supplyCurrentA(shaft, throttleFraction)) - takenV;
    }

    /**
     * Current of all motors from the supply: that of the motor for its share of the time, and what
     * the controllers lose. They feed nothing back.
     */
    private double supplyCurrentA(Shaft shaft, double throttleFraction) {
        double lossA = Controller.lossCurrentA(restVoltageV, shaft.currentA(), throttleFraction);
        return Math.max(0, system.motorCount() * (throttleFraction * shaft.currentA() + lossA));
    }

    /**
     * The voltage at which supply and demand of power meet, the upper one of two. A shaft no faster
     * than full throttle makes it needs no more than the supply still has at the controller's
     * output voltage, so the bracket from there to the voltage at rest holds just that one.
     */
    private double supplyVoltageV(Shaft shaft) {
        double outputV = shaft.outputVoltageV();
        return Root.between(
                        v -> v - source.terminalVoltageV(supplyCurrentA(shaft, outputV / v)),
                        Math.min(outputV, restVoltageV),
                        restVoltageV,
                        restVoltageV * ACCURACY_RATIO)
                .orElse(outputV);
    }

    private OperatingPoint point(Shaft shaft, double supplyVoltageV) {
        double shaftW = shaft.torqueNm() * shaft.rotationRadPerS();
        double motorVoltageV = motor.voltageV(shaft.currentA(), shaft.rotationRadPerS());
        double motorW = motorVoltageV * shaft.currentA();
        double throttleFraction = shaft.outputVoltageV() / supplyVoltageV;
        double supplyCurrentA = supplyCurrentA(shaft, throttleFraction);
        double supplyW = supplyVoltageV * supplyCurrentA / system.motorCount();
        double airW = shaft.thrustN() * shaft.airspeedMPerS();
        double tipMPerS = Math.hypot(Math.PI * shaft.revPerS() * diameterM, shaft.airspeedMPerS());
        return new OperatingPoint(
                shaft.airspeedMPerS(),
                throttleFraction,
                shaft.rotationRadPerS(),
                shaft.airspeedMPerS() / (shaft.revPerS() * diameterM),
                system.motorCount() * shaft.thrustN(),
                shaft.torqueNm(),
                system.motorCount() * shaftW,
                shaft.currentA(),
                motorVoltageV,
                supplyCurrentA,
                supplyVoltageV,
                tipMPerS / soundMPerS,
                new Efficiency(share(airW, shaftW), share(shaftW, motorW), share(motorW, supplyW)),
                idealEfficiency(shaft));
    }

    private double idealEfficiency(Shaft shaft) {
        if (shaft.airspeedMPerS() == 0) {
            return 0;
        }
        return new PropellerCoefficients(shaft.thrustN() / thrustScaleN(shaft.revPerS()), 0)
                .idealEfficiency(shaft.airspeedMPerS() / (shaft.revPerS() * diameterM));
    }

    /** Part over whole where both are driving power; 0 where either runs the other way. */
    private static double share(double part, double whole) {
        return part > 0 && whole > 0 ? part / whole : 0;
    }

    private double slowestRevPerS(double airspeedMPerS) {
        return Math.max(
                SLOWEST_RATIO * fastestRevPerS,
                airspeedMPerS / (FARTHEST_RATIO * propeller.greatestAdvanceRatio() * diameterM));
    }
}
