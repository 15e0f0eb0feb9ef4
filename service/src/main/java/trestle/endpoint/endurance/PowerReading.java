package trestle.endpoint.endurance;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiCalibration;
import trestle.api.model.ApiEfficiency;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiPowerPoint;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.flight.Airframe;
import trestle.flight.AirspeedRange;
import trestle.flight.CalibratedPower;
import trestle.flight.MeasuredPoint;
import trestle.flight.MeasuredPower;
import trestle.flight.PolarPower;
import trestle.flight.PowerSource;
import trestle.flight.PropulsiveEfficiency;
import trestle.joint.Drive;
import trestle.units.Mass;

/**
 * Reads where the power of flight comes from: a drag polar, a measured curve or a calibration.
 *
 * @param request the request
 * @param reading notes defaults and contradictions
 */
public record PowerReading(ApiEnduranceRequest request, Reading reading) {
    /** From pack to thrust, for climbs on power data that cannot tell it. */
    private static final double USUAL_CLIMB_EFFICIENCY = 0.5;

    /**
     * The source.
     *
     * @param airframe the aircraft
     * @param densityKgPerM3 density of the air, kg/m³
     * @param drive the propulsion, where it is described and whole
     * @return the source; empty where a contradiction was noted
     */
    Optional<PowerSource> source(Airframe airframe, double densityKgPerM3, Optional<Drive> drive) {
        List<String> fields = List.of("drag", "power_curve", "calibration");
        reading.exactlyOne("", fields, request.drag(), request.powerCurve(), request.calibration());
        if (request.drag() == null) {
            reading.takesNo("power that was measured in flight", "", "propulsion", request.propulsion());
        }
        if (request.calibration() != null) {
            return calibrated(request.calibration());
        }
        double systemsW = reading.orDefault(
                request.systemsPowerW(), ApiEnduranceRequest.SYSTEMS_POWER_W, "", "the request gives none");
        if (request.powerCurve() != null) {
            return measured(airframe, densityKgPerM3, systemsW);
        }
        return request.drag() == null ? Optional.empty() : polar(airframe, systemsW, drive);
    }

    private Optional<PowerSource> polar(Airframe airframe, double systemsW, Optional<Drive> drive) {
        reading.exactlyOne("", List.of("efficiency", "propulsion"), request.efficiency(), request.propulsion());
        Optional<PropulsiveEfficiency> efficiency =
                request.efficiency() == null ? drive.map(it -> it) : Optional.of(efficiency(request.efficiency()));
        return efficiency.map(
                it -> new PolarPower(FlightReading.polar(request.drag(), airframe.aspectRatio()), it, systemsW));
    }

    private Optional<PowerSource> measured(Airframe airframe, double densityKgPerM3, double systemsW) {
        List<ApiPowerPoint> points = request.powerCurve();
        boolean rising = true;
        for (int i = 0; i < points.size(); i++) {
            String at = ApiEnduranceRequest.POWER_CURVE.at("") + "/" + i;
            ApiPowerPoint point = points.get(i);
            if (i > 0) {
                double before = points.get(i - 1).airspeedMPerS();
                rising &= FlightReading.rises(point.airspeedMPerS(), before, at, reading);
            }
            if (point.powerW() <= systemsW) {
                reading.fault(
                        ApiPowerPoint.POWER_W.at(at),
                        "contradiction",
                        FieldUnit.withUnit(point.powerW(), "_w") + " is not above systems_power_w, which it includes");
                rising = false;
            }
        }
        return rising
                ? Optional.of(new MeasuredPower(
                        points.stream()
                                .map(p -> new MeasuredPoint(p.airspeedMPerS(), p.powerW()))
                                .toList(),
                        airframe.massKg(),
                        densityKgPerM3,
                        systemsW,
                        climbEfficiency()))
                : Optional.empty();
    }

    private Optional<PowerSource> calibrated(ApiCalibration calibration) {
        if (request.systemsPowerW() != null) {
            reading.fault(
                    ApiEnduranceRequest.SYSTEMS_POWER_W.at(""),
                    "contradiction",
                    "systems_power_w is part of the calibration: give only one");
            return Optional.empty();
        }
        return Optional.of(new CalibratedPower(
                calibration.systemsPowerW(),
                calibration.parasitePowerCoefficient(),
                calibration.inducedPowerCoefficient(),
                Mass.kgFromG(calibration.massG()),
                AirspeedRange.ALL,
                climbEfficiency()));
    }

    private double climbEfficiency() {
        ApiEfficiency given = request.efficiency();
        if (given != null) {
            return given.propeller() * given.motor() * given.controller();
        }
        reading.assume(
                ApiEnduranceRequest.EFFICIENCY.at(""),
                "0.5 from pack to thrust, for climbs alone",
                "the request gives none and level flight cannot tell it; common practice, no" + " source");
        return USUAL_CLIMB_EFFICIENCY;
    }

    public static PropulsiveEfficiency efficiency(ApiEfficiency efficiency) {
        return PropulsiveEfficiency.constant(efficiency.propeller(), efficiency.motor(), efficiency.controller());
    }
}
