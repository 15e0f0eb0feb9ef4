package trestle.endpoint.propulsionmatch;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiPropulsionMatchRequest;
import trestle.atmosphere.StandardAtmosphere;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.finding.Basis;
import trestle.flight.DragPolar;
import trestle.joint.LevelDrag;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.DragCurve;
import trestle.propulsion.DriveLimits;
import trestle.propulsion.KeptRating;
import trestle.propulsion.LoadedDrag;
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
        var air = FlightReading.conditions(request.conditions(), ApiPropulsionMatchRequest.CONDITIONS.at(""), reading)
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
                Reading.listed(request.airspeedsMPerS()),
                limits());
    }

    private DriveLimits limits() {
        boolean carried = request.drag() != null || request.wingAreaDm2() != null;
        return new DriveLimits(
                carried ? OptionalDouble.of(maxLiftCoefficient()) : Reading.optional(request.maxLiftCoefficient()),
                request.maxLiftCoefficient() == null ? Basis.DEFAULT : Basis.REQUEST,
                Reading.optional(request.wireCurrentA()),
                Reading.optional(request.connectorCurrentA()),
                Reading.optional(request.neverExceedAirspeedMPerS()),
                Reading.optional(request.fullThrottleDurationS()),
                request.keep() == null
                        ? EnumSet.allOf(KeptRating.class)
                        : request.keep().stream()
                                .map(kept -> KeptRating.valueOf(kept.name()))
                                .collect(Collectors.toSet()));
    }

    private double maxLiftCoefficient() {
        return reading.orDefault(
                request.maxLiftCoefficient(),
                ApiPropulsionMatchRequest.MAX_LIFT_COEFFICIENT,
                "",
                "the request gives none; a plain wing without flaps (common practice, no source)");
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
                ApiPropulsionMatchRequest.PACK.at(""),
                "voltage in the first moment of each load on the rested pack",
                "a match is no flight; held for half a minute, full throttle pulls a pack some 2 %" + " further down");
        Surroundings surroundings = Surroundings.of(
                PackReading.ambientK(pack.ambientC(), ApiPropulsionMatchRequest.PACK.at(""), reading),
                Covering.WRAPPED);
        return PackReading.pack(pack, ApiPropulsionMatchRequest.PACK.at(""), reading)
                .map(it -> DriveReading.supply(pack, it, cutoff(pack, it), surroundings));
    }

    private Optional<Cutoff> cutoff(ApiPack request, Pack pack) {
        return Optional.ofNullable(request.cutoff())
                .map(it -> PackReading.cutoff(
                        it,
                        pack.seriesCount(),
                        pack.fullVoltageV(),
                        ApiPack.CUTOFF.at(ApiPropulsionMatchRequest.PACK.at("")),
                        reading));
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
        reading.takesNo(without, "", "wing_span_mm", request.wingSpanMm());
        if (request.thrustRequiredN() == null) {
            reading.takesNo(without + " and thrust_required_n", "", "wing_area_dm2", request.wingAreaDm2());
            if (request.airspeedMPerS() != null) {
                reading.fault(
                        ApiPropulsionMatchRequest.AIRSPEED_M_PER_S.at(""),
                        "contradiction",
                        "a cruise airspeed needs drag or thrust_required_n beside it");
            }
            return Optional.empty();
        }
        return withThrust(densityKgPerM3);
    }

    private Optional<CruiseDemand> withThrust(double densityKgPerM3) {
        if (!reading.needs("thrust_required_n", "", "airspeed_m_per_s", request.airspeedMPerS())) {
            return Optional.empty();
        }
        reading.assume(
                ApiPropulsionMatchRequest.THRUST_REQUIRED_N.at(""),
                "drag goes with the square of airspeed, for the top speed",
                "it is known at one airspeed; with drag and wing it would be known at all");
        DragCurve drag = DragCurve.through(request.thrustRequiredN(), request.airspeedMPerS());
        return Optional.of(new CruiseDemand(
                request.airspeedMPerS(),
                request.takeoffMassG() == null || request.wingAreaDm2() == null
                        ? drag
                        : new LoadedDrag(
                                drag,
                                Mass.kgFromG(request.takeoffMassG()) * StandardAtmosphere.GRAVITY_M_PER_S2,
                                Area.m2FromDm2(request.wingAreaDm2()),
                                densityKgPerM3)));
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
        Map<Enum<?>, String> places = DriveReading.pointers(
                "",
                request.pack() == null
                        ? ApiPropulsionMatchRequest.SUPPLY_VOLTAGE_V.at("")
                        : ApiPropulsionMatchRequest.PACK.at(""));
        places.put(
                PropulsionPart.CRUISE_THRUST,
                request.drag() == null
                        ? ApiPropulsionMatchRequest.THRUST_REQUIRED_N.at("")
                        : ApiPropulsionMatchRequest.DRAG.at(""));
        places.put(PropulsionPart.CRUISE_AIRSPEED, ApiPropulsionMatchRequest.AIRSPEED_M_PER_S.at(""));
        places.put(PropulsionPart.TAKEOFF_MASS, ApiPropulsionMatchRequest.TAKEOFF_MASS_G.at(""));
        places.put(PropulsionPart.WING_AREA, ApiPropulsionMatchRequest.WING_AREA_DM2.at(""));
        places.put(PropulsionPart.MAX_LIFT, ApiPropulsionMatchRequest.MAX_LIFT_COEFFICIENT.at(""));
        places.put(PropulsionPart.WIRE_CURRENT, ApiPropulsionMatchRequest.WIRE_CURRENT_A.at(""));
        places.put(PropulsionPart.CONNECTOR_CURRENT, ApiPropulsionMatchRequest.CONNECTOR_CURRENT_A.at(""));
        places.put(PropulsionPart.NEVER_EXCEED, ApiPropulsionMatchRequest.NEVER_EXCEED_AIRSPEED_M_PER_S.at(""));
        places.put(PropulsionPart.FULL_THROTTLE_DURATION, ApiPropulsionMatchRequest.FULL_THROTTLE_DURATION_S.at(""));
        places.put(PropulsionPart.AIRSPEED, ApiPropulsionMatchRequest.AIRSPEEDS_M_PER_S.at("") + "/{}");
        return new Pointers(places);
    }
}
