package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** A review of an aircraft with two unlike packs in series, thrown by hand into a headwind: no example, a fixture. */
class TwoPackAircraftHttpTest {
    private static final String REVIEW = "build-review";

    private static ObjectNode aircraft() throws IOException {
        try (InputStream document = TwoPackAircraftHttpTest.class.getResourceAsStream("two-pack-aircraft.json")) {
            return (ObjectNode) new ObjectMapper().readTree(document);
        }
    }

    private static JsonPath answer(ObjectNode request) {
        return LiveService.answer(REVIEW, request).extract().jsonPath();
    }

    @Test
    void eachPackIsWeighedUnderItsOwnName() throws IOException {
        assertThat(answer(aircraft()).getList("mass_balance.moments.name", String.class))
                .contains("forward pack", "aft pack");
    }

    /** 565.628 mm is our own working of this airframe, to its digits; {@code NeutralPointClosedFormTest} has the steps. */
    @Test
    void theNeutralPointIsThatWorkedByHand() throws IOException {
        assertThat(answer(aircraft()).getDouble("mass_balance.neutral_point_arm_mm"))
                .isCloseTo(565.628, within(1e-3));
    }

    /** The block that has aged is the first to be empty, however the cells are shared out. */
    @Test
    void theAgedPackLimitsWhateverTheShare() throws IOException {
        ObjectNode fivePlusTwo = aircraft();
        LiveService.change(fivePlusTwo, "/packs/0/series", "5");
        LiveService.change(fivePlusTwo, "/propulsion/controller/max_voltage_v", "34");
        for (ObjectNode aircraft : new ObjectNode[] {aircraft(), fivePlusTwo}) {
            assertThat(answer(aircraft).getString("pack_energy.limiting_segment"))
                    .isEqualTo("aft pack");
        }
        assertThat(answer(fivePlusTwo).getInt("pack_energy.series_count")).isEqualTo(7);
    }

    @Test
    void theHeadwindOfTheFlightIsNoWindAtTheLaunchUnlessAskedFor() throws IOException {
        double inTheWind = margin(aircraft());
        assertThat(margin(LiveService.change(aircraft(), "/flight/headwind_m_per_s", "0")))
                .isEqualTo(inTheWind);
        assertThat(margin(LiveService.change(aircraft(), "/flight/launch/wind", "{\"from_flight\": true}")))
                .isGreaterThan(inTheWind);
    }

    private static double margin(ObjectNode request) {
        return answer(request).getDouble("launch_and_climb.launch.margin_percent");
    }
}
