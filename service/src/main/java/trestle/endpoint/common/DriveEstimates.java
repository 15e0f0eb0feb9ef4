package trestle.endpoint.common;

import java.util.Locale;
import java.util.Optional;
import trestle.api.model.ApiBladeType;
import trestle.api.model.ApiController;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiMotor;
import trestle.api.model.ApiPropeller;
import trestle.endpoint.Estimating;
import trestle.endpoint.FieldUnit;
import trestle.estimate.ControllerRules;
import trestle.estimate.Estimate;
import trestle.estimate.MotorRules;
import trestle.estimate.PropellerRules;
import trestle.estimate.Spread;
import trestle.units.Resistance;

/**
 * Estimates of a motor, its controller and its propeller what their makers did not say.
 *
 * @param at JSON Pointer of what holds them
 * @param estimating gives the estimates
 */
public record DriveEstimates(String at, Estimating estimating) {
    private static final String MOTORS =
            "fit to 191 outrunners of three product lines (tables of two universities), scatter of a line not fitted to";

    private static final String PROPELLERS = "errors of the general form on 60 propellers measured in wind tunnels";

    /** By mass, since speed alone says nothing of resistance. */
    private record Size(Optional<Double> massG, String from) {}

    /**
     * The drive with what it lacks.
     *
     * @param drive of the request
     * @return the drive; with gaps where nothing may be estimated, which is noted
     */
    public ApiDrive drive(ApiDrive drive) {
        ApiMotor motor = motor(drive.motor());
        return drive.toBuilder()
                .motor(motor)
                .controller(controller(drive.controller(), drive.motor()))
                .propeller(propeller(drive.propeller()))
                .build();
    }

    private ApiMotor motor(ApiMotor motor) {
        String place = ApiDrive.MOTOR.at(at);
        double label = motor.speedConstantRpmPerV();
        boolean lacks = motor.resistanceMilliohm() == null || motor.noLoadCurrentA() == null;
        if (lacks && estimating.allowed() && !reached(label)) {
            estimating.outOfReach(
                    ApiMotor.RESISTANCE_MILLIOHM.at(place),
                    String.format(
                            Locale.ROOT,
                            "no rule estimates a motor of %.0f rpm/V: they hold from %.0f to %.0f; give"
                                    + " resistance_milliohm and no_load_current_a",
                            label,
                            MotorRules.LEAST_SPEED_CONSTANT,
                            MotorRules.GREATEST_SPEED_CONSTANT));
            return motor;
        }
        Double resistance = estimating.needed(
                motor.resistanceMilliohm(), ApiMotor.RESISTANCE_MILLIOHM, place, () -> resistance(motor));
        Double noLoad = estimating.needed(
                motor.noLoadCurrentA(),
                ApiMotor.NO_LOAD_CURRENT_A,
                place,
                () -> noLoad(motor)
                        .movingWith(ApiMotor.RESISTANCE_MILLIOHM.at(place), MotorRules.RESISTANCE_AGAINST_NO_LOAD));
        Double winding = estimating.usual(
                motor.windingTemperatureC(),
                ApiMotor.WINDING_TEMPERATURE_C,
                place,
                () -> Estimate.of(Spread.between(40, 70, 100), "a winding under load", Estimate.USUAL_PRACTICE));
        return motor.toBuilder()
                .speedConstantRpmPerV(speedConstant(motor, place))
                .resistanceMilliohm(resistance)
                .noLoadCurrentA(noLoad)
                .noLoadVoltageV(motor.noLoadCurrentA() == null ? tested(motor) : motor.noLoadVoltageV())
                .windingTemperatureC(winding)
                .build();
    }

    /** A label is 2 to 10 % above what the loaded motor shows; a measured one stands. */
    private double speedConstant(ApiMotor motor, String place) {
        double label = motor.speedConstantRpmPerV();
        if (Boolean.TRUE.equals(motor.speedConstantMeasured()) || !estimating.allowed()) {
            return label;
        }
        return estimating.drawn(
                ApiMotor.SPEED_CONSTANT_RPM_PER_V.at(place),
                Estimate.of(
                        Spread.logNormal(0.955 * label, 0.04),
                        "a label of " + FieldUnit.withUnit(label, "_rpm_per_v")
                                + "; say speed_constant_measured where it is none",
                        "13 motors measured against their labels"));
    }

    /** The rule speaks of about 10 V. */
    private static Double tested(ApiMotor motor) {
        return Optional.ofNullable(motor.noLoadVoltageV()).orElse(MotorRules.NO_LOAD_VOLTAGE_V);
    }

    private static boolean reached(double rpmPerV) {
        return rpmPerV >= MotorRules.LEAST_SPEED_CONSTANT && rpmPerV <= MotorRules.GREATEST_SPEED_CONSTANT;
    }

    private static Estimate resistance(ApiMotor motor) {
        double rpmPerV = motor.speedConstantRpmPerV();
        if (motor.maxCurrentA() != null) {
            return milliohm(
                    MotorRules.resistanceOfCurrent(rpmPerV, motor.maxCurrentA()),
                    MotorRules.RESISTANCE_BY_RATING,
                    "its greatest current");
        }
        if (motor.maxPowerW() != null) {
            return milliohm(
                    MotorRules.resistanceOfPower(rpmPerV, motor.maxPowerW()),
                    MotorRules.RESISTANCE_BY_RATING,
                    "its greatest power");
        }
        Size size = size(motor);
        double ohm = MotorRules.resistanceOfMass(rpmPerV, size.massG().orElseThrow());
        // What the mass itself is guessed from adds its own scatter.
        return milliohm(
                ohm,
                motor.massG() == null ? MotorRules.RESISTANCE_BY_SPEED : MotorRules.RESISTANCE_BY_MASS,
                size.from());
    }

    private static Estimate milliohm(double ohm, double deviation, String from) {
        return Estimate.of(
                Spread.logNormal(Resistance.milliohmFromOhm(ohm), deviation), "speed constant and " + from, MOTORS);
    }

    private static Estimate noLoad(ApiMotor motor) {
        double rpmPerV = motor.speedConstantRpmPerV();
        if (motor.massG() == null && motor.maxCurrentA() != null) {
            return Estimate.of(
                    Spread.logNormal(MotorRules.noLoadOfCurrent(rpmPerV, motor.maxCurrentA()), MotorRules.NO_LOAD),
                    "speed constant and its greatest current",
                    MOTORS);
        }
        Size size = size(motor);
        return Estimate.of(
                Spread.logNormal(MotorRules.noLoadOfMass(rpmPerV, size.massG().orElseThrow()), MotorRules.NO_LOAD),
                "speed constant and " + size.from(),
                MOTORS);
    }

    private static Size size(ApiMotor motor) {
        if (motor.massG() != null) {
            return new Size(Optional.of(motor.massG()), "mass");
        }
        if (motor.maxPowerW() != null) {
            return new Size(
                    Optional.of(MotorRules.massOfPowerAndSpeed(motor.maxPowerW(), motor.speedConstantRpmPerV())),
                    "its greatest power");
        }
        return new Size(
                Optional.of(MotorRules.massOfSpeed(motor.speedConstantRpmPerV())),
                "the mass usual for it: almost nothing is known");
    }

    /** Without a rating, that of the motor with a third on top; without either, what is usual for its size. */
    private ApiController controller(ApiController given, ApiMotor motor) {
        ApiController controller = given == null ? ApiController.builder().build() : given;
        Double rated = Optional.ofNullable(controller.maxCurrentA())
                .or(() -> Optional.ofNullable(motor.maxCurrentA()).map(a -> 1.3 * a))
                .orElseGet(() -> 1.3
                        * MotorRules.maxCurrentOfMass(
                                motor.speedConstantRpmPerV(),
                                size(motor).massG().orElseThrow()));
        Double resistance = estimating.usual(
                controller.resistanceMilliohm(),
                ApiController.RESISTANCE_MILLIOHM,
                ApiDrive.CONTROLLER.at(at),
                () -> Estimate.of(
                        scaled(ControllerRules.resistanceOhm(rated)),
                        controller.maxCurrentA() == null ? "the current of its motor" : "its rated current",
                        Estimate.USUAL_PRACTICE));
        return controller.toBuilder().resistanceMilliohm(resistance).build();
    }

    private static Spread scaled(Spread ohm) {
        return ohm.times(Resistance.milliohmFromOhm(1));
    }

    private ApiPropeller propeller(ApiPropeller given) {
        String place = ApiDrive.PROPELLER.at(at);
        ApiPropeller propeller = PropellerSize.spelledOut(given, place, estimating);
        if (propeller.diameterIn() == null) {
            return propeller;
        }
        double diameterIn = propeller.diameterIn();
        Double pitchIn = estimating.needed(
                propeller.pitchIn(),
                ApiPropeller.PITCH_IN,
                place,
                () -> Estimate.of(
                        Spread.between(0.42, 0.55, 0.75).times(diameterIn), "its diameter", Estimate.USUAL_PRACTICE));
        if (pitchIn == null || !estimating.allowed() || propeller.thrustPowerTable() != null) {
            return propeller.toBuilder().pitchIn(pitchIn).build();
        }
        Double power = estimating.usual(
                propeller.powerRatio(),
                ApiPropeller.POWER_RATIO,
                place,
                () -> Estimate.of(power(propeller.bladeType(), diameterIn, pitchIn), "diameter and pitch", PROPELLERS));
        Double rotation = estimating.usual(
                propeller.rotationRatio(),
                ApiPropeller.ROTATION_RATIO,
                place,
                () -> Estimate.of(
                        PropellerRules.rotationAtThrust(diameterIn, pitchIn), "diameter and pitch", PROPELLERS));
        return propeller.toBuilder()
                .pitchIn(pitchIn)
                .powerRatio(power)
                .rotationRatio(rotation)
                .build();
    }

    /** A blade of a kind that is not said may be either of the two usual ones. */
    private static Spread power(ApiBladeType type, double diameterIn, double pitchIn) {
        return type == null
                ? PropellerRules.powerOfUnknownBlade(diameterIn, pitchIn)
                : PropellerRules.powerAtThrust(diameterIn, pitchIn);
    }
}
