package trestle.figure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.battery.Cell;
import trestle.battery.CellLimits;
import trestle.battery.Chemistry;
import trestle.battery.Cutoff;
import trestle.battery.InternalResistance;
import trestle.battery.Pack;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.battery.PowerStep;
import trestle.battery.Segment;
import trestle.charging.ChargeTarget;
import trestle.charging.ChargeTask;
import trestle.charging.Charger;
import trestle.charging.Connection;
import trestle.charging.PackCharge;
import trestle.finding.Basis;
import trestle.flight.Airframe;
import trestle.flight.Conditions;
import trestle.flight.DragPolar;
import trestle.flight.Endurance;
import trestle.flight.EnduranceTask;
import trestle.flight.EnergyStore;
import trestle.flight.LevelFlight;
import trestle.flight.PolarPower;
import trestle.flight.PropulsiveEfficiency;
import trestle.joint.PackStore;
import trestle.launch.Launch;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LaunchLimits;
import trestle.launch.LaunchWind;
import trestle.launch.LinearThrust;
import trestle.launch.Turn;
import trestle.magnetics.CompassClearance;
import trestle.magnetics.CompassTask;
import trestle.magnetics.LeadRun;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Panel;
import trestle.massbalance.Station;
import trestle.massbalance.Support;
import trestle.massbalance.Tail;
import trestle.massbalance.Target;
import trestle.massbalance.Travel;
import trestle.massbalance.Weighing;
import trestle.massbalance.Wing;
import trestle.propulsion.BladeType;
import trestle.propulsion.Controller;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.Motor;
import trestle.propulsion.Propeller;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.VoltageSource;
import trestle.rails.Conversion;
import trestle.rails.LoadRole;
import trestle.rails.Rail;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Regulator;
import trestle.structure.AirframeLoads;
import trestle.structure.HalfWing;
import trestle.structure.Joint;
import trestle.structure.LiftDistribution;
import trestle.structure.LoadsTask;
import trestle.structure.Material;
import trestle.structure.Materials;
import trestle.structure.Spar;
import trestle.structure.TorsionMoments;
import trestle.structure.WingPanel;
import trestle.survey.Block;
import trestle.survey.Camera;
import trestle.survey.Position;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyTask;
import trestle.telemetry.Channel;
import trestle.telemetry.FlightReview;
import trestle.telemetry.Flown;
import trestle.telemetry.ReviewTask;
import trestle.telemetry.Telemetry;
import trestle.units.Length;
import trestle.units.Rotation;
import trestle.units.Temperature;
import trestle.wiring.Connector;
import trestle.wiring.ContactMaterial;
import trestle.wiring.CurrentPeak;
import trestle.wiring.DropLimits;
import trestle.wiring.Enclosure;
import trestle.wiring.Flight;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeSystem;
import trestle.wiring.Insulation;
import trestle.wiring.WireRun;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/** An invented survey aircraft with two packs, not that of the examples, and the drive for it. */
final class Samples {
    private static final AirState COLD =
            new Conditions(100, OptionalDouble.of(Temperature.kFromC(8)), OptionalDouble.empty()).air();

    private Samples() {}

    static BalanceTask balance() {
        return new BalanceTask(
                List.of(
                        item("fuselage", 1020, 560, 0, 10, 5),
                        item("wing", 1480, 545, 60, 15, 4),
                        item("tail boom", 190, 1060, 30, 3, 5),
                        item("tail", 240, 1470, 60, 5, 3),
                        item("motor", 285, 860, 70, 2, 1),
                        item("speed controller", 92, 760, 40, 0, 0),
                        item("propeller", 58, 905, 70, 0, 0),
                        item("camera", 430, 360, -40, 5, 0),
                        item("autopilot and radios", 210, 470, 0, 0, 0),
                        item("wing servo", 24, 590, 60, 0, 0),
                        item("wing servo", 24, 590, 60, 0, 0),
                        pack("forward pack", 1220, 280, 10, 200, 420),
                        pack("aft pack", 620, 430, 8, 360, 560)),
                Optional.of(new Weighing(List.of(support("front", 2.775, 330), support("rear", 3.244, 720)))),
                Optional.of(wing()),
                Optional.of(new Tail(0.096, 0.76, 1.48, 0.9, -0.02)),
                Optional.of(new Limits(
                        OptionalDouble.of(7),
                        Optional.of(new Station.AtMacFraction(0.24)),
                        Optional.of(new Station.AtMacFraction(0.38)),
                        OptionalDouble.of(0.008))),
                Optional.of(new Target.StaticMargin(0.12)));
    }

    static Wing wing() {
        return new Wing(
                List.of(new Panel(0.31, 0.31, 0.7, 0, 0), new Panel(0.31, 0.19, 0.702, 0.045, Math.toRadians(4))),
                0.43);
    }

    static Item item(
            String name, double massG, double armMm, double verticalMm, double toleranceG, double toleranceMm) {
        return new Item(
                name,
                1,
                massG / 1000,
                armMm / 1000,
                OptionalDouble.empty(),
                OptionalDouble.of(verticalMm / 1000),
                toleranceG / 1000,
                toleranceMm / 1000,
                Optional.empty());
    }

    private static Item pack(String name, double massG, double armMm, double toleranceG, double from, double to) {
        return new Item(
                name,
                1,
                massG / 1000,
                armMm / 1000,
                OptionalDouble.empty(),
                OptionalDouble.of(-0.02),
                toleranceG / 1000,
                0.003,
                Optional.of(new Travel(from / 1000, to / 1000)));
    }

    private static Support support(String name, double readingKg, double armMm) {
        return new Support(name, readingKg, 0.04, armMm / 1000, OptionalDouble.empty(), 0.002, 0.001);
    }

    static PackTask pack() {
        return new PackTask(
                packs(),
                new trestle.battery.Load.Power(145),
                new Cutoff.CellVoltage(3.1),
                trestle.battery.Surroundings.of(Temperature.kFromC(8), trestle.battery.Covering.WRAPPED),
                0.2);
    }

    static SurveyTask survey() {
        List<Position> ring = List.of(
                new Position(8.2, 53.6),
                new Position(8.213, 53.603),
                new Position(8.21, 53.609),
                new Position(8.204, 53.606),
                new Position(8.2, 53.6));
        return new SurveyTask(
                new Camera(0.0132, 0.0088, 5472, 3648, 0.0088, OptionalDouble.of(1), OptionalDouble.of(0.0008)),
                90,
                0.75,
                0.65,
                1,
                Block.of(List.of(ring)),
                OptionalDouble.empty(),
                15,
                new trestle.survey.Wind(6, Math.toRadians(300)),
                Math.toRadians(25),
                false,
                Optional.empty());
    }

    static ChargeTask charge() {
        List<Segment> empty = packs().segments().stream()
                .map(it -> new Segment(it.seriesCount(), it.parallelCount(), it.cell(), it.healthFraction(), 0.22))
                .toList();
        return new ChargeTask(
                new Pack(empty, 0.008),
                trestle.battery.Surroundings.of(Temperature.kFromC(8), trestle.battery.Covering.WRAPPED),
                Connection.ONE_AFTER_ANOTHER,
                new Charger(
                        OptionalDouble.of(12),
                        OptionalDouble.of(180),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        1,
                        0.85,
                        true,
                        0.3),
                OptionalDouble.empty(),
                ChargeTarget.FULL,
                OptionalDouble.empty(),
                0.05 / 3600,
                0.02,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static PackTask packOnALeggedFlight() {
        return new PackTask(
                packs(),
                new trestle.battery.Load.Profile(List.of(
                        new PowerStep(520, 60),
                        new PowerStep(150, 3000),
                        new PowerStep(0, 300),
                        new PowerStep(150, 3000))),
                new Cutoff.CountedCells(3.3, 6, true),
                trestle.battery.Surroundings.of(Temperature.kFromC(8), trestle.battery.Covering.WRAPPED),
                0.2);
    }

    static Pack packs() {
        Cell cell = new Cell(
                Chemistry.LI_ION,
                4.9 * 3600,
                new InternalResistance.Dc(0.032),
                OptionalDouble.of(0.069),
                new CellLimits(
                        OptionalDouble.of(9.8), OptionalDouble.of(3.4), OptionalDouble.empty(), OptionalDouble.empty()),
                List.of());
        return new Pack(List.of(new Segment(4, 4, cell, 1, 1), new Segment(2, 4, cell, 0.94, 1)), 0.008);
    }

    static WireTask wire() {
        return new WireTask(
                new WireRun(
                        "main lead",
                        28,
                        0.62,
                        22.2,
                        Optional.of(new CurrentPeak(42, 45)),
                        1,
                        List.of(new Connector("pack plug", 0.3e-3, 60, 1)),
                        true,
                        true),
                Insulation.SILICONE_200,
                OptionalDouble.empty(),
                new trestle.wiring.Surroundings(
                        Enclosure.STILL_BAY,
                        Temperature.kFromC(30),
                        OptionalDouble.empty(),
                        120,
                        2,
                        trestle.wiring.Surroundings.USUAL_FOAM_WALL_M),
                DropLimits.of(OptionalDouble.of(0.02), OptionalDouble.empty()),
                Optional.of(List.of(ContactMaterial.HEAT_SHRINK_POLYOLEFIN)),
                GaugeSystem.AWG,
                Optional.of(Gauge.parse(GaugeSystem.AWG, "14")),
                Optional.of(new Flight(9000, 24)));
    }

    static EnduranceTask endurance() {
        EnergyStore store = new PackStore(packs(), new Cutoff.CellVoltage(3.1), pack().surroundings());
        return endurance(new Airframe(5.95, 0.784, 2.8, 1.25), store, 15);
    }

    static EnduranceTask endurance(Airframe airframe, EnergyStore store, double airspeedMPerS) {
        return new EnduranceTask(
                airframe,
                new PolarPower(
                        DragPolar.of(0.031, 0.8, airframe.aspectRatio()),
                        PropulsiveEfficiency.constant(0.66, 0.84, 0.95),
                        14),
                store,
                COLD,
                4,
                0.2,
                OptionalDouble.of(airspeedMPerS),
                List.of(),
                Optional.empty());
    }

    static PropulsionTask drive() {
        return drive(1);
    }

    static PropulsionTask drive(int motorCount) {
        AirState air = StandardAtmosphere.at(0);
        Airframe airframe = new Airframe(5.95, 0.784, 2.8, 1.25);
        DragPolar polar = DragPolar.of(0.031, 0.8, airframe.aspectRatio());
        return new PropulsionTask(
                new PropulsionSystem(
                        new Motor(
                                Rotation.radPerSFromRpm(420),
                                0.03,
                                1.1,
                                OptionalDouble.of(20),
                                OptionalDouble.of(48),
                                OptionalDouble.empty()),
                        new Controller(60, 26, 0.003),
                        Propeller.ofSize(Length.mFromIn(15), Length.mFromIn(8), 2, BladeType.EFFICIENT),
                        motorCount,
                        new trestle.propulsion.Supply(
                                VoltageSource.behindResistance(23, 0.05),
                                25.2,
                                OptionalDouble.of(60),
                                OptionalDouble.empty())),
                air,
                Optional.of(new CruiseDemand(
                        15,
                        v -> LevelFlight.dragN(
                                polar, airframe.massKg(), airframe.wingAreaM2(), air.densityKgPerM3(), v))),
                OptionalDouble.of(5.95),
                List.of());
    }

    static LaunchAndClimbTask launch() {
        return launch(new Launch.Hand(9.5, 0, 1.8));
    }

    static LaunchAndClimbTask launch(Launch launch) {
        Airframe airframe = new Airframe(5, 0.6, 2.4, 1.3);
        return new LaunchAndClimbTask(
                airframe,
                DragPolar.of(0.035, 0.8, airframe.aspectRatio()),
                new LinearThrust(30, 28),
                StandardAtmosphere.at(0),
                LaunchWind.STILL,
                launch,
                LaunchLimits.NONE,
                0.3,
                Turn.ofBankRad(Math.toRadians(45)),
                OptionalDouble.empty());
    }

    static RailTask rails() {
        return new RailTask(
                new trestle.rails.Supply(25.2, 18.6),
                List.of(
                        new Rail(
                                "servos",
                                regulator(6, 5, OptionalDouble.of(8)),
                                List.of(load("wing servos", 4, 0.35, 1.6), load("tail servos", 2, 0.3, 1.4)),
                                true),
                        new Rail(
                                "autopilot",
                                regulator(5.2, 3, OptionalDouble.empty()),
                                List.of(load("flight computer", 1, 0.6, 0.9), load("telemetry radio", 1, 0.4, 1.1)),
                                true),
                        new Rail(
                                "camera and link",
                                regulator(12, 2, OptionalDouble.of(2.5)),
                                List.of(load("camera", 1, 0.8, 1.2), load("video link", 1, 0.9, 1.6)),
                                false)));
    }

    static Regulator regulator(double outputV, double maxA, OptionalDouble peakA) {
        return new Regulator(new Conversion.Switching(0.88), outputV, maxA, peakA, 7, 30, Optional.empty());
    }

    static trestle.rails.Load load(String name, int count, double typicalA, double peakA) {
        return new trestle.rails.Load(name, count, typicalA, OptionalDouble.of(peakA), 0.8, true, LoadRole.OTHER);
    }

    static CompassTask compass() {
        return new CompassTask(
                List.of(
                        new LeadRun("main lead", 9, OptionalDouble.of(28), 0.006, false, 0.12, OptionalDouble.empty()),
                        run("motor lead", 20, 12, true, 260),
                        run("servo feed", 4, 4, false, 60)),
                CompassTask.USUAL_EARTH_HORIZONTAL_T,
                CompassTask.USUAL_ALLOWED_ERROR_RAD,
                Basis.COMMON_PRACTICE);
    }

    static LeadRun run(String name, double currentA, double apartMm, boolean twisted, double distanceMm) {
        return new LeadRun(
                name,
                currentA,
                OptionalDouble.empty(),
                apartMm / 1000,
                twisted,
                distanceMm / 1000,
                OptionalDouble.empty());
    }

    static LoadsTask loads() {
        return loads("outer panel", 0.7, trestle.structure.Section.round(0.02, 0.017), 6.9);
    }

    static LoadsTask loads(String name, double sparEndM, trestle.structure.Section section, double massKg) {
        Material carbon = Materials.named("carbon_ud").orElseThrow();
        HalfWing wing = new HalfWing(
                List.of(new WingPanel(0.31, 0.31, 0.7, 0, 0.41), new WingPanel(0.31, 0.19, 0.7, 0.06, 0.33)));
        Spar joiner = new Spar(0, 1, trestle.structure.Section.round(0.016, 0.012), 1, carbon, false);
        return new LoadsTask(
                massKg,
                wing,
                LiftDistribution.SCHRENK,
                1.25,
                -0.8,
                wing.liftSlopePerRad(),
                1.225,
                17,
                OptionalDouble.of(24),
                OptionalDouble.of(27),
                OptionalDouble.empty(),
                OptionalDouble.of(3.8),
                -1.5,
                OptionalDouble.empty(),
                1.5,
                11.5,
                OptionalDouble.empty(),
                List.of(),
                List.of(
                        new Spar(0, sparEndM, section, 1, carbon, false),
                        new Spar(sparEndM, 1.38, trestle.structure.Section.round(0.014, 0.012), 1, carbon, false)),
                List.of(new Joint(name, 0.7, joiner, 0.12, OptionalDouble.of(20e6), 0.5, 0.016)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                new TorsionMoments(-0.05, 0.3, 0, 0, 1.4),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }

    /** Twenty minutes round a square, each side at another airspeed. */
    static ReviewTask flown() {
        int count = 1200;
        double[] time = new double[count];
        double[][] columns = new double[6][count];
        for (int i = 0; i < count; i++) {
            time[i] = i;
            int side = i / 60;
            double v = 13 + side % 5 * 2 + 0.1 * (i % 3);
            double heading = Math.PI / 2 * side;
            columns[0][i] = 25 - 0.001 * i + 0.02 * (i % 5);
            columns[1][i] = (14 + 0.026 * v * v * v + 657 / v + (i % 7)) / columns[0][i];
            columns[2][i] = v;
            columns[3][i] = 100 + 0.1 * (i % 4);
            columns[4][i] = v * Math.cos(heading) - 3;
            columns[5][i] = v * Math.sin(heading) + 1;
        }
        return new ReviewTask(
                Optional.of(Telemetry.of(
                        time,
                        Map.of(
                                Channel.VOLTAGE, columns[0],
                                Channel.CURRENT, columns[1],
                                Channel.AIRSPEED, columns[2],
                                Channel.ALTITUDE, columns[3],
                                Channel.VELOCITY_NORTH, columns[4],
                                Channel.VELOCITY_EAST, columns[5]))),
                Optional.empty(),
                new Flown(OptionalDouble.of(6.6), 14, 1.2, 0.5),
                OptionalDouble.of(2.8),
                Optional.empty());
    }

    static String figure(String name, Theme theme) {
        return switch (name) {
            case "balance" -> BalanceFigure.of(balance(), MassBalance.of(balance()), theme);
            case "pack" -> PackFigure.of(pack(), PackEnergy.of(pack()), theme);
            case "charge" -> ChargeFigure.of(charge(), PackCharge.of(charge()), theme);
            case "survey" -> SurveyFigure.of(survey(), SurveyCoverage.of(survey()), theme);
            case "pack-legs" -> PackFigure.of(packOnALeggedFlight(), PackEnergy.of(packOnALeggedFlight()), theme);
            case "wires" -> WireFigure.of(wire(), WireSizing.of(wire()), theme);
            case "endurance" -> EnduranceFigure.of(endurance(), Endurance.of(endurance()), theme);
            case "propulsion" -> PropulsionFigure.of(drive(), PropulsionMatch.of(drive()), theme);
            case "launch" -> LaunchFigure.of(launch(), LaunchAndClimb.of(launch()), LaunchPath.thrown(), theme);
            case "rails" -> RailFigure.of(rails(), Rails.of(rails()), theme);
            case "loads" -> LoadsFigure.of(AirframeLoads.of(loads()), theme);
            case "compass" -> CompassFigure.of(compass(), CompassClearance.of(compass()), theme);
            case "flight-review" -> FlightReviewFigure.of(flown(), FlightReview.of(flown()), theme);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** All of them. */
    static final List<String> NAMES = List.of(
            "balance",
            "pack",
            "pack-legs",
            "charge",
            "survey",
            "wires",
            "endurance",
            "propulsion",
            "launch",
            "rails",
            "compass",
            "loads",
            "flight-review");
}
