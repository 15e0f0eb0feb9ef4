package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiAircraftPropulsion;
import trestle.api.model.ApiAircraftWing;
import trestle.api.model.ApiAirframe;
import trestle.api.model.ApiBalanceItem;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiConditions;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiInstalledPack;
import trestle.api.model.ApiPlannedFlight;
import trestle.endpoint.Estimating;
import trestle.endpoint.Reading;
import trestle.endpoint.common.AirframeEstimates;
import trestle.endpoint.common.DriveEstimates;
import trestle.endpoint.massbalance.AirframeReading;
import trestle.endpoint.massbalance.BalanceCompletion;
import trestle.massbalance.Planform;
import trestle.units.Area;
import trestle.units.Length;

/**
 * Completes the document of an aircraft: spells out its short forms, and estimates what it leaves out.
 *
 * @param request the document
 * @param estimating gives the estimates, and notes what is missing
 */
record ReviewCompletion(ApiBuildReviewRequest request, Estimating estimating) {
    private static final String AIRFRAME = "/airframe";
    private static final String PROPULSION = "/propulsion";

    ApiBuildReviewRequest complete() {
        Optional<ApiAircraftWing> wing =
                new WingCompletion(request.airframe().wing(), "/airframe/wing", estimating).complete(balanced());
        List<ApiInstalledPack> packs =
                new InstalledPackCompletion(request.packs(), "/packs", packC(), estimating).complete(balanced());
        loaded();
        ApiBuildReviewRequest.Builder whole = request.toBuilder().packs(packs).propulsion(propulsion());
        if (balanced()) {
            whole.items(BalanceCompletion.items(request.items(), "/items", estimating));
        }
        wing.filter(it -> massG(packs) > 0).ifPresent(it -> airframe(it, packs, whole));
        return whole.build();
    }

    /** Cells that nobody warmed are as cold as the air. */
    private Double packC() {
        ApiPlannedFlight flight = request.flight();
        ApiConditions conditions = flight.conditions();
        return Optional.ofNullable(flight.packTemperatureC())
                .or(() -> Optional.ofNullable(conditions).map(ApiConditions::temperatureC))
                .orElse(null);
    }

    private boolean balanced() {
        return request.items() != null;
    }

    /** The mass comes from items, or is given as a whole. */
    private void loaded() {
        Double massG = request.airframe().takeoffMassG();
        if (!balanced() && massG == null) {
            estimating.missing("/items", "items (or airframe.takeoff_mass_g)");
        }
        if (balanced() && massG != null) {
            estimating.contradiction(
                    ApiAirframe.TAKEOFF_MASS_G.at(AIRFRAME), "items tell the mass at take-off: leave it out");
        }
        if (!balanced() && request.weighing() != null) {
            estimating.contradiction("/weighing", "a weighing is held against items, and there are none");
        }
    }

    private void airframe(ApiAircraftWing wing, List<ApiInstalledPack> packs, ApiBuildReviewRequest.Builder whole) {
        ApiAirframe given = request.airframe();
        Planform planform = Planform.of(AirframeReading.wing(WingCompletion.of(wing)));
        AirframeEstimates estimates = new AirframeEstimates(
                massG(packs),
                Area.dm2FromM2(planform.areaM2()),
                Length.mmFromM(planform.spanM()),
                request.flight().airspeedMPerS(),
                request.flight().conditions(),
                given.kind(),
                given.section(),
                estimating);
        whole.airframe(given.toBuilder()
                .wing(wing)
                .drag(estimates.polar(given.drag(), ApiAirframe.DRAG.at(AIRFRAME)))
                .maxLiftCoefficient(
                        estimates.maxLift(given.maxLiftCoefficient(), ApiAirframe.MAX_LIFT_COEFFICIENT, AIRFRAME))
                .fuselageShiftPercentMac(shift(given))
                .build());
        if (Reading.listed(request.rails()).isEmpty()) {
            whole.systemsPowerW(
                    estimates.systemsPower(request.systemsPowerW(), ApiBuildReviewRequest.SYSTEMS_POWER_W, ""));
        }
    }

    private Double shift(ApiAirframe airframe) {
        boolean judged = balanced() && (airframe.tail() != null || Boolean.TRUE.equals(airframe.tailless()));
        return judged
                ? estimating.usual(
                        airframe.fuselageShiftPercentMac(),
                        ApiAirframe.FUSELAGE_SHIFT_PERCENT_MAC,
                        AIRFRAME,
                        BalanceCompletion::fuselageShift)
                : airframe.fuselageShiftPercentMac();
    }

    /** Near enough for what is estimated from it: a Reynolds number, a class of aircraft. */
    private double massG(List<ApiInstalledPack> packs) {
        return Optional.ofNullable(request.airframe().takeoffMassG())
                .orElseGet(() -> itemsG()
                        + packs.stream()
                                .mapToDouble(InstalledPackCompletion::roughMassG)
                                .sum());
    }

    private double itemsG() {
        return Reading.listed(request.items()).stream()
                .mapToDouble(item -> item.massG() * Reading.or(item.quantity(), ApiBalanceItem.QUANTITY))
                .sum();
    }

    private ApiAircraftPropulsion propulsion() {
        ApiAircraftPropulsion given = request.propulsion();
        if (given.motor() == null || given.propeller() == null) {
            return given;
        }
        if (!balanced() && given.places() != null) {
            estimating.contradiction(
                    ApiAircraftPropulsion.PLACES.at(PROPULSION), "places belong to a balance, and there are no items");
        }
        ApiDrive drive = new DriveEstimates(PROPULSION, estimating)
                .drive(ApiDrive.builder()
                        .motor(given.motor())
                        .controller(given.controller())
                        .propeller(given.propeller())
                        .build());
        return given.toBuilder()
                .motor(drive.motor())
                .controller(drive.controller())
                .propeller(drive.propeller())
                .places(new PlacesCompletion(given, PROPULSION, estimating).complete(drive.propeller()))
                .build();
    }
}
