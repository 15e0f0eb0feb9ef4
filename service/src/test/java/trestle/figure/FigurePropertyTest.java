package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import trestle.atmosphere.StandardAtmosphere;
import trestle.battery.Cell;
import trestle.battery.Chemistry;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.battery.Segment;
import trestle.charging.ChargeTarget;
import trestle.charging.ChargeTask;
import trestle.charging.Charger;
import trestle.charging.Connection;
import trestle.charging.PackCharge;
import trestle.finding.Basis;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.FixedEnergy;
import trestle.flight.PolarPower;
import trestle.flight.PropulsiveEfficiency;
import trestle.launch.Launch;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbResult;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LaunchLimits;
import trestle.launch.LaunchWind;
import trestle.launch.LinearThrust;
import trestle.launch.Terrain;
import trestle.launch.Turn;
import trestle.magnetics.Clearance;
import trestle.magnetics.CompassClearance;
import trestle.magnetics.CompassTask;
import trestle.magnetics.LeadRun;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Station;
import trestle.massbalance.Tail;
import trestle.massbalance.Travel;
import trestle.propulsion.BladeType;
import trestle.propulsion.Controller;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.DragCurve;
import trestle.propulsion.Motor;
import trestle.propulsion.Propeller;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.VoltageSource;
import trestle.rails.Conversion;
import trestle.rails.LoadRole;
import trestle.rails.Rail;
import trestle.rails.RailBudget;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Regulator;
import trestle.wiring.ContactMaterial;
import trestle.wiring.CurrentPeak;
import trestle.wiring.DropLimits;
import trestle.wiring.Enclosure;
import trestle.wiring.Flight;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeSystem;
import trestle.wiring.Insulation;
import trestle.wiring.Surroundings;
import trestle.wiring.WireRun;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/** Any input that a discipline takes makes a sound figure, and the same one again. */
class FigurePropertyTest {
    @Property(tries = 150)
    void anyAircraftBalances(@ForAll @LongRange(min = 0) long seed, @ForAll @StringLength(max = 80) String name) {
        Chance chance = new Chance(seed);
        List<Item> items = IntStream.rangeClosed(0, chance.upTo(40))
                .mapToObj(i -> item(chance, name + i))
                .toList();
        BalanceTask task = new BalanceTask(
                items,
                Optional.empty(),
                chance.maybe(Samples::wing),
                chance.maybe(
                        () -> new Tail(chance.spread(0.01, 1), chance.spread(0.1, 3), chance.even(-2, 4), 0.9, -0.02)),
                chance.maybe(() -> new Limits(
                        OptionalDouble.empty(),
                        chance.maybe(() -> station(chance)),
                        chance.maybe(() -> station(chance)),
                        OptionalDouble.empty())),
                chance.maybe(() -> station(chance)));
        Balance result = MassBalance.of(task);
        sound(theme -> BalanceFigure.of(task, result, theme));
    }

    private static Item item(Chance chance, String name) {
        double armM = chance.even(-1, 3);
        return new Item(
                name,
                1 + chance.upTo(3),
                chance.spread(1e-4, 100),
                armM,
                OptionalDouble.empty(),
                chance.chance() ? OptionalDouble.of(chance.even(-0.5, 0.5)) : OptionalDouble.empty(),
                chance.spread(1e-4, 0.1),
                chance.spread(1e-4, 0.1),
                chance.maybe(() -> new Travel(armM - chance.even(0, 1), armM + chance.even(0, 1))));
    }

    private static Station station(Chance chance) {
        return chance.chance() ? new Station.AtArm(chance.even(-1, 3)) : new Station.AtMacFraction(chance.even(-1, 2));
    }

    @Property(tries = 100)
    void anyPackDischarges(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        Chemistry[] kinds = {Chemistry.LI_ION, Chemistry.LIPO, Chemistry.LFP};
        Cell cell = Cell.typical(kinds[chance.upTo(2)], 3600 * chance.spread(0.5, 30));
        int series = 1 + chance.upTo(13);
        Pack pack = new Pack(
                List.of(new Segment(series, 1 + chance.upTo(6), cell, chance.even(0.5, 1), chance.even(0, 1))),
                chance.even(0, 0.05));
        PackTask task = new PackTask(
                pack,
                new trestle.battery.Load.Power(chance.spread(1, 5000)),
                chance.chance()
                        ? new Cutoff.CellVoltage(chance.even(2.2, 4))
                        : new Cutoff.PackVoltage(chance.even(1, 4.3) * series),
                trestle.battery.Surroundings.of(chance.even(250, 315), trestle.battery.Covering.BARE),
                chance.even(0, 0.9));
        PackEnergy result = PackEnergy.of(task);
        sound(theme -> PackFigure.of(task, result, theme));
    }

    @Property(tries = 60)
    void anyBlockIsSurveyed(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        List<trestle.survey.Position> ring = new ArrayList<>();
        int corners = 3 + chance.upTo(6);
        double size = chance.spread(0.0005, 0.02);
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double radius = size * chance.even(0.5, 1);
            ring.add(new trestle.survey.Position(8.2 + radius * Math.cos(angle), 53.6 + radius * Math.sin(angle)));
        }
        ring.add(ring.get(0));
        trestle.survey.SurveyTask task = new trestle.survey.SurveyTask(
                new trestle.survey.Camera(
                        0.0235, 0.0156, 6000, 4000, 0.016, OptionalDouble.of(0.8), OptionalDouble.of(0.001)),
                chance.spread(60, 600),
                0.75,
                0.65,
                1,
                trestle.survey.Block.of(List.of(ring)),
                chance.chance() ? OptionalDouble.empty() : OptionalDouble.of(chance.even(0, 6)),
                chance.even(8, 30),
                new trestle.survey.Wind(chance.even(0, 25), chance.even(0, 6)),
                chance.even(0.2, 0.8),
                chance.chance(),
                Optional.empty());
        trestle.survey.SurveyCoverage result = trestle.survey.SurveyCoverage.of(task);
        sound(theme -> SurveyFigure.of(task, result, theme));
    }

    @Property(tries = 60)
    void anyPackIsCharged(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        Chemistry[] kinds = {Chemistry.LI_ION, Chemistry.LIPO, Chemistry.LFP};
        List<Segment> segments = new ArrayList<>();
        Cell cell = Cell.typical(kinds[chance.upTo(2)], 3600 * chance.spread(0.5, 30));
        int parallel = 1 + chance.upTo(5);
        for (int i = 0; i <= chance.upTo(2); i++) {
            segments.add(new Segment(1 + chance.upTo(11), parallel, cell, chance.even(0.5, 1), chance.even(0.01, 1)));
        }
        ChargeTask task = new ChargeTask(
                new Pack(segments, chance.even(0, 0.05)),
                trestle.battery.Surroundings.of(chance.even(255, 335), trestle.battery.Covering.BOXED),
                Connection.values()[chance.upTo(2)],
                new Charger(
                        OptionalDouble.of(chance.spread(0.1, 100)),
                        OptionalDouble.of(chance.spread(5, 2000)),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        1 + chance.upTo(3),
                        chance.even(0.5, 1),
                        chance.chance(),
                        0.3),
                OptionalDouble.empty(),
                chance.chance() ? ChargeTarget.FULL : ChargeTarget.STORAGE,
                OptionalDouble.empty(),
                0.05 / 3600,
                chance.even(0, 0.1),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        PackCharge result = PackCharge.of(task);
        sound(theme -> ChargeFigure.of(task, result, theme));
    }

    @Property(tries = 100)
    void anyWireIsSized(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        double currentA = chance.spread(0.01, 1000);
        WireTask task = new WireTask(
                new WireRun(
                        "run",
                        currentA,
                        chance.spread(0.01, 100),
                        chance.spread(1, 400),
                        chance.maybe(() -> new CurrentPeak(2 * currentA, 10)),
                        1 + chance.upTo(3),
                        List.of(),
                        true,
                        true),
                Insulation.values()[chance.upTo(6)],
                OptionalDouble.empty(),
                new Surroundings(
                        Enclosure.values()[chance.upTo(2)],
                        chance.even(230, 400),
                        OptionalDouble.empty(),
                        chance.even(0, 5000),
                        1 + chance.upTo(4),
                        0.02),
                DropLimits.of(OptionalDouble.of(chance.spread(0.001, 1)), OptionalDouble.empty()),
                chance.maybe(() -> List.of(ContactMaterial.values()[chance.upTo(22)])),
                GaugeSystem.values()[chance.upTo(1)],
                chance.maybe(() -> Gauge.awg(chance.upTo(40))),
                chance.maybe(() -> new Flight(chance.spread(10, 1e5), 25)));
        WireSizing result = WireSizing.of(task);
        sound(theme -> WireFigure.of(task, result, theme));
    }

    @Property(tries = 100)
    void anyAircraftFlies(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        Airframe airframe = new Airframe(
                chance.spread(0.1, 100), chance.spread(0.05, 5), chance.spread(0.3, 8), chance.even(0.5, 3));
        EnduranceTask task = new EnduranceTask(
                airframe,
                new PolarPower(
                        DragPolar.of(chance.spread(0.01, 0.2), chance.even(0.4, 1), airframe.aspectRatio()),
                        PropulsiveEfficiency.constant(0.6, 0.8, 0.9),
                        chance.spread(0.1, 200)),
                new FixedEnergy(chance.spread(1e3, 1e8)),
                StandardAtmosphere.at(chance.even(0, 6000)),
                chance.even(-30, 30),
                chance.even(0, 0.9),
                chance.chance() ? OptionalDouble.of(chance.spread(1, 80)) : OptionalDouble.empty(),
                List.of(),
                Optional.empty());
        EnduranceResult result = Endurance.of(task);
        sound(theme -> EnduranceFigure.of(task, result, theme));
    }

    @Property(tries = 60)
    void anyDriveTurns(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        double voltageV = chance.spread(3, 60);
        PropulsionTask task = new PropulsionTask(
                new PropulsionSystem(
                        new Motor(
                                chance.spread(10, 400),
                                chance.spread(0.005, 1),
                                chance.spread(0.1, 5),
                                OptionalDouble.empty(),
                                chance.chance() ? OptionalDouble.of(chance.spread(1, 200)) : OptionalDouble.empty(),
                                OptionalDouble.empty()),
                        new Controller(chance.spread(1, 200), 70, 0.003),
                        Propeller.ofSize(
                                chance.spread(0.1, 0.7),
                                chance.spread(0.05, 0.5),
                                2 + chance.upTo(2),
                                BladeType.GENERAL),
                        1 + chance.upTo(3),
                        new trestle.propulsion.Supply(
                                VoltageSource.behindResistance(voltageV, chance.spread(0.001, 1)),
                                voltageV,
                                OptionalDouble.empty(),
                                OptionalDouble.empty())),
                StandardAtmosphere.at(0),
                chance.maybe(() -> new CruiseDemand(15, DragCurve.through(chance.spread(0.1, 100), 15))),
                OptionalDouble.empty(),
                List.of());
        PropulsionMatch result = PropulsionMatch.of(task);
        sound(theme -> PropulsionFigure.of(task, result, theme));
    }

    @Property(tries = 60)
    void anyLaunchGoes(@ForAll @LongRange(min = 0) long seed) {
        Chance chance = new Chance(seed);
        Airframe airframe = new Airframe(chance.spread(0.5, 30), chance.spread(0.2, 2), 2.4, chance.even(0.8, 2));
        LaunchAndClimbTask task = new LaunchAndClimbTask(
                airframe,
                DragPolar.of(0.035, 0.8, airframe.aspectRatio()),
                new LinearThrust(chance.spread(1, 200), chance.even(10, 50)),
                StandardAtmosphere.at(0),
                new LaunchWind(chance.even(-5, 10), 10, Terrain.OPEN, OptionalDouble.empty(), false),
                new Launch.Hand(chance.even(0, 15), chance.even(0, 1), chance.even(0.5, 3)),
                LaunchLimits.NONE,
                chance.even(0, 2),
                Turn.ofBankRad(0.5),
                OptionalDouble.empty());
        List<LaunchMoment> path = IntStream.range(0, chance.upTo(50))
                .mapToObj(i -> new LaunchMoment(i * 0.1, chance.even(0, 30), chance.even(0, 40)))
                .toList();
        LaunchAndClimbResult result = LaunchAndClimb.of(task);
        sound(theme -> LaunchFigure.of(task, result, path, theme));
    }

    @Property(tries = 100)
    void anyRailIsLoaded(@ForAll @LongRange(min = 0) long seed, @ForAll @StringLength(max = 80) String name) {
        Chance chance = new Chance(seed);
        List<Rail> rails = IntStream.range(0, chance.upTo(30))
                .mapToObj(i -> new Rail(
                        name + i,
                        new Regulator(
                                new Conversion.Linear(),
                                5,
                                chance.spread(0.001, 1e4),
                                OptionalDouble.empty(),
                                6,
                                30,
                                Optional.empty()),
                        List.of(new trestle.rails.Load(
                                name,
                                1 + chance.upTo(5),
                                chance.spread(1e-4, 1e3),
                                OptionalDouble.empty(),
                                chance.even(0, 1),
                                true,
                                LoadRole.OTHER)),
                        false))
                .toList();
        RailTask task = new RailTask(new trestle.rails.Supply(25, 18), rails);
        RailBudget result = Rails.of(task);
        sound(theme -> RailFigure.of(task, result, theme));
    }

    @Property(tries = 60)
    void anyWingIsLoaded(@ForAll @LongRange(min = 0) long seed, @ForAll @StringLength(max = 80) String name) {
        Chance chance = new Chance(seed);
        double outside = chance.spread(0.003, 0.2);
        var task = Samples.loads(
                name,
                chance.even(0.01, 1.3),
                trestle.structure.Section.round(outside, outside * chance.even(0, 0.99)),
                chance.spread(1.6, 400));
        var result = trestle.structure.AirframeLoads.of(task);
        sound(theme -> LoadsFigure.of(result, theme));
    }

    @Property(tries = 100)
    void anyCompassIsDisturbed(@ForAll @LongRange(min = 0) long seed, @ForAll @StringLength(max = 80) String name) {
        Chance chance = new Chance(seed);
        List<LeadRun> runs = IntStream.range(0, chance.upTo(12))
                .mapToObj(i -> {
                    double apartM = chance.spread(1e-4, 0.3);
                    return new LeadRun(
                            name + i,
                            chance.chance() ? chance.spread(1e-3, 1e4) : 0,
                            OptionalDouble.empty(),
                            apartM,
                            chance.chance(),
                            0.001 + apartM * chance.spread(0.51, 500),
                            OptionalDouble.empty());
                })
                .toList();
        CompassTask task = new CompassTask(runs, chance.spread(1e-6, 7e-5), chance.even(0.001, 0.7), Basis.REQUEST);
        Clearance result = CompassClearance.of(task);
        sound(theme -> CompassFigure.of(task, result, theme));
    }

    private static void sound(Function<Theme, String> figure) {
        String svg = figure.apply(Theme.LIGHT);
        Drawing.read(svg).isSound();
        assertThat(figure.apply(Theme.LIGHT)).isEqualTo(svg);
    }

    /** Numbers from a seed that the property prints when it fails. */
    private static final class Chance {
        private final Random random;

        Chance(long seed) {
            random = new Random(seed);
        }

        boolean chance() {
            return random.nextBoolean();
        }

        int upTo(int most) {
            return random.nextInt(most + 1);
        }

        double even(double from, double to) {
            return from + (to - from) * random.nextDouble();
        }

        /** All orders of magnitude alike. */
        double spread(double from, double to) {
            return from * Math.pow(to / from, random.nextDouble());
        }

        <T> Optional<T> maybe(Supplier<T> value) {
            return chance() ? Optional.of(value.get()) : Optional.empty();
        }
    }
}
