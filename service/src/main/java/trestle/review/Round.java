package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackTask;
import trestle.battery.Surroundings;
import trestle.flight.Airframe;
import trestle.flight.CarriedPack;
import trestle.flight.DragPolar;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.PolarPower;
import trestle.flight.SpeedPoint;
import trestle.joint.Climbing;
import trestle.joint.GoAroundTask;
import trestle.joint.PackSource;
import trestle.joint.PackStore;
import trestle.launch.LaunchAndClimbTask;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Planform;
import trestle.propulsion.DriveLimits;
import trestle.wiring.GaugeAnswer;

/**
 * One pass of a review with wires of known gauge. What is not asked for is not worked out: a part that is wanted alone
 * costs what it needs.
 */
final class Round {
    private final Base base;
    private final Aircraft aircraft;
    private final Optional<BalanceTask> balanceTask;
    private final Optional<Balance> balance;
    private final double massKg;
    private final PackStore store;
    private final Airframe airframe;
    private final DragPolar polar;
    private final Once<ThrustSource> thrust;
    private final Once<EnduranceTask> enduranceTask;
    private final Once<EnduranceResult> endurance;
    private final Once<Optional<SpeedPoint>> cruise;
    private final Once<Optional<FullThrottle>> fullThrottle;

    Round(Base base, List<RunReview> wires, Optional<Round> before) {
        this.base = base;
        aircraft = base.aircraft();
        balanceTask = aircraft.balanced() ? Optional.of(balanceTask(wires)) : Optional.empty();
        balance = balanceTask.map(MassBalance::of);
        massKg = balance.map(b -> b.centre().massKg())
                .orElseGet(() -> aircraft.takeoffMassKg().getAsDouble());
        store = new PackStore(
                new Pack(aircraft.segments(), leadResistanceOhm(wires)), aircraft.cutoff(), surroundings());
        Aerodynamics aerodynamics = aircraft.aerodynamics();
        Planform planform = base.planform();
        airframe = new Airframe(massKg, planform.areaM2(), planform.spanM(), aerodynamics.maxLiftCoefficient());
        polar = DragPolar.of(
                aerodynamics.zeroLiftCoefficient(), aerodynamics.oswaldEfficiency(), airframe.aspectRatio());
        thrust = Once.of(() ->
                ThrustSource.of(aircraft.propulsion(), store, base.air(), before.map(round -> round.thrust.get())));
        enduranceTask = Once.of(this::flight);
        endurance = Once.of(() -> Endurance.of(enduranceTask.get()));
        // Wires ask a round for its cruise alone: where its airspeed is given, the rest of the flight is not worked
        // out.
        cruise = Once.of(() -> Endurance.atAirspeed(enduranceTask.get())
                .or(endurance()::bestRange)
                .or(endurance()::bestEndurance));
        fullThrottle = Once.of(() -> thrust.get().fullThrottlePowerW().stream()
                .mapToObj(this::atFullThrottle)
                .findFirst());
    }

    Base base() {
        return base;
    }

    double massKg() {
        return massKg;
    }

    Optional<BalanceTask> balanceTask() {
        return balanceTask;
    }

    Optional<Balance> balance() {
        return balance;
    }

    EnduranceTask enduranceTask() {
        return enduranceTask.get();
    }

    EnduranceResult endurance() {
        return endurance.get();
    }

    Optional<SpeedPoint> cruise() {
        return cruise.get();
    }

    Optional<FullThrottle> fullThrottle() {
        return fullThrottle.get();
    }

    Pack pack() {
        return store.pack();
    }

    /** The wires that this pass asks for; without a wire no flight is asked. */
    List<RunReview> runs() {
        return aircraft.runs().isEmpty() ? List.of() : runs(cruise());
    }

    /** The wires that it would about ask for, to begin with: the energy is taken not to change with the power. */
    List<RunReview> aboutRuns() {
        return aircraft.runs().isEmpty() ? List.of() : runs(Endurance.aboutBestRange(enduranceTask.get()));
    }

    private List<RunReview> runs(Optional<SpeedPoint> cruise) {
        RunCurrents currents = new RunCurrents(
                cruise,
                fullThrottle(),
                aircraft.propulsion().fullThrottleDurationS(),
                massKg,
                store.pack().nominalVoltageV(),
                PackSource.of(new Pack(aircraft.segments(), 0), store.surroundings()),
                base.air(),
                aircraft.flight().conditions().altitudeM());
        return aircraft.runs().stream().map(currents::review).toList();
    }

    Optional<DriveMatch> match() {
        return thrust.get().match(airframe, polar, cruise(), driveLimits());
    }

    /** Wires and plugs are judged run by run. */
    private DriveLimits driveLimits() {
        return DriveLimits.ofLift(airframe.maxLiftCoefficient())
                .flown(
                        aircraft.aerodynamics().neverExceedMPerS(),
                        aircraft.propulsion().fullThrottleDurationS());
    }

    /** Empty where nothing flies, or the full power is not known. */
    Optional<GoAroundTask> goAroundTask() {
        return cruise().flatMap(point -> new GoAroundOfAircraft(
                        aircraft.goAround(), climbing(), store, thrust.get(), base.systemsPowerW())
                .after(point, endurance().energy().legs()));
    }

    /** Empty with one motor, or where a place is not known. */
    Optional<MotorOutOfAircraft> motorOut() {
        return MotorOutOfAircraft.of(
                aircraft,
                climbing(),
                base.air(),
                thrust.get(),
                balance.stream().mapToDouble(it -> it.centre().armM()).findFirst());
    }

    private Climbing climbing() {
        return Climbing.of(airframe, polar, base.air().densityKgPerM3());
    }

    Optional<LaunchAndClimbTask> launchTask() {
        PlannedFlight flight = aircraft.flight();
        if (flight.launch().isEmpty() || thrust.get().thrust().isEmpty()) {
            return Optional.empty();
        }
        LaunchPlan plan = flight.launch().get();
        return Optional.of(new LaunchAndClimbTask(
                airframe,
                polar,
                thrust.get().thrust().get(),
                base.air(),
                plan.wind(),
                plan.launch(),
                plan.limits(),
                plan.motorDelayS(),
                plan.turn(),
                OptionalDouble.empty()));
    }

    private BalanceTask balanceTask(List<RunReview> wires) {
        List<Item> items = new ArrayList<>(aircraft.items());
        aircraft.packs().forEach(pack -> items.add(pack.item()));
        if (aircraft.propulsion() instanceof Propulsion.ByParts parts) {
            items.addAll(parts.items());
        }
        items.addAll(WireItems.of(aircraft.runs(), wires));
        return new BalanceTask(
                items,
                aircraft.weighing(),
                Optional.of(aircraft.wing()),
                aircraft.tail(),
                aircraft.limits(),
                aircraft.target());
    }

    private EnduranceTask flight() {
        return new EnduranceTask(
                airframe,
                new PolarPower(polar, thrust.get().efficiency(), base.systemsPowerW()),
                store,
                base.air(),
                aircraft.flight().headwindMPerS(),
                aircraft.flight().reserveFraction(),
                aircraft.flight().cruiseAirspeedMPerS(),
                aircraft.flight().legs(),
                carriedPack());
    }

    /** Scales that show less than the packs weigh have no pack to vary. */
    private Optional<CarriedPack> carriedPack() {
        double packsKg = aircraft.packs().stream()
                .mapToDouble(p -> p.item().totalMassKg())
                .sum();
        OptionalDouble limit =
                aircraft.limits().map(Limits::maximumTakeoffMassKg).orElse(OptionalDouble.empty());
        return packsKg < airframe.massKg() ? Optional.of(new CarriedPack(packsKg, limit)) : Optional.empty();
    }

    PackTask packTask() {
        double powerW = cruise().map(SpeedPoint::powerW).orElse(Math.max(1, base.systemsPowerW()));
        return new PackTask(
                store.pack(),
                new Load.Power(powerW),
                aircraft.cutoff(),
                store.surroundings(),
                aircraft.flight().reserveFraction());
    }

    private FullThrottle atFullThrottle(double powerW) {
        return FullThrottle.from(store, powerW, aircraft.propulsion().fullThrottleDurationS());
    }

    private Surroundings surroundings() {
        double airK = base.air().temperatureK();
        return new Surroundings(airK, aircraft.flight().packTemperatureK().orElse(airK), aircraft.covering());
    }

    private static double leadResistanceOhm(List<RunReview> wires) {
        double sum = 0;
        for (RunReview run : wires) {
            if (run.carriesPackCurrent()) {
                sum += run.fitted().map(GaugeAnswer::resistanceOhm).orElse(0.0)
                        + run.task().run().connectorResistanceOhm();
            }
        }
        return sum;
    }
}
