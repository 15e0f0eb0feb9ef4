package trestle.endpoint.surveycoverage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiSurveyCoverageAnswer;
import trestle.api.model.ApiSurveyFlightPlan;
import trestle.api.model.ApiSurveyFootprint;
import trestle.api.model.ApiSurveyLines;
import trestle.api.model.ApiSurveyLinesShape;
import trestle.endpoint.Writing;
import trestle.survey.Position;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyFlight;
import trestle.survey.SurveyTask;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;

/** Writes a survey into its answer. */
public final class SurveyWriting {
    private SurveyWriting() {}

    public static ApiSurveyCoverageAnswer write(SurveyTask task, SurveyCoverage found, ApiJudgement judgement) {
        ApiSurveyCoverageAnswer.Builder answer = ApiSurveyCoverageAnswer.builder()
                .judgement(judgement)
                .heightAboveGroundM(task.heightM())
                .groundSampleDistanceCm(Length.cmFromM(found.sampleM()))
                .footprint(new ApiSurveyFootprint(found.footprintAcrossM(), found.footprintAlongM()))
                .lineSpacingM(task.betweenLinesM())
                .triggerDistanceM(task.betweenPhotosM())
                .triggerIntervalS(found.intervalS())
                .motionBlurPx(Writing.boxed(found.blurPixels()))
                .areaKm2(Area.km2FromM2(task.block().areaM2()))
                .lineDirectionDeg(Math.toDegrees(found.passes().get(0).directionRad()))
                .bestLineDirectionDeg(Math.toDegrees(found.best().directionRad()))
                .lines(found.lines().size())
                .lineLengthKm(Length.kmFromM(found.lengthM()))
                .photos(found.photos())
                .turnRadiusM(found.passes().get(0).radiusM())
                .fastestGroundSpeedMPerS(Math.max(0, found.fastestMPerS()))
                .slowestGroundSpeedMPerS(Math.max(0, found.slowestMPerS()))
                .linesGeojson(lines(task, found).orElse(null));
        if (Double.isFinite(found.best().lineS())) {
            answer.bestTimeS(found.best().lineS() + found.best().turnS());
        }
        if (found.flyable()) {
            answer.lineTimeS(found.lineS()).turnTimeS(found.turnS()).flightTimeS(found.lineS() + found.turnS());
        }
        found.flights()
                .filter(flights -> all(found, flights))
                .ifPresent(flights -> answer.flightsNeeded(flights.size())
                        .flights(flights.stream().map(SurveyWriting::flight).toList())
                        .energyWh(Energy.whFromJ(flights.stream()
                                .mapToDouble(SurveyFlight::energyJ)
                                .sum())));
        found.flightsAtHighPower()
                .filter(flights -> all(found, flights))
                .ifPresent(flights -> answer.flightsNeededAtHighPower(flights.size()));
        return answer.build();
    }

    /** Whether the flights have every line. */
    private static boolean all(SurveyCoverage found, List<SurveyFlight> flights) {
        return flights.get(flights.size() - 1).lastLine() == found.lines().size() - 1;
    }

    private static ApiSurveyFlightPlan flight(SurveyFlight flight) {
        return ApiSurveyFlightPlan.builder()
                .firstLine(flight.firstLine() + 1)
                .lastLine(flight.lastLine() + 1)
                .timeS(flight.timeS())
                .energyWh(Energy.whFromJ(flight.energyJ()))
                .build();
    }

    private static Optional<ApiSurveyLines> lines(SurveyTask task, SurveyCoverage found) {
        List<List<List<Double>>> lines = found.lines().stream()
                .flatMap(line -> SurveyCoverage.onTheGround(task, line).stream())
                .map(ends -> ends.stream().map(SurveyWriting::position).toList())
                .toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new ApiSurveyLines(ApiSurveyLinesShape.MULTI_LINE_STRING, lines));
    }

    /** To a centimetre, which no aircraft flies. */
    private static List<Double> position(Position position) {
        return Stream.of(position.longitudeDeg(), position.latitudeDeg())
                .map(degrees -> Math.round(degrees * 1e7) / 1e7)
                .toList();
    }
}
