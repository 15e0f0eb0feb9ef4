package trestle.endpoint.propulsionmatch;

import trestle.api.model.ApiDrive;
import trestle.api.model.ApiPropulsionMatchRequest;
import trestle.endpoint.Estimating;
import trestle.endpoint.common.AirframeEstimates;
import trestle.endpoint.common.DriveEstimates;
import trestle.endpoint.common.PackEstimates;

/** Completes a request for a drive: its parts, its pack, and the airframe where cruise is asked of it. */
final class PropulsionCompletion {
    private PropulsionCompletion() {}

    static ApiPropulsionMatchRequest complete(ApiPropulsionMatchRequest request, Estimating estimating) {
        ApiDrive drive = new DriveEstimates("", estimating)
                .drive(ApiDrive.builder()
                        .motor(request.motor())
                        .controller(request.controller())
                        .propeller(request.propeller())
                        .build());
        ApiPropulsionMatchRequest.Builder whole = request.toBuilder()
                .motor(drive.motor())
                .controller(drive.controller())
                .propeller(drive.propeller())
                .pack(
                        request.pack() == null
                                ? null
                                : new PackEstimates(estimating, PackEstimates.startC(request.pack()))
                                        .pack(request.pack(), ApiPropulsionMatchRequest.PACK.at("")));
        return flying(request) ? withAirframe(request, estimating, whole).build() : whole.build();
    }

    /** Whether enough is known of an aircraft to ask its drag. */
    private static boolean flying(ApiPropulsionMatchRequest request) {
        return request.takeoffMassG() != null && request.wingAreaDm2() != null && request.wingSpanMm() != null;
    }

    private static ApiPropulsionMatchRequest.Builder withAirframe(
            ApiPropulsionMatchRequest request, Estimating estimating, ApiPropulsionMatchRequest.Builder whole) {
        AirframeEstimates airframe = new AirframeEstimates(
                request.takeoffMassG(),
                request.wingAreaDm2(),
                request.wingSpanMm(),
                request.airspeedMPerS(),
                request.conditions(),
                request.airframeKind(),
                request.wingSection(),
                estimating);
        boolean wanted = request.drag() != null
                || estimating.allowed() && request.airspeedMPerS() != null && request.thrustRequiredN() == null;
        return whole.drag(wanted ? airframe.polar(request.drag(), ApiPropulsionMatchRequest.DRAG.at("")) : null)
                .maxLiftCoefficient(airframe.maxLift(
                        request.maxLiftCoefficient(), ApiPropulsionMatchRequest.MAX_LIFT_COEFFICIENT, ""));
    }
}
