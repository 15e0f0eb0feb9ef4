package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiAircraftPropulsion;
import trestle.api.model.ApiDeadPropeller;
import trestle.api.model.ApiDrive;
import trestle.api.model.ApiDrivePlaces;
import trestle.api.model.ApiPartPlace;
import trestle.endpoint.Reading;
import trestle.endpoint.endurance.PowerReading;
import trestle.endpoint.propulsionmatch.DriveReading;
import trestle.launch.LinearThrust;
import trestle.massbalance.Item;
import trestle.propulsion.DeadPropellerState;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.Supply;
import trestle.review.Propulsion;
import trestle.units.Length;
import trestle.units.Mass;

/**
 * Reads the propulsion of an aircraft: by its parts, or by efficiencies.
 *
 * @param propulsion of the document
 * @param at its JSON Pointer
 * @param reading notes defaults and contradictions
 */
public record AircraftPropulsionReading(ApiAircraftPropulsion propulsion, String at, Reading reading) {
    /** Stands in while the parts are read; the packs take its place in the review. */
    private static final Supply NOMINAL = Supply.steady(10);

    Optional<Propulsion> read() {
        double durationS = reading.orDefault(
                propulsion.fullThrottleDurationS(),
                ApiAircraftPropulsion.FULL_THROTTLE_DURATION_S,
                at,
                "the document gives none");
        reading.exactlyOne(at, List.of("motor", "efficiency"), propulsion.motor(), propulsion.efficiency());
        if (propulsion.motor() != null) {
            return byParts(durationS);
        }
        return propulsion.efficiency() == null ? Optional.empty() : byEfficiency(durationS);
    }

    private Optional<Propulsion> byParts(double durationS) {
        boolean whole = reading.needs("a motor", at, "propeller", propulsion.propeller())
                & takesNo("full_throttle_power_w", propulsion.fullThrottlePowerW())
                & takesNo("static_thrust_n", propulsion.staticThrustN())
                & takesNo("pitch_speed_m_per_s", propulsion.pitchSpeedMPerS());
        if (!whole) {
            return Optional.empty();
        }
        ApiDrive drive = ApiDrive.builder()
                .motorCount(propulsion.motorCount())
                .motor(propulsion.motor())
                .controller(propulsion.controller())
                .propeller(propulsion.propeller())
                .build();
        return new DriveReading(at, reading)
                .system(drive, Optional.of(NOMINAL))
                .map(system -> byParts(system, durationS));
    }

    private Propulsion byParts(PropulsionSystem system, double durationS) {
        return new Propulsion.ByParts(
                system.motorCount(),
                system.motor(),
                system.controller(),
                system.propeller(),
                items(system.motorCount()),
                unplacedMassKg(system.motorCount()),
                durationS,
                Reading.optional(propulsion.motorLateralMm(), Length::mFromMm),
                DeadPropellerState.valueOf(Reading.or(propulsion.deadPropeller(), ApiDeadPropeller.WINDMILLING)
                        .name()));
    }

    private boolean takesNo(String field, Object value) {
        return reading.takesNo("propulsion by its parts", at, field, value);
    }

    private List<Item> items(int count) {
        List<Item> items = new ArrayList<>();
        ApiDrivePlaces places = propulsion.places();
        if (places != null) {
            place("motor", places.motor(), propulsion.motor().massG(), count, items);
            place("controller", places.controller(), null, count, items);
            place("propeller", places.propeller(), null, count, items);
        }
        return items;
    }

    /** What is known of the motors' mass and cannot go into the balance. */
    private double unplacedMassKg(int count) {
        ApiDrivePlaces places = propulsion.places();
        boolean placed = places != null && places.motor() != null;
        return placed ? 0 : count * Mass.kgFromG(Reading.or(propulsion.motor().massG(), 0.0));
    }

    private void place(String name, ApiPartPlace place, Double ownMassG, int count, List<Item> items) {
        if (place == null) {
            return;
        }
        Double massG = Reading.or(place.massG(), ownMassG);
        if (reading.needs("a part with a place", at + "/places/" + name, "mass_g", massG)) {
            items.add(new Item(
                    name,
                    count,
                    Mass.kgFromG(massG),
                    Length.mFromMm(place.armMm()),
                    OptionalDouble.of(0),
                    OptionalDouble.of(Length.mFromMm(Reading.or(place.verticalMm(), ApiPartPlace.VERTICAL_MM))),
                    0,
                    0,
                    Optional.empty()));
        }
    }

    private Optional<Propulsion> byEfficiency(double durationS) {
        Double staticN = propulsion.staticThrustN();
        Double pitchMPerS = propulsion.pitchSpeedMPerS();
        if (staticN != null) {
            reading.needs("static_thrust_n", at, "pitch_speed_m_per_s", pitchMPerS);
        } else if (pitchMPerS != null) {
            reading.needs("pitch_speed_m_per_s", at, "static_thrust_n", staticN);
        }
        Optional<LinearThrust> thrust = staticN == null || pitchMPerS == null
                ? Optional.empty()
                : Optional.of(new LinearThrust(staticN, pitchMPerS));
        return Optional.of(new Propulsion.ByEfficiency(
                PowerReading.efficiency(propulsion.efficiency()),
                Reading.optional(propulsion.fullThrottlePowerW()),
                thrust,
                durationS));
    }
}
