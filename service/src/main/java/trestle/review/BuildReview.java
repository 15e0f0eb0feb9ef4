package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackEnergy;
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
import trestle.joint.PackStore;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbTask;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Planform;
import trestle.propulsion.DriveLimits;
import trestle.rails.RailBudget;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Supply;
import trestle.wiring.GaugeAnswer;

/**
 * Reviews a whole aircraft: masses of packs and wires go into the balance, the mass into endurance,
 * the current into packs and wires, the resistance of the wires into the drop.
 *
 * <p>Wires feed back: a thicker wire weighs more, which takes more power, which asks for a thicker
 * wire. The review begins without wires and repeats until the gauges stay as they are.
 */
public final class BuildReview {
    /** A few grams of copper move the current by parts per thousand: two or three rounds settle. */
    private static final int MOST_ROUNDS = 8;

    private final Aircraft aircraft;
    private final Planform planform;
    private final AirState air;
    private final Optional<RailTask> railTask;
    private final Optional<RailBudget> rails;

    private BuildReview(Aircraft aircraft) {
        this.aircraft = aircraft;
        this.planform = Planform.of(aircraft.wing());
        this.air = aircraft.flight().conditions().air();
        this.railTask = railTask(aircraft);
        this.rails = railTask.map(Rails::of);
    }

    /**
     * Reviews an aircraft.
     *
     * @param aircraft the aircraft
     * @return what was found
     */
    public static Review of(Aircraft aircraft) {
        return new BuildReview(aircraft).review();
    }

    /**
     * Reviews an aircraft on the wires that another review of it settled on: with slightly other numbers they are the
     * wires that are fitted all the same.
     *
     * @param aircraft the aircraft
     * @param settled the other review
     * @return what was found
     */
    public static Review of(Aircraft aircraft, Review settled) {
        Round round = new BuildReview(aircraft).new Round(settled.runs());
        return round.review(round.runs());
    }

    /** Regulators see the packs from full down to where the controllers stop. */
    private static Optional<RailTask> railTask(Aircraft aircraft) {
        if (aircraft.rails().isEmpty()) {
            return Optional.empty();
        }
        Pack pack = new Pack(aircraft.segments(), 0);
        double lowestV = Math.min(aircraft.cutoff().packVoltageV(pack), pack.fullVoltageV());
        Supply supply = new Supply(pack.fullVoltageV(), lowestV);
        return Optional.of(new RailTask(supply, aircraft.rails()));
    }

    private double systemsPowerW() {
        return aircraft.systemsPowerW() + rails.map(RailBudget::systemsPowerW).orElse(0.0);
    }

    private Review review() {
        List<RunReview> runs = List.of();
        Round round = new Round(runs);
        for (int i = 0; i < MOST_ROUNDS; i++) {
            List<RunReview> next = round.runs();
            boolean settled = gauges(next).equals(gauges(runs)) && i > 0;
            runs = next;
            if (settled) {
                break;
            }
            round = new Round(runs);
        }
        return round.review(runs);
    }

    private static List<Optional<String>> gauges(List<RunReview> runs) {
        return runs.stream()
                .map(run -> run.fitted().map(a -> a.gauge().designation()))
                .toList();
    }

    /** One pass with wires of known gauge. */
    private final class Round {
        private final Optional<BalanceTask> balanceTask;
        private final Optional<Balance> balance;
        private final double massKg;
        private final PackStore store;
        private final ThrustSource thrust;
        private final Airframe airframe;
        private final DragPolar polar;
        private final EnduranceTask enduranceTask;
        private final EnduranceResult endurance;
        private final Optional<SpeedPoint> cruise;
        private final Optional<FullThrottle> fullThrottle;

        Round(List<RunReview> wires) {
            balanceTask = aircraft.balanced() ? Optional.of(balanceTask(wires)) : Optional.empty();
            balance = balanceTask.map(MassBalance::of);
            massKg = balance.map(b -> b.centre().massKg())
                    .orElseGet(() -> aircraft.takeoffMassKg().getAsDouble());
            store = new PackStore(
                    new Pack(aircraft.segments(), leadResistanceOhm(wires)), aircraft.cutoff(), surroundings());
            thrust = ThrustSource.of(aircraft.propulsion(), store, air);
            Aerodynamics aerodynamics = aircraft.aerodynamics();
            airframe = new Airframe(massKg, planform.areaM2(), planform.spanM(), aerodynamics.maxLiftCoefficient());
            polar = DragPolar.of(
                    aerodynamics.zeroLiftCoefficient(), aerodynamics.oswaldEfficiency(), airframe.aspectRatio());
            enduranceTask = enduranceTask();
            endurance = Endurance.of(enduranceTask);
            cruise = endurance.atAirspeed().or(endurance::bestRange).or(endurance::bestEndurance);
            fullThrottle = thrust.fullThrottlePowerW().stream()
                    .mapToObj(this::atFullThrottle)
                    .findFirst();
        }

        List<RunReview> runs() {
            RunCurrents currents = new RunCurrents(
                    cruise,
                    fullThrottle,
                    aircraft.propulsion().fullThrottleDurationS(),
                    massKg,
                    store.pack().nominalVoltageV(),
                    air,
                    aircraft.flight().conditions().altitudeM());
            return aircraft.runs().stream().map(currents::review).toList();
        }

        Review review(List<RunReview> runs) {
            PackTask packTask = packTask();
            PackEnergy pack = PackEnergy.of(packTask);
            Optional<LaunchAndClimbTask> launchTask = launchTask();
            return new Review(
                    massKg,
                    balance,
                    endurance,
                    cruise,
                    pack,
                    fullThrottle,
                    runs,
                    thrust.match(airframe, polar, cruise, driveLimits()),
                    rails,
                    launchTask.map(LaunchAndClimb::of),
                    aircraft.compass().map(plan -> Compass.of(plan, runs)),
                    new ReviewTasks(balanceTask, enduranceTask, packTask, railTask, launchTask),
                    ReviewChecks.of(aircraft, cruise, fullThrottle, store.pack(), runs));
        }

        /** Wires and plugs are judged run by run. */
        private DriveLimits driveLimits() {
            return DriveLimits.ofLift(airframe.maxLiftCoefficient())
                    .flown(
                            aircraft.aerodynamics().neverExceedMPerS(),
                            aircraft.propulsion().fullThrottleDurationS());
        }

        private Optional<LaunchAndClimbTask> launchTask() {
            PlannedFlight flight = aircraft.flight();
            if (flight.launch().isEmpty() || thrust.thrust().isEmpty()) {
                return Optional.empty();
            }
            LaunchPlan plan = flight.launch().get();
            return Optional.of(new LaunchAndClimbTask(
                    airframe,
                    polar,
                    thrust.thrust().get(),
                    air,
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

        private EnduranceTask enduranceTask() {
            return new EnduranceTask(
                    airframe,
                    new PolarPower(polar, thrust.efficiency(), systemsPowerW()),
                    store,
                    air,
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

        private PackTask packTask() {
            double powerW = cruise.map(SpeedPoint::powerW).orElse(Math.max(1, systemsPowerW()));
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
    }

    private Surroundings surroundings() {
        double airK = air.temperatureK();
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
