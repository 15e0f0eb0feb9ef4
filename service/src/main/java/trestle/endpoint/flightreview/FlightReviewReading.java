package trestle.endpoint.flightreview;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiConditions;
import trestle.api.model.ApiEfficiency;
import trestle.api.model.ApiFlightReviewRequest;
import trestle.api.model.ApiFlightSummary;
import trestle.api.model.ApiFlownAircraft;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.joint.RestVoltage;
import trestle.telemetry.Flown;
import trestle.telemetry.FlownPack;
import trestle.telemetry.Landing;
import trestle.telemetry.ReviewTask;
import trestle.telemetry.Telemetry;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Time;

/**
 * Reads what is asked of a flight.
 *
 * @param request the request
 * @param reading notes defaults and contradictions
 */
record FlightReviewReading(ApiFlightReviewRequest request, Reading reading) {
    private static final String SUMMARY = ApiFlightReviewRequest.SUMMARY.at("");
    private static final String AIRCRAFT = ApiFlightReviewRequest.AIRCRAFT.at("");

    ReviewTask task() {
        reading.exactlyOne("", List.of("telemetry", "summary"), request.telemetry(), request.summary());
        Optional<Telemetry> log = request.telemetry() == null
                ? Optional.empty()
                : TelemetryReading.of(request.telemetry(), request.window(), reading);
        if (request.telemetry() == null) {
            reading.takesNo("a summary", "", "window", request.window());
        }
        Optional<Landing> landing = Optional.ofNullable(request.summary()).map(this::landing);
        Flown flown = flown();
        Optional<FlownPack> pack = request.pack() == null
                ? Optional.empty()
                : PackReading.pack(request.pack(), ApiFlightReviewRequest.PACK.at(""), reading)
                        .map(RestVoltage::of);
        ApiFlownAircraft aircraft = request.aircraft();
        reading.refuseContradictions();
        return new ReviewTask(
                log,
                landing,
                flown,
                aircraft == null ? OptionalDouble.empty() : Reading.optional(aircraft.wingSpanMm(), Length::mFromMm),
                pack);
    }

    private Landing landing(ApiFlightSummary summary) {
        reading.exactlyOne(
                SUMMARY, List.of("charge_used_ah", "energy_used_wh"), summary.chargeUsedAh(), summary.energyUsedWh());
        reading.atMostOne(
                SUMMARY,
                List.of("mean_airspeed_m_per_s", "distance_km"),
                summary.meanAirspeedMPerS(),
                summary.distanceKm());
        if (summary.restVoltageV() != null) {
            reading.notBelow(
                    SUMMARY,
                    "rest_voltage_v",
                    summary.restVoltageV(),
                    "lowest_voltage_v",
                    Reading.or(summary.lowestVoltageV(), 0.0));
        }
        if (summary.distanceKm() != null) {
            reading.assume(
                    ApiFlightSummary.MEAN_AIRSPEED_M_PER_S.at(SUMMARY),
                    "distance over duration",
                    "the summary gives no airspeed: still air, and the power is taken as less sure by a tenth");
        }
        return new Landing(
                Time.sFromMin(summary.durationMin()),
                Reading.optional(summary.chargeUsedAh(), Charge::cFromAh),
                Reading.optional(summary.energyUsedWh(), Energy::jFromWh),
                Reading.optional(summary.meanAirspeedMPerS()),
                Reading.optional(summary.distanceKm(), Length::mFromKm),
                Reading.optional(summary.restVoltageV()),
                Reading.optional(summary.lowestVoltageV()));
    }

    private Flown flown() {
        ApiFlownAircraft aircraft = request.aircraft();
        double density = FlightReading.conditions(air(), ApiFlightReviewRequest.CONDITIONS.at(""), reading)
                .air()
                .densityKgPerM3();
        if (aircraft == null) {
            return new Flown(OptionalDouble.empty(), 0, density, Flown.USUAL_CLIMB_EFFICIENCY);
        }
        double systemsW = reading.orDefault(
                aircraft.systemsPowerW(),
                ApiFlownAircraft.SYSTEMS_POWER_W,
                AIRCRAFT,
                "the request gives none: what the systems take counts as drag");
        return new Flown(
                OptionalDouble.of(Mass.kgFromG(aircraft.takeoffMassG())),
                systemsW,
                density,
                climbEfficiency(aircraft.efficiency()));
    }

    /** The temperature of a summary stands for that of the conditions. */
    private ApiConditions air() {
        Double noted = request.summary() == null ? null : request.summary().temperatureC();
        ApiConditions given = request.conditions();
        if (noted == null) {
            return given;
        }
        if (given == null) {
            return ApiConditions.builder().temperatureC(noted).build();
        }
        if (given.temperatureC() != null) {
            reading.fault(
                    ApiFlightSummary.TEMPERATURE_C.at(SUMMARY),
                    "contradiction",
                    "temperature_c stands in conditions too: give only one");
        }
        return given.toBuilder().temperatureC(noted).build();
    }

    private double climbEfficiency(ApiEfficiency efficiency) {
        if (efficiency != null) {
            return efficiency.propeller() * efficiency.motor() * efficiency.controller();
        }
        if (request.telemetry() != null) {
            reading.assume(
                    ApiFlownAircraft.EFFICIENCY.at(AIRCRAFT),
                    "0.5 from pack to thrust, to take slow climbs out of the power",
                    "the request gives none; common practice, no source");
        }
        return Flown.USUAL_CLIMB_EFFICIENCY;
    }
}
