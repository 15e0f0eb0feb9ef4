package trestle.endpoint.surveycoverage;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trestle.api.model.ApiLongSide;
import trestle.api.model.ApiSurveyArea;
import trestle.api.model.ApiSurveyCamera;
import trestle.api.model.ApiSurveyCoverageRequest;
import trestle.api.model.ApiSurveyEnergyPlan;
import trestle.api.model.ApiSurveyTurn;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.survey.Block;
import trestle.survey.Camera;
import trestle.survey.Position;
import trestle.survey.SurveyEnergy;
import trestle.survey.SurveyPart;
import trestle.survey.SurveyTask;
import trestle.survey.Wind;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Share;

/**
 * Reads a survey.
 *
 * @param request validated against its constraints
 * @param reading notes defaults and contradictions
 */
record SurveyReading(ApiSurveyCoverageRequest request, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String AREA = ApiSurveyCoverageRequest.AREA.at("");
    private static final String COORDINATES = ApiSurveyArea.COORDINATES.at(AREA);
    private static final String CAMERA = ApiSurveyCoverageRequest.CAMERA.at("");
    private static final String ENERGY = ApiSurveyCoverageRequest.ENERGY.at("");
    private static final String HOME = ApiSurveyEnergyPlan.HOME.at(ENERGY);

    /** A plane that keeps distances from its middle is wrong by parts per thousand further out. */
    private static final double FURTHEST_M = 100_000;

    /** So many lines to so many corners are looked at, in some seventy directions. */
    private static final double MOST_LINES = 1000;

    private static final double MOST_CROSSINGS = 60_000;

    SurveyTask task() {
        Camera camera = camera(request.camera());
        Optional<Block> block = block();
        Optional<Double> heightM = height(camera);
        Optional<SurveyEnergy> energy = Optional.ofNullable(request.energy()).map(this::energy);
        reading.refuseContradictions();
        SurveyTask task = new SurveyTask(
                camera,
                heightM.orElseThrow(),
                Share.fractionFromPercent(reading.orDefault(
                        request.forwardOverlapPercent(),
                        ApiSurveyCoverageRequest.FORWARD_OVERLAP_PERCENT,
                        "",
                        NOT_GIVEN)),
                Share.fractionFromPercent(reading.orDefault(
                        request.sideOverlapPercent(), ApiSurveyCoverageRequest.SIDE_OVERLAP_PERCENT, "", NOT_GIVEN)),
                Reading.or(request.overrunPhotos(), ApiSurveyCoverageRequest.OVERRUN_PHOTOS),
                block.orElseThrow(),
                Reading.optional(request.lineDirectionDeg(), Math::toRadians),
                request.airspeedMPerS(),
                wind(),
                Math.toRadians(reading.orDefault(
                        Optional.ofNullable(request.turn())
                                .map(ApiSurveyTurn::bankDeg)
                                .orElse(null),
                        ApiSurveyTurn.BANK_DEG,
                        ApiSurveyCoverageRequest.TURN.at(""),
                        NOT_GIVEN)),
                Reading.or(request.crosshatch(), ApiSurveyCoverageRequest.CROSSHATCH),
                energy);
        priced(task);
        reading.refuseContradictions();
        return task;
    }

    private void priced(SurveyTask task) {
        double lines = 2 * task.block().reachM() / task.betweenLinesM();
        if (lines > MOST_LINES || lines * task.block().corners() > MOST_CROSSINGS) {
            reading.fault(
                    AREA,
                    "too_many_lines",
                    "some " + Math.round(lines) + " lines over " + task.block().corners()
                            + " corners are more than one answer looks at: divide the block, or fly higher");
        }
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
                "",
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
            reading.assume(ApiSurveyCoverageRequest.WIND.at(""), "still air", NOT_GIVEN);
            return Wind.STILL;
        }
        return new Wind(
                request.wind().speedMPerS(), Math.toRadians(request.wind().fromDeg()));
    }

    private Optional<Block> block() {
        reading.exactlyOne(
                "",
                List.of(ApiSurveyCoverageRequest.AREA.name(), ApiSurveyCoverageRequest.AREA_KM2.name()),
                request.area(),
                request.areaKm2());
        if (request.areaKm2() != null) {
            reading.assume(
                    ApiSurveyCoverageRequest.AREA_KM2.at(""),
                    "a square",
                    "its shape is not known, and lines are at its best");
            return Optional.of(Block.square(Area.m2FromKm2(request.areaKm2())));
        }
        return Optional.ofNullable(request.area()).flatMap(area -> polygon(area.coordinates()));
    }

    private Optional<Block> polygon(List<List<List<Double>>> coordinates) {
        List<List<Position>> rings = new ArrayList<>();
        for (int i = 0; i < coordinates.size(); i++) {
            Optional<List<Position>> ring = ring(coordinates.get(i), COORDINATES + "/" + i);
            if (ring.isEmpty()) {
                return Optional.empty();
            }
            rings.add(ring.get());
        }
        List<Position> outer = rings.get(0);
        double east = outer.stream().mapToDouble(Position::longitudeDeg).max().orElse(0);
        double west = outer.stream().mapToDouble(Position::longitudeDeg).min().orElse(0);
        if (east - west > 180) {
            reading.fault(COORDINATES, "unsupported", "the block crosses the antimeridian, which is not supported yet");
            return Optional.empty();
        }
        Block block = Block.of(rings);
        if (block.reachM() > FURTHEST_M / 2) {
            reading.fault(
                    COORDINATES, "unsupported", "the block is more than 100 km across, or holds a pole: divide it");
            return Optional.empty();
        }
        Optional<String> fault = block.fault();
        fault.ifPresent(why -> reading.fault(COORDINATES, "contradiction", "the rings make no polygon: " + why));
        return fault.isPresent() ? Optional.empty() : Optional.of(block);
    }

    private Optional<List<Position>> ring(List<List<Double>> corners, String at) {
        List<Position> ring = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Optional<Position> corner = position(corners.get(i), at + "/" + i);
            if (corner.isEmpty()) {
                return Optional.empty();
            }
            ring.add(corner.get());
        }
        if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
            reading.fault(at, "contradiction", "a ring ends where it begins: its last position must be its first");
            return Optional.empty();
        }
        return Optional.of(ring);
    }

    private Optional<Position> position(List<Double> position, String at) {
        double longitude = position.get(0);
        double latitude = position.get(1);
        if (Math.abs(longitude) > 180 || Math.abs(latitude) > 90) {
            reading.fault(
                    at,
                    "contradiction",
                    "longitude is −180 to 180° and comes first, latitude is −90 to 90°: are the two the other way round?");
            return Optional.empty();
        }
        return Optional.of(new Position(longitude, latitude));
    }

    private SurveyEnergy energy(ApiSurveyEnergyPlan energy) {
        reading.atMostOne(
                ENERGY,
                List.of(ApiSurveyEnergyPlan.HOME.name(), ApiSurveyEnergyPlan.WAY_KM.name()),
                energy.home(),
                energy.wayKm());
        if (energy.home() != null && request.area() == null) {
            reading.fault(HOME, "contradiction", "home needs a polygon to be away from: give way_km, or area");
        }
        if (energy.home() == null && energy.wayKm() == null) {
            reading.assume(ENERGY, "flights begin and end at the block", "neither home nor way_km is given");
        }
        reading.notBelow(
                ENERGY,
                ApiSurveyEnergyPlan.HIGH_CRUISE_POWER_W.name(),
                energy.highCruisePowerW(),
                ApiSurveyEnergyPlan.CRUISE_POWER_W.name(),
                energy.cruisePowerW());
        return new SurveyEnergy(
                energy.cruisePowerW(),
                Reading.optional(energy.highCruisePowerW()),
                Energy.jFromWh(energy.usableEnergyWh()),
                Share.fractionFromPercent(reading.orDefault(
                        energy.reservePercent(), ApiSurveyEnergyPlan.RESERVE_PERCENT, ENERGY, NOT_GIVEN)),
                Energy.jFromWh(Reading.or(energy.overheadEnergyWh(), ApiSurveyEnergyPlan.OVERHEAD_ENERGY_WH)),
                energy.home() == null ? Optional.empty() : position(energy.home(), HOME),
                Reading.optional(energy.wayKm(), Length::mFromKm).orElse(0));
    }

    /** Where the parts of a survey stand. */
    static Pointers pointers() {
        return new Pointers(Map.ofEntries(
                entry(SurveyPart.CAMERA, CAMERA),
                entry(SurveyPart.LEAST_INTERVAL, ApiSurveyCamera.LEAST_INTERVAL_S.at(CAMERA)),
                entry(SurveyPart.EXPOSURE, ApiSurveyCamera.EXPOSURE_S.at(CAMERA)),
                entry(SurveyPart.HEIGHT, ApiSurveyCoverageRequest.HEIGHT_ABOVE_GROUND_M.at("")),
                entry(SurveyPart.FORWARD_OVERLAP, ApiSurveyCoverageRequest.FORWARD_OVERLAP_PERCENT.at("")),
                entry(SurveyPart.SIDE_OVERLAP, ApiSurveyCoverageRequest.SIDE_OVERLAP_PERCENT.at("")),
                entry(SurveyPart.AREA, AREA),
                entry(SurveyPart.DIRECTION, ApiSurveyCoverageRequest.LINE_DIRECTION_DEG.at("")),
                entry(SurveyPart.AIRSPEED, ApiSurveyCoverageRequest.AIRSPEED_M_PER_S.at("")),
                entry(SurveyPart.WIND, ApiSurveyCoverageRequest.WIND.at("")),
                entry(SurveyPart.BANK, ApiSurveyTurn.BANK_DEG.at(ApiSurveyCoverageRequest.TURN.at(""))),
                entry(SurveyPart.ENERGY, ENERGY),
                entry(SurveyPart.HOME, HOME)));
    }
}
