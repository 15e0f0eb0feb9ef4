package trestle.endpoint.buildreview;

import java.util.Optional;
import java.util.function.Supplier;
import trestle.api.model.ApiAircraftPropulsion;
import trestle.api.model.ApiController;
import trestle.api.model.ApiDrivePlaces;
import trestle.api.model.ApiMotor;
import trestle.api.model.ApiPartPlace;
import trestle.api.model.ApiPropeller;
import trestle.endpoint.Estimating;
import trestle.estimate.ControllerRules;
import trestle.estimate.Estimate;
import trestle.estimate.MotorRules;
import trestle.estimate.PropellerRules;
import trestle.estimate.Spread;

/**
 * Estimates the masses of the parts of a drive that have a place and no mass.
 *
 * @param propulsion of the document
 * @param at its JSON Pointer
 * @param estimating gives the estimates
 */
record PlacesCompletion(ApiAircraftPropulsion propulsion, String at, Estimating estimating) {

    ApiDrivePlaces complete(ApiPropeller propeller) {
        ApiDrivePlaces places = propulsion.places();
        if (places == null) {
            return null;
        }
        ApiMotor motor = propulsion.motor();
        return places.toBuilder()
                .motor(motor.massG() != null ? places.motor() : part("motor", places.motor(), () -> motor(motor)))
                .controller(part("controller", places.controller(), this::controller))
                .propeller(part("propeller", places.propeller(), () -> propeller(propeller)))
                .build();
    }

    /** Without a rule the mass stays missing, and the reading says so. */
    private ApiPartPlace part(String name, ApiPartPlace place, Supplier<Optional<Estimate>> rule) {
        if (place == null || place.massG() != null || !estimating.allowed()) {
            return place;
        }
        String where = ApiAircraftPropulsion.PLACES.at(at) + "/" + name;
        return rule.get()
                .map(estimate -> place.toBuilder()
                        .massG(estimating.usual(null, ApiPartPlace.MASS_G, where, () -> estimate))
                        .build())
                .orElse(place);
    }

    private static Optional<Estimate> motor(ApiMotor motor) {
        double rpmPerV = motor.speedConstantRpmPerV();
        String source = "fit to 191 outrunners of three product lines (tables of two universities)";
        if (motor.maxCurrentA() != null) {
            double massG = MotorRules.massOfCurrent(motor.maxCurrentA(), rpmPerV);
            return Optional.of(
                    Estimate.of(Spread.logNormal(massG, 0.27), "speed constant and its greatest current", source));
        }
        if (motor.maxPowerW() != null) {
            double massG = MotorRules.massOfPowerAndSpeed(motor.maxPowerW(), rpmPerV);
            return Optional.of(
                    Estimate.of(Spread.logNormal(massG, 0.35), "speed constant and its greatest power", source));
        }
        return Optional.of(Estimate.of(
                Spread.logNormal(MotorRules.massOfSpeed(rpmPerV), 0.70),
                "speed constant alone: almost nothing is known",
                source));
    }

    private Optional<Estimate> controller() {
        ApiController controller = propulsion.controller();
        if (controller == null || controller.maxCurrentA() == null || controller.maxVoltageV() == null) {
            return Optional.empty();
        }
        return Optional.of(Estimate.of(
                Spread.logNormal(ControllerRules.massG(controller.maxCurrentA(), controller.maxVoltageV()), 0.34),
                "its ratings",
                "fit to 73 controllers of five makers (table of a university course)"));
    }

    private static Optional<Estimate> propeller(ApiPropeller propeller) {
        return propeller.diameterIn() == null
                ? Optional.empty()
                : Optional.of(Estimate.of(
                        PropellerRules.massG(propeller.diameterIn()),
                        "its diameter",
                        "fit to 95 thin electric propellers of one maker"));
    }
}
