package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code launch-and-climb} over HTTP. */
class LaunchHttpTest {
    private static final Variant PULLED = Variant.of("launch-and-climb");
    private static final double MASS_KG = given("/takeoff_mass_g") / 1000;
    private static final double AREA_M2 = given("/wing_area_dm2") / 100;
    private static final double SPAN_M = given("/wing_span_mm") / 1000;
    private static final double THRUST_N = given("/static_thrust_n");
    private static final double PITCH_SPEED = given("/pitch_speed_m_per_s");

    /** The example's aircraft thrown into a steady wind that was measured at the height of the hand. */
    private static final Variant EXAMPLE = PULLED.withJson(
            "/launch",
            "{\"kind\":\"hand\",\"release_speed_m_per_s\":9,\"angle_deg\":8,\"release_height_m\":1.9,\"motor_delay_s\":0.5,"
                    + "\"wind\":{\"speed_m_per_s\":3,\"height_m\":1.9,\"gust_spread_percent\":0}}");

    private static final Variant DOLLY = EXAMPLE.withJson("/launch", "{\"kind\":\"dolly\"}");
    private static final Variant BUNGEE = EXAMPLE.withJson(
            "/launch",
            "{\"kind\":\"bungee\",\"stiffness_n_per_m\":14,\"stretch_m\":9," + "\"cord_mass_g\":600,\"angle_deg\":8}");
    private static final Variant CATAPULT =
            EXAMPLE.withJson("/launch", "{\"kind\":\"catapult\",\"release_speed_m_per_s\":11,\"rail_length_m\":3}");

    private static double given(String at) {
        return PULLED.request().at(at).asDouble();
    }

    /** By hand: Vs = sqrt(2 W / (ρ S C_L)) with the answer's own density, n = 1/cos 30°. */
    @Test
    void theExampleAddsUp() {
        JsonNode answer = EXAMPLE.answer();
        double density = answer.path("air_density_kg_per_m3").asDouble();
        double stall = Math.sqrt(2 * MASS_KG * 9.80665 / (density * AREA_M2 * given("/max_lift_coefficient")));
        double turn = 1.3 * stall / Math.sqrt(Math.cos(Math.toRadians(30)));
        assertThat(answer.path("verdict").asText()).isEqualTo("attention");
        assertThat(answer.path("stall_speed_m_per_s").asDouble()).isCloseTo(stall, within(1e-6));
        assertThat(answer.path("stall_speed_banked_m_per_s").asDouble()).isCloseTo(turn / 1.3, within(1e-6));
        assertThat(answer.path("climb_speed_m_per_s").asDouble()).isCloseTo(1.3 * stall, within(1e-6));
        assertThat(answer.path("turn_radius_m").asDouble())
                .isCloseTo(turn * turn / (9.80665 * Math.tan(Math.toRadians(30))), within(1e-5));
        assertThat(answer.path("kinetic_energy_j").asDouble())
                .isCloseTo(0.5 * MASS_KG * 1.69 * stall * stall, within(1e-4));
        assertThat(answer.at("/launch/outcome").asText()).isEqualTo("climb_speed_reached");
        double safe = 1.3 * stall;
        double dragN = dragN(density, safe);
        assertThat(answer.at("/climb/rate_m_per_s").asDouble())
                .isCloseTo((THRUST_N * (1 - safe / PITCH_SPEED) - dragN) * safe / (MASS_KG * 9.80665), within(1e-5));
    }

    private static double dragN(double density, double airspeed) {
        double qs = 0.5 * density * airspeed * airspeed * AREA_M2;
        double lift = MASS_KG * 9.80665 / qs;
        double slenderness = Math.PI * given("/drag/oswald_efficiency") * SPAN_M * SPAN_M / AREA_M2;
        return qs * (given("/drag/zero_lift_coefficient") + lift * lift / slenderness);
    }

    @Test
    void aLaunchThatEndsInTheGroundIsAStopAndTheRestStands() {
        EXAMPLE.with("/launch/wind/speed_m_per_s", 0)
                .with("/launch/release_speed_m_per_s", 6)
                .post()
                .statusCode(200)
                .body("verdict", equalTo("stop"))
                .body("findings[0].code", equalTo("launch-into-ground"))
                .body("findings[0].at", equalTo("/launch/release_speed_m_per_s"))
                .body("findings[0].value", equalTo(6.0f))
                .body(
                        "findings[0].message",
                        containsString(String.format(
                                Locale.ROOT, "climb speed of %.1f m/s", EXAMPLE.number("/climb_speed_m_per_s"))))
                .body("findings.code", not(hasItem("launch-below-stall")))
                .body("launch.outcome", equalTo("ground"))
                .body("launch.height_lost_m", equalTo(1.9f))
                .body("launch.time_to_climb_speed_s", nullValue())
                .body("climb.rate_m_per_s", notNullValue())
                .body("glide.best_ratio", notNullValue())
                .body("turn_radius_m", notNullValue());
    }

    @Test
    void thrustThatNeverReachesDragIsAStopWithBothForces() {
        JsonNode answer = EXAMPLE.with("/static_thrust_n", 6).answer();
        JsonNode thrust = Variant.finding(answer, "thrust-never-reaches-drag", "/static_thrust_n");
        assertThat(answer.path("verdict").asText()).isEqualTo("stop");
        double safe = answer.path("climb_speed_m_per_s").asDouble();
        assertThat(thrust.path("value").asDouble()).isCloseTo(6 * (1 - safe / PITCH_SPEED), within(1e-6));
        assertThat(thrust.path("limit").asDouble())
                .isCloseTo(dragN(answer.path("air_density_kg_per_m3").asDouble(), safe), within(1e-5));
        assertThat(answer.at("/climb/rate_m_per_s").asDouble()).isNegative();
        assertThat(answer.at("/stall_speed_m_per_s").asDouble()).isEqualTo(EXAMPLE.number("/stall_speed_m_per_s"));
    }

    @Test
    void aThrustCurveIsPointedAt() {
        EXAMPLE.without("/static_thrust_n")
                .without("/pitch_speed_m_per_s")
                .withJson(
                        "/thrust_curve",
                        "[{\"airspeed_m_per_s\":0,\"thrust_n\":4},{\"airspeed_m_per_s\":20,\"thrust_n\":1}]")
                .post()
                .statusCode(200)
                .body("findings.find { it.code == 'thrust-never-reaches-drag' }.at", equalTo("/thrust_curve"));
    }

    @Test
    void aThrustCurveOfTheSameLineGivesTheSameAnswer() {
        JsonNode line = EXAMPLE.answer();
        JsonNode curve = EXAMPLE.without("/static_thrust_n")
                .without("/pitch_speed_m_per_s")
                .withJson(
                        "/thrust_curve",
                        "[{\"airspeed_m_per_s\":0,\"thrust_n\":" + THRUST_N + "},{\"airspeed_m_per_s\":" + PITCH_SPEED
                                + ",\"thrust_n\":0}]")
                .answer();
        assertThat(curve.path("climb")).isEqualTo(line.path("climb"));
        assertThat(curve.path("launch")).isEqualTo(line.path("launch"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, -12, -20, -30})
    void aTailwindIsSaidAndNeverHelps(double headwind) {
        Variant downwind = EXAMPLE.with("/launch/wind/speed_m_per_s", headwind);
        downwind.post()
                .statusCode(200)
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItems("launch-downwind", "launch-into-ground"))
                .body("findings.at", hasItem("/launch/wind"));
        assertThat(downwind.number("/launch/release_airspeed_m_per_s"))
                .isLessThan(EXAMPLE.number("/launch/release_airspeed_m_per_s"));
    }

    @Test
    void aTurnBelowItsStallIsAStop() {
        EXAMPLE.with("/turn_airspeed_m_per_s", 10)
                .post()
                .body("verdict", equalTo("stop"))
                .body("findings[0].code", equalTo("stall-in-turn"))
                .body("findings[0].at", equalTo("/turn_airspeed_m_per_s"));
    }

    @Test
    void aDollyThatNeverRollsIsAStop() {
        DOLLY.with("/static_thrust_n", 2)
                .post()
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("launch-never-leaves"))
                .body("launch.outcome", equalTo("never_released"))
                .body("glide.best_ratio", notNullValue());
    }

    @Test
    void theFieldToChangeIsPointedAtByKind() {
        DOLLY.with("/launch/lift_off_airspeed_m_per_s", 11)
                .post()
                .body("findings[0].code", equalTo("launch-margin-thin"))
                .body("findings[0].at", equalTo("/launch/lift_off_airspeed_m_per_s"));
        BUNGEE.with("/launch/stretch_m", 6).post().body("findings[0].at", equalTo("/launch/stretch_m"));
        CATAPULT.with("/launch/release_speed_m_per_s", 11)
                .post()
                .body("findings.find { it.code == 'launch-margin-thin' }.at", equalTo("/launch/release_speed_m_per_s"));
    }

    /** By hand: constant acceleration over the rail, t = 2 L / v. */
    @Test
    void aRunIsReportedForAllButAThrow() {
        CATAPULT.post().body("launch.ground_run_m", equalTo(3.0f)).body("launch.run_time_s", equalTo((float)
                (6.0 / 11)));
        for (Variant run : List.of(DOLLY, BUNGEE)) {
            assertThat(run.number("/launch/ground_run_m")).isPositive();
        }
        EXAMPLE.post().body("launch.ground_run_m", nullValue()).body("launch.run_time_s", nullValue());
    }

    @Test
    void aHarderPullAndAHeadwindHelp() {
        String airspeed = "/launch/release_airspeed_m_per_s";
        assertThat(BUNGEE.with("/launch/stretch_m", 10).number(airspeed)).isGreaterThan(BUNGEE.number(airspeed));
        assertThat(BUNGEE.with("/launch/cord_mass_g", 2000).number(airspeed)).isLessThan(BUNGEE.number(airspeed));
        assertThat(DOLLY.withJson("/launch/wind", "{\"speed_m_per_s\":6,\"height_m\":0.5}")
                        .number("/launch/ground_run_m"))
                .isLessThan(DOLLY.number("/launch/ground_run_m"));
        Variant still = EXAMPLE.with("/launch/wind/speed_m_per_s", 0);
        assertThat(EXAMPLE.number("/launch/height_lost_m")).isLessThan(still.number("/launch/height_lost_m"));
        assertThat(still.with("/launch/motor_delay_s", 0).number("/launch/height_lost_m"))
                .isLessThan(still.number("/launch/height_lost_m"));
    }

    @Test
    void moreMassAndThinnerAirStallFaster() {
        double stall = EXAMPLE.number("/stall_speed_m_per_s");
        // Vs grows with the square root of the mass.
        assertThat(EXAMPLE.with("/takeoff_mass_g", 4000 * MASS_KG).number("/stall_speed_m_per_s"))
                .isCloseTo(2 * stall, within(1e-6));
        assertThat(EXAMPLE.with("/conditions/altitude_m", 2500).number("/stall_speed_m_per_s"))
                .isGreaterThan(1.1 * stall);
        EXAMPLE.with("/conditions/altitude_m", 2500)
                .post()
                .body("findings.find { it.code == 'thin-air' }.at", equalTo("/conditions"));
    }

    @Test
    void aLoadFactorStandsForItsBank() {
        JsonNode bank = EXAMPLE.with("/bank_deg", 60).answer();
        JsonNode loadFactor =
                EXAMPLE.without("/bank_deg").with("/load_factor", 2).answer();
        assertThat(loadFactor.path("turn_radius_m").asDouble())
                .isCloseTo(bank.path("turn_radius_m").asDouble(), within(1e-6));
        EXAMPLE.with("/bank_deg", 0).post().body("turn_radius_m", nullValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hand|release_speed_m_per_s",
                "bungee|stiffness_n_per_m",
                "bungee|stretch_m",
                "catapult|release_speed_m_per_s",
                "catapult|rail_length_m"
            })
    void whatAKindOfLaunchNeedsIsAskedFor(String kind, String field) {
        EXAMPLE.withJson("/launch", "{\"kind\":\"" + kind + "\"}")
                .post()
                .statusCode(422)
                .body("errors.find { it.at == '/launch/" + field + "' }.code", equalTo("missing"))
                .body(
                        "errors.find { it.at == '/launch/" + field + "' }.message",
                        equalTo("a " + kind + " launch needs " + field));
    }

    @ParameterizedTest
    @CsvSource({
        "hand, stretch_m",
        "hand, stiffness_n_per_m",
        "hand, cord_mass_g",
        "hand, energy_return_percent",
        "hand, sliding_friction",
        "hand, rail_length_m",
        "hand, rolling_resistance",
        "hand, roll_lift_coefficient",
        "hand, dolly_mass_g",
        "hand, lift_off_airspeed_m_per_s",
        "dolly, release_speed_m_per_s",
        "dolly, angle_deg",
        "dolly, motor_delay_s",
        "bungee, release_speed_m_per_s",
        "catapult, stretch_m"
    })
    void whatAKindOfLaunchHasNoUseForIsRefused(String kind, String field) {
        Variant launch = switch (kind) {
            case "dolly" -> DOLLY;
            case "bungee" -> BUNGEE;
            case "catapult" -> CATAPULT;
            default -> EXAMPLE;
        };
        double value = switch (field) {
            case "energy_return_percent" -> 50;
            case "lift_off_airspeed_m_per_s" -> 9;
            case "rolling_resistance" -> 0.3;
            default -> 1;
        };
        launch.with("/launch/" + field, value)
                .post()
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo("/launch/" + field))
                .body("errors[0].code", equalTo("contradiction"))
                .body("errors[0].message", equalTo("a " + kind + " launch takes no " + field));
    }

    /** A generated client fills in the contract's defaults, whatever the kind. */
    @Test
    void aStatedDefaultIsNoContradictionAndChangesNothing() {
        Variant hand = EXAMPLE.with("/launch/rolling_resistance", 0.05)
                .with("/launch/roll_lift_coefficient", 0.3)
                .with("/launch/dolly_mass_g", 0)
                .with("/launch/cord_mass_g", 0)
                .with("/launch/energy_return_percent", 80)
                .with("/launch/sliding_friction", 0.2);
        assertThat(hand.answer()).isEqualTo(EXAMPLE.answer());
        Variant dolly = DOLLY.with("/launch/angle_deg", 0).with("/launch/motor_delay_s", 0.5);
        assertThat(dolly.answer()).isEqualTo(DOLLY.answer());
    }

    @Test
    void fieldsThatExcludeEachOtherAreBothNamed() {
        EXAMPLE.with("/load_factor", 1.2)
                .withJson(
                        "/thrust_curve",
                        "[{\"airspeed_m_per_s\":5,\"thrust_n\":9},{\"airspeed_m_per_s\":5,\"thrust_n\":8}]")
                .post()
                .statusCode(422)
                .body(
                        "errors.at",
                        hasItems(
                                "/static_thrust_n",
                                "/thrust_curve",
                                "/pitch_speed_m_per_s",
                                "/thrust_curve/1/airspeed_m_per_s",
                                "/bank_deg",
                                "/load_factor"))
                .body("errors", hasSize(6));
    }

    @Test
    void staticThrustNeedsItsPitchSpeedAndOneThrustIsNeeded() {
        EXAMPLE.without("/pitch_speed_m_per_s")
                .post()
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo("/pitch_speed_m_per_s"))
                .body("errors[0].message", equalTo("static_thrust_n needs pitch_speed_m_per_s"));
        EXAMPLE.without("/pitch_speed_m_per_s")
                .without("/static_thrust_n")
                .post()
                .statusCode(422)
                .body("errors[0].message", equalTo("give one of static_thrust_n, thrust_curve"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/takeoff_mass_g|0|/takeoff_mass_g",
                "/bank_deg|90|/bank_deg",
                "/launch/kind|\"sling\"|/launch/kind",
                "/launch|[]|/launch",
                "/launch/release_hight_m|2|/launch/release_hight_m",
                "/launch/motor_delay_s|\"0,5\"|/launch/motor_delay_s",
                "/drag/oswald_efficiency|null|/drag/oswald_efficiency",
                "/launch/wind/speed_m_per_s|1e400|/launch/wind/speed_m_per_s"
            })
    void aWrongFieldIsNamed(String at, String json, String place) {
        EXAMPLE.withJson(at, json).refusedOnlyAt(place);
    }

    @Test
    void everyDefaultThatTouchedANumberIsListed() {
        EXAMPLE.withJson("/launch", "{\"kind\":\"hand\",\"release_speed_m_per_s\":9}")
                .without("/max_lift_coefficient")
                .without("/conditions")
                .without("/bank_deg")
                .post()
                .statusCode(200)
                .body(
                        "assumptions.at",
                        hasItems(
                                "/launch/angle_deg",
                                "/launch/release_height_m",
                                "/launch/motor_delay_s",
                                "/max_lift_coefficient",
                                "/conditions/altitude_m",
                                "/conditions/temperature_c",
                                "/bank_deg",
                                "/turn_airspeed_m_per_s"));
        DOLLY.post()
                .body(
                        "assumptions.at",
                        hasItems(
                                "/launch/lift_off_airspeed_m_per_s",
                                "/launch/rolling_resistance",
                                "/launch/roll_lift_coefficient",
                                "/launch/dolly_mass_g",
                                "/launch/release_height_m"))
                .body("assumptions.at", not(hasItem("/launch/motor_delay_s")));
    }

    @Test
    void theExampleIsFitAndNeedsNoWind() {
        PULLED.post().statusCode(200).body("verdict", equalTo("fit")).body("findings", hasSize(0));
        PULLED.without("/launch/wind")
                .post()
                .body("verdict", equalTo("fit"))
                .body("assumptions.at", hasItem("/launch/wind"));
    }

    /** What a launch needs is answered, and said in words. */
    @Test
    void aWeakThrowIsToldWhatItNeeds() {
        Variant weak = EXAMPLE.without("/launch/wind");
        JsonNode needed = weak.answer().at("/launch/needed");
        double stall = weak.number("/stall_speed_m_per_s");
        double angle = Math.toRadians(8);
        // By hand: the wind adds to the level part of the throw.
        double wind = Math.sqrt(1.21 * stall * stall - Math.pow(9 * Math.sin(angle), 2)) - 9 * Math.cos(angle);
        assertThat(needed.path("release_speed_m_per_s").asDouble()).isCloseTo(1.1 * stall, within(1e-5));
        assertThat(needed.path("wind_m_per_s").asDouble())
                .isCloseTo(wind / (1 - 1 / Math.log(1.9 / 0.03)), within(1e-5));
        assertThat(weak.answer().at("/findings/0/message").asText())
                .endsWith(String.format(
                        Locale.ROOT,
                        ": throw at %.1f m/s, or wait for %.1f m/s of wind at 1.9 m above the ground.",
                        upToATenth(1.1 * stall),
                        upToATenth(wind / (1 - 1 / Math.log(1.9 / 0.03)))));
    }

    private static double upToATenth(double value) {
        return Math.ceil(10 * value) / 10;
    }

    @Test
    void aWindIsMeasuredOrComesFromAFlight() {
        EXAMPLE.withJson("/launch/wind", "{\"from_flight\":true}")
                .post()
                .statusCode(422)
                .body("errors[0].at", equalTo("/launch/wind/from_flight"));
        EXAMPLE.withJson("/launch/wind", "{\"terrain\":\"open\"}")
                .post()
                .statusCode(422)
                .body("errors[0].at", equalTo("/launch/wind/speed_m_per_s"));
    }

    @Test
    void thrustInGramsIsRefused() {
        PULLED.with("/static_thrust_n", 2900)
                .post()
                .statusCode(422)
                .body("errors[0].at", equalTo("/static_thrust_n"))
                .body("errors[0].message", containsString("give newtons, not grams of thrust"));
    }

    @Test
    void aWingWithoutAspectRatioIsRefusedInEveryForm() {
        for (String as : List.of("json", "svg")) {
            PULLED.with("/wing_span_mm", 250).as(as).statusCode(422).body("errors[0].at", equalTo("/wing_span_mm"));
        }
    }

    /** A dolly need not hear of a hand, nor a throw of a cord. */
    @Test
    void cautionsAreThoseOfTheKindOfLaunch() {
        DOLLY.post()
                .body("cautions", not(hasItem(containsString("hand clear"))))
                .body("cautions", not(hasItem(containsString("cord"))));
        EXAMPLE.post().body("cautions", hasItem(containsString("hand clear")));
        PULLED.post()
                .body("cautions", hasItem(containsString("cord")))
                .body("cautions", hasItem(containsString("anchor")));
    }
}
