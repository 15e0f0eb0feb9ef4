package trestle.endpoint.propulsionmatch;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trestle.api.model.ApiController;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiMotor;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiPropeller;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.joint.PackVoltage;
import trestle.propulsion.Controller;
import trestle.propulsion.Motor;
import trestle.propulsion.Propeller;
import trestle.propulsion.PropulsionPart;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.Supply;
import trestle.units.Resistance;
import trestle.units.Rotation;
import trestle.units.Temperature;

/**
 * Reads motor, controller and propeller, which several requests share.
 *
 * @param at JSON Pointer of what holds them
 * @param reading notes defaults and contradictions
 */
public record DriveReading(String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";

    /**
     * The whole drive.
     *
     * @param drive of the request
     * @param supply what feeds it; empty where a contradiction was noted
     * @return the drive; empty where a contradiction was noted
     */
    public Optional<PropulsionSystem> system(ApiDrive drive, Optional<Supply> supply) {
        int motorCount = reading.orDefault(drive.motorCount(), ApiDrive.MOTOR_COUNT, at, NOT_GIVEN);
        Optional<Motor> motor = motor(drive.motor());
        Controller controller = controller(drive.controller());
        Optional<Propeller> propeller =
                new PropellerReading(ApiDrive.PROPELLER.at(at), reading).propeller(drive.propeller());
        if (motor.isEmpty() || propeller.isEmpty()) {
            return Optional.empty();
        }
        return supply.map(it -> new PropulsionSystem(motor.get(), controller, propeller.get(), motorCount, it));
    }

    private Optional<Motor> motor(ApiMotor motor) {
        double resistanceOhm = Resistance.ohmFromMilliohm(motor.resistanceMilliohm());
        Double testedV = motor.noLoadVoltageV();
        double dropV = motor.noLoadCurrentA() * resistanceOhm;
        if (testedV != null && testedV <= dropV) {
            reading.fault(
                    ApiMotor.NO_LOAD_VOLTAGE_V.at(ApiDrive.MOTOR.at(at)),
                    "contradiction",
                    FieldUnit.withUnit(testedV, "_v")
                            + " does not drive the no-load current of "
                            + FieldUnit.withUnit(motor.noLoadCurrentA(), "_a")
                            + " through the winding of "
                            + FieldUnit.withUnit(motor.resistanceMilliohm(), "_milliohm"));
            return Optional.empty();
        }
        double windingC = Reading.or(motor.windingTemperatureC(), ApiMotor.WINDING_TEMPERATURE_C);
        return Optional.of(new Motor(
                Rotation.radPerSFromRpm(motor.speedConstantRpmPerV()),
                Motor.hotResistanceOhm(resistanceOhm, Temperature.kFromC(windingC)),
                motor.noLoadCurrentA(),
                Reading.optional(testedV),
                Reading.optional(motor.maxCurrentA()),
                Reading.optional(motor.maxPowerW()),
                Reading.optional(motor.ratingDurationS())));
    }

    private Controller controller(ApiController controller) {
        return new Controller(
                Reading.optional(controller.maxCurrentA()),
                Reading.optional(controller.maxVoltageV()),
                Resistance.ohmFromMilliohm(reading.orDefault(
                        controller.resistanceMilliohm(),
                        ApiController.RESISTANCE_MILLIOHM,
                        ApiDrive.CONTROLLER.at(at),
                        "the request gives none; usual for controllers of 40 to 80 A (common practice, no source)")));
    }

    /**
     * A described pack as what feeds a drive.
     *
     * @param request the pack of the request
     * @param pack the same, read
     * @param cutoff its cutoff, which counts only where the request gives one
     * @param surroundings temperature of the cells at take-off
     * @return the supply
     */
    public static Supply supply(ApiPack request, Pack pack, Optional<Cutoff> cutoff, Surroundings surroundings) {
        return PackVoltage.supply(pack, cutoff.filter(it -> request.cutoff() != null), surroundings);
    }

    /** A supply of one voltage, and what is taken of it. */
    public Supply steady(double voltageV) {
        reading.assume(
                "/supply_voltage_v",
                FieldUnit.withUnit(voltageV, "_v") + " at every current, and no more from the full pack",
                "no pack is described; a real one sags at full throttle and begins above its mean voltage");
        return Supply.steady(voltageV);
    }

    /** Where the parts of a drive stand, with its supply at a place of its own. */
    public static Map<Enum<?>, String> pointers(String at, String supply) {
        String motor = ApiDrive.MOTOR.at(at);
        String controller = ApiDrive.CONTROLLER.at(at);
        String propeller = ApiDrive.PROPELLER.at(at);
        Map<Enum<?>, String> places = new HashMap<>();
        places.put(PropulsionPart.SUPPLY, supply);
        places.put(PropulsionPart.SUPPLY_MAX_CURRENT, "/pack/segments");
        places.put(PropulsionPart.SUPPLY_CUTOFF, "/pack/cutoff");
        places.put(PropulsionPart.MOTOR, motor);
        places.put(PropulsionPart.MOTOR_SPEED_CONSTANT, ApiMotor.SPEED_CONSTANT_RPM_PER_V.at(motor));
        places.put(PropulsionPart.MOTOR_RESISTANCE, ApiMotor.RESISTANCE_MILLIOHM.at(motor));
        places.put(PropulsionPart.MOTOR_RATING_DURATION, ApiMotor.RATING_DURATION_S.at(motor));
        // What is assumed of the no-load current, the voltage of its test would override.
        places.put(PropulsionPart.MOTOR_NO_LOAD_CURRENT, ApiMotor.NO_LOAD_VOLTAGE_V.at(motor));
        places.put(PropulsionPart.MOTOR_MAX_CURRENT, ApiMotor.MAX_CURRENT_A.at(motor));
        places.put(PropulsionPart.MOTOR_MAX_POWER, ApiMotor.MAX_POWER_W.at(motor));
        places.put(PropulsionPart.CONTROLLER, controller);
        places.put(PropulsionPart.CONTROLLER_MAX_CURRENT, ApiController.MAX_CURRENT_A.at(controller));
        places.put(PropulsionPart.CONTROLLER_MAX_VOLTAGE, ApiController.MAX_VOLTAGE_V.at(controller));
        places.put(PropulsionPart.PROPELLER, propeller);
        places.put(PropulsionPart.PROPELLER_DIAMETER, ApiPropeller.DIAMETER_IN.at(propeller));
        places.put(PropulsionPart.PROPELLER_PITCH, ApiPropeller.PITCH_IN.at(propeller));
        places.put(PropulsionPart.PROPELLER_BLADES, ApiPropeller.BLADES.at(propeller));
        places.put(PropulsionPart.PROPELLER_BLADE_TYPE, ApiPropeller.BLADE_TYPE.at(propeller));
        places.put(PropulsionPart.PROPELLER_STATIC_TEST, ApiPropeller.STATIC_TEST.at(propeller));
        places.put(PropulsionPart.PROPELLER_TABLE, ApiPropeller.THRUST_POWER_TABLE.at(propeller) + "/{}");
        places.put(PropulsionPart.PROPELLER_MAX_ROTATION, ApiPropeller.MAX_RPM.at(propeller));
        return places;
    }
}
