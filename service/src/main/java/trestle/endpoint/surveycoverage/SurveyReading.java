package trestle.endpoint.surveycoverage;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trestle.api.model.ApiBlockShape;
import trestle.api.model.ApiLongSide;
import trestle.api.model.ApiSurveyArea;
import trestle.api.model.ApiSurveyCamera;
import trestle.api.model.ApiSurveyCoverageRequest;
import trestle.api.model.ApiSurveyTurn;
import trestle.endpoint.Reading;
import trestle.survey.Block;
import trestle.survey.Camera;
import trestle.survey.Position;
import trestle.survey.SurveyPart;
import trestle.survey.SurveyPlan;
import trestle.survey.Wind;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Share;

/**
 * Reads a survey.
 *
 * @param request validated against its constraints
 * @param at JSON Pointer of what holds it
 * @param reading notes defaults and contradictions
 */
public record SurveyReading(ApiBlockShape request, String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";

    /** A plane that keeps distances from its middle is wrong by parts per thousand further out. */
    private static final double FURTHEST_M = 100_000;

    /** So many lines to so many corners are looked at, in some seventy directions. */
    private static final double MOST_LINES = 1000;

    private static final double MOST_CROSSINGS = 60_000;

    /**
     * All but the aircraft.
     *
     * @return the plan; empty where a contradiction was noted
     */
    public Optional<SurveyPlan> plan() {
        Camera camera = camera(request.camera());
        Optional<Block> block = block();
        Optional<Double> heightM = height(camera);
        double forward = Share.fractionFromPercent(reading.orDefault(
                request.forwardOverlapPercent(), ApiSurveyCoverageRequest.FORWARD_OVERLAP_PERCENT, at, NOT_GIVEN));
        double side = Share.fractionFromPercent(reading.orDefault(
                request.sideOverlapPercent(), ApiSurveyCoverageRequest.SIDE_OVERLAP_PERCENT, at, NOT_GIVEN));
        Wind wind = wind();
        double bankRad = Math.toRadians(reading.orDefault(
                Optional.ofNullable(request.turn()).map(ApiSurveyTurn::bankDeg).orElse(null),
                ApiSurveyTurn.BANK_DEG,
                ApiSurveyCoverageRequest.TURN.at(at),
                NOT_GIVEN));
        if (block.isEmpty() || heightM.isEmpty()) {
            return Optional.empty();
        }
        SurveyPlan plan = new SurveyPlan(
                camera,
                heightM.get(),
                forward,
                side,
                Reading.or(request.overrunPhotos(), ApiSurveyCoverageRequest.OVERRUN_PHOTOS),
                block.get(),
                Reading.optional(request.lineDirectionDeg(), Math::toRadians),
                wind,
                bankRad,
                Reading.or(request.crosshatch(), ApiSurveyCoverageRequest.CROSSHATCH));
        priced(plan);
        return Optional.of(plan);
    }

    private void priced(SurveyPlan plan) {
        double betweenM = plan.camera().footprintAcrossM(plan.heightM()) * (1 - plan.sideOverlap());
        double lines = 2 * plan.block().reachM() / betweenM;
        if (lines > MOST_LINES || lines * plan.block().corners() > MOST_CROSSINGS) {
            reading.fault(
                    area(),
                    "too_many_lines",
                    "some " + Math.round(lines) + " lines over " + plan.block().corners()
                            + " corners are more than one answer looks at: divide the block, or fly higher");
        }
    }

    private String area() {
        return ApiSurveyCoverageRequest.AREA.at(at);
    }

    private String coordinates() {
        return ApiSurveyArea.COORDINATES.at(area());
    }

    /** The longer side lies across the track unless it is said to lie along it. */
    private Camera camera(ApiSurveyCamera camera) {
        boolean across = Reading.or(camera.longSide(), ApiLongSide.ACROSS_TRACK) == ApiLongSide.ACROSS_TRACK;
        boolean wide = camera.sensorWidthMm() >= camera.sensorHeightMm();
        double width = Length.mFromMm(camera.sensorWidthMm());
        double height = Length.mFromMm(camera.sensorHeightMm());
        boolean asNamed = across == wide;
        return new Camera(
                asNamed ? width : height,
                asNamed ? height : width,
                asNamed ? camera.imageWidthPx() : camera.imageHeightPx(),
                asNamed ? camera.imageHeightPx() : camera.imageWidthPx(),
                Length.mFromMm(camera.focalLengthMm()),
                Reading.optional(camera.leastIntervalS()),
                Reading.optional(camera.exposureS()));
    }

    private Optional<Double> height(Camera camera) {
        reading.exactlyOne(
                at,
                List.of(
                        ApiSurveyCoverageRequest.GROUND_SAMPLE_DISTANCE_CM.name(),
                        ApiSurveyCoverageRequest.HEIGHT_ABOVE_GROUND_M.name()),
                request.groundSampleDistanceCm(),
                request.heightAboveGroundM());
        if (request.heightAboveGroundM() != null) {
            return Optional.of(request.heightAboveGroundM());
        }
        return Optional.ofNullable(request.groundSampleDistanceCm())
                .map(Length::mFromCm)
                .map(camera::heightM);
    }

    private Wind wind() {
        if (request.wind() == null) {
            reading.assume(ApiSurveyCoverageRequest.WIND.at(at), "still air", NOT_GIVEN);
            return Wind.STILL;
        }
        return new Wind(
                request.wind().speedMPerS(), Math.toRadians(request.wind().fromDeg()));
    }

    private Optional<Block> block() {
        reading.exactlyOne(
                at,
                List.of(ApiSurveyCoverageRequest.AREA.name(), ApiSurveyCoverageRequest.AREA_KM2.name()),
                request.area(),
                request.areaKm2());
        if (request.areaKm2() != null) {
            reading.assume(
                    ApiSurveyCoverageRequest.AREA_KM2.at(at),
                    "a square",
                    "its shape is not known, and lines are at its best");
            return Optional.of(Block.square(Area.m2FromKm2(request.areaKm2())));
        }
        return Optional.ofNullable(request.area()).flatMap(area -> polygon(area.coordinates()));
    }

    private Optional<Block> polygon(List<List<List<Double>>> coordinates) {
        List<List<Position>> rings = new ArrayList<>();
        for (int i = 0; i < coordinates.size(); i++) {
            Optional<List<Position>> ring = ring(coordinates.get(i), coordinates() + "/" + i);
            if (ring.isEmpty()) {
                return Optional.empty();
            }
            rings.add(ring.get());
        }
        List<Position> outer = rings.get(0);
        double east = outer.stream().mapToDouble(Position::longitudeDeg).max().orElse(0);
        double west = outer.stream().mapToDouble(Position::longitudeDeg).min().orElse(0);
        if (east - west > 180) {
            reading.fault(
                    coordinates(), "unsupported", "the block crosses the antimeridian, which is not supported yet");
            return Optional.empty();
        }
        Block block = Block.of(rings);
        if (block.reachM() > FURTHEST_M / 2) {
            reading.fault(
                    coordinates(), "unsupported", "the block is more than 100 km across, or holds a pole: divide it");
            return Optional.empty();
        }
        Optional<String> fault = block.fault();
        fault.ifPresent(why -> reading.fault(coordinates(), "contradiction", "the rings make no polygon: " + why));
        return fault.isPresent() ? Optional.empty() : Optional.of(block);
    }

    private Optional<List<Position>> ring(List<List<Double>> corners, String place) {
        List<Position> ring = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Optional<Position> corner = position(corners.get(i), place + "/" + i);
            if (corner.isEmpty()) {
                return Optional.empty();
            }
            ring.add(corner.get());
        }
        if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
            reading.fault(place, "contradiction", "a ring ends where it begins: its last position must be its first");
            return Optional.empty();
        }
        return Optional.of(ring);
    }

    /**
     * A place on the ground.
     *
     * @param position longitude and latitude
     * @param place JSON Pointer of it
     * @return the place; empty where a contradiction was noted
     */
    public Optional<Position> position(List<Double> position, String place) {
        double longitude = position.get(0);
        double latitude = position.get(1);
        if (Math.abs(longitude) > 180 || Math.abs(latitude) > 90) {
            reading.fault(
                    place,
                    "contradiction",
                    "longitude is −180 to 180° and comes first, latitude is −90 to 90°: are the two the other way round?");
            return Optional.empty();
        }
        return Optional.of(new Position(longitude, latitude));
    }

    /**
     * Where the parts of a survey stand.
     *
     * @param at JSON Pointer of what holds all but the aircraft
     * @return the places
     */
    public static Map<Enum<?>, String> pointers(String at) {
        String camera = ApiSurveyCoverageRequest.CAMERA.at(at);
        return Map.ofEntries(
                entry(SurveyPart.CAMERA, camera),
                entry(SurveyPart.LEAST_INTERVAL, ApiSurveyCamera.LEAST_INTERVAL_S.at(camera)),
                entry(SurveyPart.EXPOSURE, ApiSurveyCamera.EXPOSURE_S.at(camera)),
                entry(SurveyPart.HEIGHT, ApiSurveyCoverageRequest.HEIGHT_ABOVE_GROUND_M.at(at)),
                entry(SurveyPart.FORWARD_OVERLAP, ApiSurveyCoverageRequest.FORWARD_OVERLAP_PERCENT.at(at)),
                entry(SurveyPart.SIDE_OVERLAP, ApiSurveyCoverageRequest.SIDE_OVERLAP_PERCENT.at(at)),
                entry(SurveyPart.AREA, ApiSurveyCoverageRequest.AREA.at(at)),
                entry(SurveyPart.DIRECTION, ApiSurveyCoverageRequest.LINE_DIRECTION_DEG.at(at)),
                entry(SurveyPart.WIND, ApiSurveyCoverageRequest.WIND.at(at)),
                entry(SurveyPart.BANK, ApiSurveyTurn.BANK_DEG.at(ApiSurveyCoverageRequest.TURN.at(at))));
    }
}
