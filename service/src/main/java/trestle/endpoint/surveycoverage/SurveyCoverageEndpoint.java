package trestle.endpoint.surveycoverage;

import java.util.List;
import trestle.api.model.ApiSurveyCoverageAnswer;
import trestle.api.model.ApiSurveyCoverageRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.SurveyFigure;
import trestle.figure.Theme;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyTask;
import trestle.survey.SurveyWorkings;

/** The door of {@code /v1/survey-coverage}: reads the request once, writes the answer once. */
public final class SurveyCoverageEndpoint
        implements Calculation<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage, ApiSurveyCoverageAnswer> {
    private static final List<String> MODELS = List.of(
            "ground sample distance, footprint and base of a camera that looks straight down (Wolf, Dewitt and Wilkinson,"
                    + " Elements of Photogrammetry; from memory); ceil(width / spacing) + 1 lines about the middle of the block,"
                    + " ceil(length / base) + 1 photos and those beyond the ends (NPTEL course 105104100, module 3)",
            "geodesics of the WGS 84 ellipsoid (Karney 2013) about the middle of the block",
            "wind triangle; turns of one radius that swing out where lines are close (geometry)");

    private static final List<String> CAUTIONS = List.of(
            "Local rules on airspace, height, line of sight, people on the ground and pictures of them come first: a plan is no"
                    + " permission.",
            "Look at the terrain, masts and trees under every line and turn, and keep a way home from each of them in the wind"
                    + " of the day.");

    @Override
    public String name() {
        return "survey-coverage";
    }

    @Override
    public Class<ApiSurveyCoverageRequest> requestType() {
        return ApiSurveyCoverageRequest.class;
    }

    @Override
    public SurveyTask read(ApiSurveyCoverageRequest request, Reading reading) {
        return new SurveyReading(request, reading).task();
    }

    @Override
    public SurveyCoverage work(SurveyTask read) {
        return SurveyCoverage.of(read);
    }

    @Override
    public ApiSurveyCoverageAnswer answer(Done<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage> done) {
        return SurveyWriting.write(
                done.read(),
                done.work(),
                JudgementWriting.of(
                        done.work().judgement(), SurveyReading.pointers()::to, done.assumed(), CAUTIONS, MODELS));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage> done) {
        return WorkingWriting.write(SurveyWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage> done, Theme theme) {
        return SurveyFigure.of(done.read(), done.work(), theme);
    }
}
