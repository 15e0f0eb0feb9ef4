package trestle.endpoint.endurance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiPack;
import trestle.atmosphere.AirState;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.endpoint.propulsionmatch.DriveReading;
import trestle.flight.Airframe;
import trestle.flight.CarriedPack;
import trestle.flight.EnduranceTask;
import trestle.flight.EnergyStore;
import trestle.flight.FixedEnergy;
import trestle.flight.Leg;
import trestle.flight.PowerSource;
import trestle.joint.Drive;
import trestle.joint.PackStore;
import trestle.propulsion.Supply;
import trestle.units.Energy;
import trestle.units.Mass;

/**
 * What a request asks about a flight.
 *
 * @param task the question
 * @param drive the propulsion, where it is described by its parts
 */
public record EnduranceReading(EnduranceTask task, Optional<Drive> drive) {

    private static final String PACK = ApiEnduranceRequest.PACK.at("");
    private static final String PROPULSION = ApiEnduranceRequest.PROPULSION.at("");

    static EnduranceReading of(ApiEnduranceRequest request, Reading reading) {
        return new Document(request, reading).read();
    }

    /** The request while it is being read. */
    private record Document(ApiEnduranceRequest request, Reading reading) {

        EnduranceReading read() {
            reading.exactlyOne("", List.of("pack", "usable_energy_wh"), request.pack(), request.usableEnergyWh());
            Airframe airframe = airframe();
            AirState air = FlightReading.conditions(
                            request.conditions(), ApiEnduranceRequest.CONDITIONS.at(""), reading)
                    .air();
            Optional<Pack> pack =
                    Optional.ofNullable(request.pack()).flatMap(it -> PackReading.pack(it, PACK, reading));
            Optional<PackStore> packStore = pack.map(this::store);
            Optional<Drive> drive = drive(packStore, air);
            Optional<PowerSource> power =
                    new PowerReading(request, reading).source(airframe, air.densityKgPerM3(), drive);
            Optional<EnergyStore> store = request.pack() == null
                    ? Optional.ofNullable(request.usableEnergyWh()).map(wh -> new FixedEnergy(Energy.jFromWh(wh)))
                    : packStore.map(it -> it);
            double headwindMPerS = Reading.or(request.headwindMPerS(), ApiEnduranceRequest.HEADWIND_M_PER_S);
            double reserve = FlightReading.reserveFraction(request.reservePercent(), "", reading);
            List<Leg> legs = FlightReading.legs(
                    request.legs(), request.airspeedMPerS(), headwindMPerS, ApiEnduranceRequest.LEGS.at(""), reading);
            Optional<CarriedPack> carried = carried(pack, airframe);
            reading.refuseContradictions();
            EnduranceTask task = new EnduranceTask(
                    airframe,
                    power.orElseThrow(),
                    store.orElseThrow(),
                    air,
                    headwindMPerS,
                    reserve,
                    Reading.optional(request.airspeedMPerS()),
                    legs,
                    carried);
            return new EnduranceReading(task, drive);
        }

        private Airframe airframe() {
            return FlightReading.airframe(
                    Mass.kgFromG(request.takeoffMassG()),
                    request.wingAreaDm2(),
                    request.wingSpanMm(),
                    request.maxLiftCoefficient(),
                    reading);
        }

        private PackStore store(Pack pack) {
            Cutoff cutoff = PackReading.cutoff(
                    request.pack().cutoff(), pack.seriesCount(), pack.fullVoltageV(), ApiPack.CUTOFF.at(PACK), reading);
            Surroundings surroundings = PackReading.surroundings(
                    request.pack().ambientC(), request.pack().covering(), PACK, reading);
            return new PackStore(pack, cutoff, surroundings);
        }

        private Optional<Drive> drive(Optional<PackStore> store, AirState air) {
            if (request.propulsion() == null) {
                reading.takesNo("a request without propulsion", "", "supply_voltage_v", request.supplyVoltageV());
                return Optional.empty();
            }
            DriveReading parts = new DriveReading(PROPULSION, reading);
            Optional<Drive> drive = parts.system(request.propulsion(), supply(parts, store))
                    .map(system -> Drive.of(system, air, Optional.empty()));
            reading.assume(
                    PROPULSION,
                    "the drive on its supply as at take-off, in every part of the flight",
                    "the voltage moves the efficiency by parts per thousand; on a low pack the maximum thrust is less");
            return drive;
        }

        private Optional<Supply> supply(DriveReading parts, Optional<PackStore> store) {
            if (request.pack() != null) {
                reading.takesNo("propulsion on a described pack", "", "supply_voltage_v", request.supplyVoltageV());
                return store.map(it ->
                        DriveReading.supply(request.pack(), it.pack(), Optional.of(it.cutoff()), it.surroundings()));
            }
            return reading.needs(
                            "propulsion without a described pack", "", "supply_voltage_v", request.supplyVoltageV())
                    ? Optional.of(parts.steady(request.supplyVoltageV()))
                    : Optional.empty();
        }

        private Optional<CarriedPack> carried(Optional<Pack> pack, Airframe airframe) {
            Optional<Double> massKg =
                    Optional.ofNullable(request.packMassG()).map(Mass::kgFromG).or(() -> pack.map(Pack::massKg));
            if (massKg.isEmpty()) {
                return Optional.empty();
            }
            if (massKg.get() >= airframe.massKg()) {
                reading.fault(
                        request.packMassG() == null ? PACK : ApiEnduranceRequest.PACK_MASS_G.at(""),
                        "contradiction",
                        "a pack of "
                                + Math.round(Mass.gFromKg(massKg.get()))
                                + " g leaves nothing of a take-off mass of "
                                + FieldUnit.withUnit(request.takeoffMassG(), "_g"));
                return Optional.empty();
            }
            Double limitG = request.maxTakeoffMassG();
            return Optional.of(new CarriedPack(
                    massKg.get(), limitG == null ? OptionalDouble.empty() : OptionalDouble.of(Mass.kgFromG(limitG))));
        }
    }
}
