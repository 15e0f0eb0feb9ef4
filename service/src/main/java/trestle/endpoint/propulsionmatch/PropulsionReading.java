package trestle.endpoint.propulsionmatch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiPropulsionMatchRequest;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.flight.DragPolar;
import trestle.joint.LevelDrag;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.DragCurve;
import trestle.propulsion.PropulsionPart;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.Supply;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;

/**
 * Reads a drive and what is asked of it.
 *
 * @param request the request
 * @param reading notes defaults and contradictions
 */
public record PropulsionReading(ApiPropulsionMatchRequest request, Reading reading) {

    /**
     * The task that the request describes.
     *
     * @return the task
     * @throws ImpossibleRequest where the request contradicts itself
     */
    PropulsionTask task() {
        var air = FlightReading.conditions(request.conditions(), "/conditions", reading)
                .air();
        DriveReading parts = new DriveReading("", reading);
        Optional<PropulsionSystem> system = parts.system(drive(), supply(parts));
        Optional<CruiseDemand> cruise = cruise(air.densityKgPerM3());
        reading.refuseContradictions();
        return new PropulsionTask(
                system.orElseThrow(),
                air,
                cruise,
                request.takeoffMassG() == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Mass.kgFromG(request.takeoffMassG())),
                Reading.listed(request.airspeedsMPerS()));
    }

    private ApiDrive drive() {
        return ApiDrive.builder()
                .motorCount(request.motorCount())
                .motor(request.motor())
                .controller(request.controller())
                .propeller(request.propeller())
                .build();
    }

    private Optional<Supply> supply(DriveReading parts) {
        reading.exactlyOne("", List.of("supply_voltage_v", "pack"), request.supplyVoltageV(), request.pack());
        return request.pack() == null
                ? Optional.ofNullable(request.supplyVoltageV()).map(parts::steady)
                : packSupply(request.pack());
    }

    /** The moment of take-off: how the pack is wrapped does not matter yet. */
    private Optional<Supply> packSupply(ApiPack pack) {
        reading.assume(
                "/pack",
                "voltage in the first moment of each load on the rested pack",
                "a match is no flight; held for half a minute, full throttle pulls a pack some 2 %" + " further down");
        Surroundings surroundings =
                Surroundings.of(PackReading.ambientK(pack.ambientC(), "/pack", reading), Covering.WRAPPED);
        return PackReading.pack(pack, "/pack", reading)
                .map(it -> DriveReading.supply(pack, it, cutoff(pack, it), surroundings));
    }

    private Optional<Cutoff> cutoff(ApiPack request, Pack pack) {
        return Optional.ofNullable(request.cutoff())
                .map(it -> PackReading.cutoff(it, pack.seriesCount(), pack.fullVoltageV(), "/pack/cutoff", reading));
    }

    private Optional<CruiseDemand> cruise(double densityKgPerM3) {
        boolean one =
                reading.atMostOne("", List.of("thrust_required_n", "drag"), request.thrustRequiredN(), request.drag());
        if (!one) {
            return Optional.empty();
        }
        if (request.drag() != null) {
            return withPolar(densityKgPerM3);
        }
        String without = "a request without drag";
        reading.takesNo(without, "", "wing_area_dm2", request.wingAreaDm2());
        reading.takesNo(without, "", "wing_span_mm", request.wingSpanMm());
        if (request.thrustRequiredN() == null) {
            if (request.airspeedMPerS() != null) {
                reading.fault(
                        "/airspeed_m_per_s",
                        "contradiction",
                        "a cruise airspeed needs drag or thrust_required_n beside it");
            }
            return Optional.empty();
        }
        return withThrust();
    }

    private Optional<CruiseDemand> withThrust() {
        if (!reading.needs("thrust_required_n", "", "airspeed_m_per_s", request.airspeedMPerS())) {
            return Optional.empty();
        }
        reading.assume(
                "/thrust_required_n",
                "drag goes with the square of airspeed, for the top speed",
                "it is known at one airspeed; with drag and wing it would be known at all");
        return Optional.of(new CruiseDemand(
                request.airspeedMPerS(), DragCurve.through(request.thrustRequiredN(), request.airspeedMPerS())));
    }

    private Optional<CruiseDemand> withPolar(double densityKgPerM3) {
        if (!reading.needs("drag", "", "airspeed_m_per_s", request.airspeedMPerS())
                | !reading.needs("drag", "", "takeoff_mass_g", request.takeoffMassG())
                | !reading.needs("drag", "", "wing_area_dm2", request.wingAreaDm2())
                | !reading.needs("drag", "", "wing_span_mm", request.wingSpanMm())) {
            return Optional.empty();
        }
        double areaM2 = Area.m2FromDm2(request.wingAreaDm2());
        double spanM = Length.mFromMm(request.wingSpanMm());
        DragPolar polar = FlightReading.polar(request.drag(), spanM * spanM / areaM2);
        return Optional.of(new CruiseDemand(
                request.airspeedMPerS(),
                new LevelDrag(polar, Mass.kgFromG(request.takeoffMassG()), areaM2, densityKgPerM3)));
    }

    /** Where the parts of a drive stand in this request. */
    static Pointers pointers(ApiPropulsionMatchRequest request) {
        Map<Enum<?>, String> places = DriveReading.pointers("", request.pack() == null ? "/supply_voltage_v" : "/pack");
        places.put(PropulsionPart.CRUISE_THRUST, request.drag() == null ? "/thrust_required_n" : "/drag");
        places.put(PropulsionPart.CRUISE_AIRSPEED, "/airspeed_m_per_s");
        places.put(PropulsionPart.AIRSPEED, "/airspeeds_m_per_s/{}");
        return new Pointers(places);
    }
}
