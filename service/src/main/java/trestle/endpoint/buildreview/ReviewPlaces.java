package trestle.endpoint.buildreview;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trestle.battery.PackPart;
import trestle.endpoint.Pointers;
import trestle.endpoint.compassclearance.CompassClearanceEndpoint;
import trestle.endpoint.massbalance.MassBalanceEndpoint;
import trestle.endpoint.packcharge.ChargeReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.endpoint.propulsionmatch.DriveReading;
import trestle.endpoint.railbudget.RailBudgetEndpoint;
import trestle.endpoint.surveycoverage.SurveyReading;
import trestle.endpoint.wiresizing.WireSizingEndpoint;
import trestle.finding.Subject;
import trestle.flight.FlightPart;
import trestle.launch.LaunchPart;
import trestle.magnetics.CompassPart;
import trestle.massbalance.BalancePart;
import trestle.propulsion.PropulsionPart;
import trestle.review.Aircraft;
import trestle.review.Propulsion;
import trestle.review.ReviewPart;
import trestle.survey.SurveyPart;
import trestle.wiring.WiringPart;

/** Where the parts of each discipline stand in the document of an aircraft. */
public final class ReviewPlaces {
    private static final Pointers BALANCE = MassBalanceEndpoint.pointers("/airframe");

    private static final Pointers PACK = new Pointers(packs());

    private static final Pointers FLIGHT = new Pointers(Map.ofEntries(
            entry(FlightPart.AIRCRAFT, ""),
            entry(FlightPart.TAKEOFF_MASS, "/items"),
            entry(FlightPart.MAX_LIFT_COEFFICIENT, "/airframe/max_lift_coefficient"),
            entry(FlightPart.DRAG, "/airframe/drag"),
            entry(FlightPart.EFFICIENCY, "/propulsion"),
            entry(FlightPart.ENERGY, "/packs"),
            entry(FlightPart.CONDITIONS, "/flight/conditions"),
            entry(FlightPart.HEADWIND, "/flight/headwind_m_per_s"),
            entry(FlightPart.RESERVE, "/flight/reserve_percent"),
            entry(FlightPart.AIRSPEED, "/flight/airspeed_m_per_s"),
            entry(FlightPart.LEG, "/flight/legs/{}"),
            entry(FlightPart.WING_AREA, "/airframe/wing"),
            entry(FlightPart.WING_SPAN, "/airframe/wing"),
            entry(FlightPart.PACK, "/packs"),
            entry(FlightPart.MAX_TAKEOFF_MASS, "/airframe/limits/max_takeoff_mass_g"),
            entry(FlightPart.PACK_MASS, "/packs")));

    private static final Pointers REVIEW = new Pointers(Map.ofEntries(
            entry(ReviewPart.CRUISE_AIRSPEED, "/flight/airspeed_m_per_s"),
            entry(ReviewPart.FULL_THROTTLE, "/propulsion"),
            entry(ReviewPart.RUN, "/wiring/{}"),
            entry(ReviewPart.RUN_ARM, "/wiring/{}/arm_mm"),
            entry(ReviewPart.PACK_TEMPERATURE, "/flight/pack_temperature_c"),
            entry(ReviewPart.CELL_RATING, "/packs"),
            entry(ReviewPart.WIRING, "/wiring"),
            entry(ReviewPart.RAILS, "/rails"),
            entry(ReviewPart.COMPASS, "/compass"),
            entry(ReviewPart.CHARGING, "/charging"),
            entry(ReviewPart.SURVEY, "/survey"),
            entry(ReviewPart.GO_AROUND, "/go_around"),
            entry(ReviewPart.MOTOR_LATERAL, "/propulsion/motor_lateral_mm"),
            entry(ReviewPart.DEAD_PROPELLER, "/propulsion/dead_propeller"),
            entry(ReviewPart.TAIL_FIN, "/airframe/tail_fin"),
            entry(ReviewPart.LAUNCH, "/flight/launch"),
            entry(ReviewPart.ITEMS, "/items"),
            entry(ReviewPart.MASS_LIMIT, "/airframe/limits/max_takeoff_mass_g"),
            entry(ReviewPart.DRIVE_PLACES, "/propulsion/places")));

    private static final Pointers DRIVE = new Pointers(drive());

    private static final Pointers RAILS = RailBudgetEndpoint.pointers("/packs", "/rails");

    private static final Pointers COMPASS = CompassClearanceEndpoint.pointers("/compass");

    private static final Pointers SURVEY = new Pointers(survey());

    private static final Pointers CHARGE = new Pointers(charge());

    private static final Pointers LAUNCH = new Pointers(Map.ofEntries(
            entry(LaunchPart.TAKEOFF_MASS, "/items"),
            entry(LaunchPart.MAX_LIFT_COEFFICIENT, "/airframe/max_lift_coefficient"),
            entry(LaunchPart.DRAG, "/airframe/drag"),
            entry(LaunchPart.THRUST, "/propulsion"),
            entry(LaunchPart.CONDITIONS, "/flight/conditions"),
            entry(LaunchPart.WING_AREA, "/airframe/wing"),
            entry(LaunchPart.WING_SPAN, "/airframe/wing"),
            entry(LaunchPart.WIND, "/flight/launch/wind"),
            entry(LaunchPart.MAX_LOAD_FACTOR, "/flight/launch/max_load_factor"),
            entry(LaunchPart.MAX_HOOK_FORCE, "/flight/launch/max_hook_force_n"),
            entry(LaunchPart.NEVER_EXCEED, "/airframe/never_exceed_airspeed_m_per_s"),
            entry(LaunchPart.LAUNCH, "/flight/launch"),
            entry(LaunchPart.RELEASE_SPEED, "/flight/launch"),
            entry(LaunchPart.TURN, "/flight/launch")));

    private final Aircraft aircraft;

    ReviewPlaces(Aircraft aircraft) {
        this.aircraft = aircraft;
    }

    /** Names of the packs. */
    List<String> packNames() {
        return aircraft.packs().stream().map(pack -> pack.item().name()).toList();
    }

    /** Items of the balance are the items, then the packs, then the wires. */
    String ofBalance(Subject subject) {
        if (subject.part() != BalancePart.ITEM_TRAVEL) {
            return BALANCE.to(subject);
        }
        int index = subject.indices().get(0);
        int items = aircraft.items().size();
        return index < items ? BALANCE.to(subject) : "/packs/" + (index - items) + "/movable_from_mm";
    }

    String ofPack(Subject subject) {
        return PACK.to(subject);
    }

    String ofFlight(Subject subject) {
        return FLIGHT.to(subject);
    }

    /** Full throttle is a number where efficiencies are given, and follows from the parts. */
    String ofReview(Subject subject) {
        boolean measured = aircraft.propulsion() instanceof Propulsion.ByEfficiency;
        if (subject.part() == ReviewPart.FULL_THROTTLE && measured) {
            return "/propulsion/full_throttle_power_w";
        }
        return REVIEW.to(subject);
    }

    String ofDrive(Subject subject) {
        return DRIVE.to(subject);
    }

    String ofRails(Subject subject) {
        return RAILS.to(subject);
    }

    String ofLaunch(Subject subject) {
        return LAUNCH.to(subject);
    }

    /** A run of the document has its peak from the drive or from its own wire. */
    String ofCompass(Subject subject) {
        if (subject.part() == CompassPart.PEAK_CURRENT) {
            return aircraft.propulsion() instanceof Propulsion.ByEfficiency
                    ? "/propulsion/full_throttle_power_w"
                    : "/wiring";
        }
        return COMPASS.to(subject);
    }

    String ofSurvey(Subject subject) {
        return SURVEY.to(subject);
    }

    private static Map<Enum<?>, String> survey() {
        Map<Enum<?>, String> places = new HashMap<>(SurveyReading.pointers("/survey"));
        places.put(SurveyPart.AIRSPEED, "/flight/airspeed_m_per_s");
        places.put(SurveyPart.ENERGY, "/packs");
        places.put(SurveyPart.HOME, "/survey/home");
        return places;
    }

    String ofCharge(Subject subject) {
        return CHARGE.to(subject);
    }

    private static Map<Enum<?>, String> charge() {
        Map<Enum<?>, String> places = new HashMap<>(PackReading.pointers("/packs", ""));
        places.putAll(ChargeReading.pointers("/charging"));
        return places;
    }

    private static Map<Enum<?>, String> drive() {
        Map<Enum<?>, String> places = new HashMap<>(DriveReading.pointers("/propulsion", "/packs"));
        places.put(PropulsionPart.SUPPLY_MAX_CURRENT, "/packs");
        places.put(PropulsionPart.SUPPLY_CUTOFF, "/cutoff");
        places.put(PropulsionPart.CRUISE_THRUST, "/airframe/drag");
        places.put(PropulsionPart.CRUISE_AIRSPEED, "/flight/airspeed_m_per_s");
        places.put(PropulsionPart.AIRSPEED, "/flight/airspeed_m_per_s");
        places.put(PropulsionPart.TAKEOFF_MASS, "/items");
        places.put(PropulsionPart.WING_AREA, "/airframe");
        places.put(PropulsionPart.MAX_LIFT, "/airframe/max_lift_coefficient");
        places.put(PropulsionPart.NEVER_EXCEED, "/airframe/never_exceed_airspeed_m_per_s");
        places.put(PropulsionPart.FULL_THROTTLE_DURATION, "/propulsion/full_throttle_duration_s");
        return places;
    }

    /** A run's air is that of the flight. */
    Function<Subject, String> ofRun(int index) {
        Pointers run = WireSizingEndpoint.pointers("/wiring/" + index);
        Pointers air = new Pointers(Map.of(
                WiringPart.AMBIENT, "/flight/conditions/temperature_c",
                WiringPart.ALTITUDE, "/flight/conditions/altitude_m",
                WiringPart.FLIGHT, "/flight"));
        return subject -> air.templates().containsKey(subject.part()) ? air.to(subject) : run.to(subject);
    }

    private static Map<Enum<?>, String> packs() {
        Map<Enum<?>, String> places = new HashMap<>(PackReading.pointers("/packs", ""));
        places.put(PackPart.PACK, "/packs");
        places.put(PackPart.LOAD, "/flight");
        places.put(PackPart.COVERING, "/covering");
        places.put(PackPart.PROFILE, "/flight");
        places.put(PackPart.AMBIENT, "/flight/conditions/temperature_c");
        places.put(PackPart.LEAD_RESISTANCE, "/wiring");
        places.put(PackPart.RESERVE, "/flight/reserve_percent");
        return places;
    }
}
