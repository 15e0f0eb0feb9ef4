package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import trestle.api.model.EnduranceAnswer;
import trestle.api.model.EnduranceRequest;
import trestle.api.model.Judgement;
import trestle.api.model.Pack;
import trestle.figure.EnduranceFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.flight.Airframe;
import trestle.flight.Battery;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.EnergyStore;
import trestle.flight.FixedEnergy;
import trestle.flight.FlightPart;
import trestle.flight.Leg;
import trestle.flight.PowerSource;
import trestle.review.PackStore;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;

/** The door of {@code /v1/endurance}: reads the request once, writes the answer once. */
final class EnduranceEndpoint
        implements Calculation<EnduranceRequest, EnduranceAnswer>, Drawn<EnduranceRequest> {
    private static final List<String> MODELS =
            List.of(
                    "level flight from a parabolic polar, a measured curve or a calibration"
                            + " (Anderson, Introduction to Flight)",
                    "endurance by the discharge of the pack at each power (compare Traub, J."
                            + " Aircraft 48(2), 2011)",
                    "U.S. Standard Atmosphere 1976");

    private static final List<String> CAUTIONS =
            List.of(
                    "Times and distances are estimates for steady flight; land with a reserve and"
                            + " check the first flights against them.",
                    "Flight over people, out of sight or high up is governed by local rules, which"
                            + " come first.");

    private static final Pointers POINTERS =
            new Pointers(
                    Map.ofEntries(
                            entry(FlightPart.AIRCRAFT, ""),
                            entry(FlightPart.TAKEOFF_MASS, "/takeoff_mass_g"),
                            entry(FlightPart.MAX_LIFT_COEFFICIENT, "/max_lift_coefficient"),
                            entry(FlightPart.DRAG, "/drag"),
                            entry(FlightPart.EFFICIENCY, "/efficiency"),
                            entry(FlightPart.POWER_CURVE, "/power_curve"),
                            entry(FlightPart.CALIBRATION, "/calibration"),
                            entry(FlightPart.ENERGY, "/pack"),
                            entry(FlightPart.CONDITIONS, "/conditions"),
                            entry(FlightPart.HEADWIND, "/headwind_m_per_s"),
                            entry(FlightPart.RESERVE, "/reserve_percent"),
                            entry(FlightPart.AIRSPEED, "/airspeed_m_per_s"),
                            entry(FlightPart.LEG, "/legs/{}"),
                            entry(FlightPart.BATTERY, "/battery_mass_g")));

    @Override
    public String name() {
        return "endurance";
    }

    @Override
    public Class<EnduranceRequest> requestType() {
        return EnduranceRequest.class;
    }

    @Override
    public EnduranceAnswer answer(EnduranceRequest request) {
        Reading reading = new Reading();
        EnduranceTask task = read(request, reading);
        EnduranceResult result = Endurance.of(task);
        return EnduranceWriting.write(result, judgement(result, POINTERS::to, reading));
    }

    @Override
    public String figure(EnduranceRequest request, Theme theme) {
        EnduranceTask task = read(request, new Reading());
        return EnduranceFigure.of(task, Endurance.of(task), theme);
    }

    static Judgement judgement(
            EnduranceResult result, Function<Subject, String> place, Reading reading) {
        return Judge.of(result.findings(), result.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    private static EnduranceTask read(EnduranceRequest request, Reading reading) {
        reading.exactlyOne(
                "", List.of("pack", "usable_energy_wh"), request.pack(), request.usableEnergyWh());
        Airframe airframe =
                airframe(
                        Mass.kgFromG(request.takeoffMassG()),
                        request.wingAreaDm2(),
                        request.wingSpanMm(),
                        request.maxLiftCoefficient(),
                        reading);
        trestle.flight.Conditions conditions =
                FlightReading.conditions(request.conditions(), "/conditions", reading);
        Optional<PowerSource> power =
                new PowerReading(request, reading)
                        .source(airframe, conditions.air().densityKgPerM3());
        Optional<trestle.battery.Pack> pack = pack(request.pack(), reading);
        Optional<EnergyStore> store =
                request.pack() == null
                        ? Optional.ofNullable(request.usableEnergyWh())
                                .map(wh -> new FixedEnergy(Energy.jFromWh(wh)))
                        : pack.map(p -> store(p, request.pack(), reading));
        double headwindMPerS =
                Reading.or(request.headwindMPerS(), EnduranceRequest.DEFAULT_HEADWIND_M_PER_S);
        double reserve = FlightReading.reserveFraction(request.reservePercent(), "", reading);
        List<Leg> legs =
                FlightReading.legs(
                        request.legs(), request.airspeedMPerS(), headwindMPerS, "/legs", reading);
        Optional<Battery> battery = battery(request, pack, airframe, reading);
        reading.refuseContradictions();
        return new EnduranceTask(
                airframe,
                power.orElseThrow(),
                store.orElseThrow(),
                conditions.air(),
                headwindMPerS,
                reserve,
                Reading.optional(request.airspeedMPerS()),
                legs,
                battery);
    }

    static Airframe airframe(
            double massKg,
            double wingAreaDm2,
            double wingSpanMm,
            Double maxLiftCoefficient,
            Reading reading) {
        return new Airframe(
                massKg,
                Area.m2FromDm2(wingAreaDm2),
                Length.mFromMm(wingSpanMm),
                reading.orDefault(
                        maxLiftCoefficient,
                        EnduranceRequest.DEFAULT_MAX_LIFT_COEFFICIENT,
                        "/max_lift_coefficient",
                        "the request gives none; common practice, no source"));
    }

    private static Optional<trestle.battery.Pack> pack(Pack pack, Reading reading) {
        return pack == null
                ? Optional.empty()
                : PackReading.pack(
                        pack.segments(), pack.leadResistanceMilliohm(), "/pack/segments", reading);
    }

    private static EnergyStore store(trestle.battery.Pack pack, Pack request, Reading reading) {
        return new PackStore(
                pack,
                PackReading.cutoff(
                        request.cutoff(),
                        pack.seriesCount(),
                        pack.fullVoltageV(),
                        "/pack/cutoff",
                        reading),
                PackReading.surroundings(
                        request.ambientC(), request.insulation(), "/pack", reading));
    }

    private static Optional<Battery> battery(
            EnduranceRequest request,
            Optional<trestle.battery.Pack> pack,
            Airframe airframe,
            Reading reading) {
        Optional<Double> massKg =
                Optional.ofNullable(request.batteryMassG())
                        .map(Mass::kgFromG)
                        .or(() -> pack.map(trestle.battery.Pack::massKg));
        if (massKg.isEmpty()) {
            return Optional.empty();
        }
        if (massKg.get() >= airframe.massKg()) {
            reading.fault(
                    request.batteryMassG() == null ? "/pack" : "/battery_mass_g",
                    "contradiction",
                    "a pack of "
                            + Math.round(Mass.gFromKg(massKg.get()))
                            + " g leaves nothing of a take-off mass of "
                            + FieldUnit.withUnit(request.takeoffMassG(), "_g"));
            return Optional.empty();
        }
        Double limitG = request.maxTakeoffMassG();
        return Optional.of(
                new Battery(
                        massKg.get(),
                        limitG == null
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(Mass.kgFromG(limitG))));
    }
}
