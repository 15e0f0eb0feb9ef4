package trestle.endpoint.endurance;

import java.util.Optional;
import trestle.api.model.ApiDragPolar;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiPack;
import trestle.endpoint.Estimating;
import trestle.endpoint.common.AirframeEstimates;
import trestle.endpoint.common.DriveEstimates;
import trestle.endpoint.common.PackEstimates;

/** Completes a request for a flight: airframe, drive and pack, as far as the flight needs them. */
final class EnduranceCompletion {
    private EnduranceCompletion() {}

    static ApiEnduranceRequest complete(ApiEnduranceRequest request, Estimating estimating) {
        AirframeEstimates airframe = new AirframeEstimates(
                request.takeoffMassG(),
                request.wingAreaDm2(),
                request.wingSpanMm(),
                request.airspeedMPerS(),
                request.conditions(),
                request.airframeKind(),
                request.wingSection(),
                estimating);
        boolean flown = request.powerCurve() != null || request.calibration() != null;
        ApiEnduranceRequest.Builder whole = request.toBuilder()
                .maxLiftCoefficient(
                        airframe.maxLift(request.maxLiftCoefficient(), ApiEnduranceRequest.MAX_LIFT_COEFFICIENT, ""))
                .propulsion(Optional.ofNullable(request.propulsion())
                        .map(new DriveEstimates(ApiEnduranceRequest.PROPULSION.at(""), estimating)::drive)
                        .orElse(null))
                .pack(pack(request.pack(), estimating));
        whole.calibration(CalibrationEstimates.calibration(request.calibration(), estimating));
        return flown
                ? whole.build()
                : byPolar(request, airframe, estimating, whole).build();
    }

    /** What was measured in flight has drag and systems in it. */
    private static ApiEnduranceRequest.Builder byPolar(
            ApiEnduranceRequest request,
            AirframeEstimates airframe,
            Estimating estimating,
            ApiEnduranceRequest.Builder whole) {
        boolean wanted = request.drag() != null
                || estimating.allowed() && (request.efficiency() != null || request.propulsion() != null);
        ApiDragPolar drag = wanted ? airframe.polar(request.drag(), ApiEnduranceRequest.DRAG.at("")) : null;
        return whole.drag(drag)
                .systemsPowerW(airframe.systemsPower(request.systemsPowerW(), ApiEnduranceRequest.SYSTEMS_POWER_W, ""));
    }

    private static ApiPack pack(ApiPack pack, Estimating estimating) {
        return pack == null
                ? null
                : new PackEstimates(estimating, PackEstimates.startC(pack)).pack(pack, ApiEnduranceRequest.PACK.at(""));
    }
}
