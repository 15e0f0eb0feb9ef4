package trestle.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The worked plan of NPTEL course 105104100, module 3, lecture 21, example 1 (read; its intermediate values are ours, since its
 * formulas are pictures in the copy that was read): 45 by 36 km at 1:12000, 21 cm focal length, 23 cm square, 60 and 30 %.
 * And geodesics of GeographicLib's own test cases, tests/geodtest.cpp.
 */
class SurveyReferenceTest {
    private static final double HEIGHT_M = 12_000 * 0.21;

    private static Camera camera() {
        return new Camera(0.23, 0.23, 23_000, 23_000, 0.21, OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Test
    void theWorkedPlan() {
        assertThat(camera().footprintAcrossM(HEIGHT_M)).isCloseTo(2760, offset(1e-9));
        double betweenLines = camera().footprintAcrossM(HEIGHT_M) * 0.7;
        double base = camera().footprintAlongM(HEIGHT_M) * 0.4;
        assertThat(betweenLines).isCloseTo(1932, offset(1e-9));
        assertThat(base).isCloseTo(1104, offset(1e-9));
        assertThat(base / 55.55).isCloseTo(19.87, offset(0.005));
        LineSpacing plan = new LineSpacing(betweenLines, 1055.45, 2);
        assertThat(plan.strips(36_000)).isEqualTo(20);
        assertThat(plan.photos(45_000)).isEqualTo(48);
        assertThat(plan.strips(36_000) * plan.photos(45_000)).isEqualTo(960);
    }

    /** Not published: the definition by hand. 4.5 µm, 35 mm, 120 m, 6000 by 4000, 75 and 65 %. */
    @Test
    void aSmallCameraByHand() {
        Camera camera = new Camera(
                6000 * 4.5e-6, 4000 * 4.5e-6, 6000, 4000, 0.035, OptionalDouble.empty(), OptionalDouble.empty());
        assertThat(camera.sampleM(120)).isCloseTo(0.01542857, offset(5e-9));
        assertThat(camera.heightM(0.01542857)).isCloseTo(120, offset(1e-4));
        assertThat(camera.footprintAcrossM(120)).isCloseTo(92.571, offset(5e-4));
        assertThat(camera.footprintAlongM(120)).isCloseTo(61.714, offset(5e-4));
        assertThat(camera.footprintAlongM(120) * 0.25).isCloseTo(15.429, offset(5e-4));
        assertThat(camera.footprintAcrossM(120) * 0.35).isCloseTo(32.400, offset(5e-4));
    }

    /** Distance and direction from the middle of the plane are those of the geodesic. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/geodesics/geodtest.csv", numLinesToSkip = 1)
    void thePlaneKeepsDistanceAndDirection(
            double fromLatitude,
            double fromLongitude,
            double azimuth,
            double toLatitude,
            double toLongitude,
            double way) {
        LocalPlane plane = new LocalPlane(fromLatitude, fromLongitude);
        double longitude = Math.IEEEremainder(toLongitude, 360);
        var place = plane.of(new Position(longitude, toLatitude));
        assertThat(Math.hypot(place.x, place.y)).isCloseTo(way, offset(1e-6));
        assertThat(Math.toDegrees(Math.atan2(place.x, place.y))).isCloseTo(azimuth, offset(1e-9));
        Position back = plane.back(place);
        assertThat(back.latitudeDeg()).isCloseTo(toLatitude, offset(1e-9));
    }

    @Test
    void aPlaceComesBackToItself() {
        LocalPlane plane = LocalPlane.about(List.of(new Position(8, 53)));
        assertThat(plane.back(plane.of(new Position(8.01, 53.01))).longitudeDeg())
                .isCloseTo(8.01, offset(1e-10));
    }
}
