package trestle.endpoint.surveycoverage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiSurveyCoverageAnswer;
import trestle.api.model.ApiSurveyCoverageRequest;
import trestle.api.model.ApiSurveyEnergyPlan;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.SurveyFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyEnergy;
import trestle.survey.SurveyPart;
import trestle.survey.SurveyPlan;
import trestle.survey.SurveyTask;
import trestle.survey.SurveyWorkings;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Share;

/** The door of {@code /v1/survey-coverage}: reads the request once, writes the answer once. */
public final class SurveyCoverageEndpoint
        implements Calculation<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage, ApiSurveyCoverageAnswer> {
    private static final String ENERGY = ApiSurveyCoverageRequest.ENERGY.at("");
    private static final String HOME = ApiSurveyEnergyPlan.HOME.at(ENERGY);
    private static final String NOT_GIVEN = "the request gives none";

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
        SurveyReading survey = new SurveyReading(request, "", reading);
        Optional<SurveyPlan> plan = survey.plan();
        Optional<SurveyEnergy> energy =
                Optional.ofNullable(request.energy()).map(given -> energy(given, survey, request, reading));
        reading.refuseContradictions();
        return plan.orElseThrow().at(request.airspeedMPerS(), energy);
    }

    private static SurveyEnergy energy(
            ApiSurveyEnergyPlan energy, SurveyReading survey, ApiSurveyCoverageRequest request, Reading reading) {
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
                energy.home() == null ? Optional.empty() : survey.position(energy.home(), HOME),
                Reading.optional(energy.wayKm(), Length::mFromKm).orElse(0));
    }

    private static Pointers pointers() {
        Map<Enum<?>, String> places = new HashMap<>(SurveyReading.pointers(""));
        places.put(SurveyPart.AIRSPEED, ApiSurveyCoverageRequest.AIRSPEED_M_PER_S.at(""));
        places.put(SurveyPart.ENERGY, ENERGY);
        places.put(SurveyPart.HOME, HOME);
        return new Pointers(places);
    }

    @Override
    public SurveyCoverage work(SurveyTask read) {
        return SurveyCoverage.of(read);
    }

    @Override
    public ApiSurveyCoverageAnswer answer(Done<ApiSurveyCoverageRequest, SurveyTask, SurveyCoverage> done) {
        return SurveyWriting.write(done.read(), done.work(), judgement(done.work(), pointers()::to, done.assumed()));
    }

    /**
     * What every answer about a survey carries.
     *
     * @param found what came of it
     * @param place where its parts stand in the request
     * @param assumed the defaults noted while reading the request
     * @return the judgement
     */
    public static ApiJudgement judgement(SurveyCoverage found, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(found.judgement(), place, assumed, CAUTIONS, MODELS);
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
