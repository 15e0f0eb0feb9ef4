package trestle.endpoint.massbalance;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiBalanceItem;
import trestle.api.model.ApiBalanceLimits;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiMassBalanceAnswer;
import trestle.api.model.ApiMassBalanceRequest;
import trestle.api.model.ApiSupport;
import trestle.api.model.ApiTail;
import trestle.api.model.ApiWeighing;
import trestle.api.model.ApiWing;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.BalanceFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.massbalance.Balance;
import trestle.massbalance.BalancePart;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.MassBalance;
import trestle.massbalance.MassBalanceWorkings;

/** The door of {@code /v1/mass-balance}: reads the request once, writes the answer once. */
public final class MassBalanceEndpoint
        implements Calculation<ApiMassBalanceRequest, BalanceTask, Balance, ApiMassBalanceAnswer> {
    static final List<String> MODELS = List.of(
            "point-mass build-up and weighing (FAA-H-8083-1B)",
            "mean aerodynamic chord of trapezoidal panels (Raymer, Aircraft Design; from memory)",
            "neutral point from tail volume with downwash (Etkin and Reid; lift slopes of"
                    + " the USAF DATCOM; both from memory)");

    static final List<String> CAUTIONS = List.of(
            "Weigh and balance the finished aircraft before its first flight: a build-up is only as good as its list.",
            "The neutral point is an estimate; begin with the centre of gravity well"
                    + " forward of it and follow the maker's range where there is one.");

    private static final Pointers POINTERS = pointers("");

    @Override
    public String name() {
        return "mass-balance";
    }

    @Override
    public Class<ApiMassBalanceRequest> requestType() {
        return ApiMassBalanceRequest.class;
    }

    @Override
    public BalanceTask read(ApiMassBalanceRequest request, Reading reading) {
        BalanceReading parts = new BalanceReading(reading);
        boolean tailless = Boolean.TRUE.equals(request.tailless());
        consistent(request, tailless, reading);
        BalanceTask task = new BalanceTask(
                parts.items(request.items(), ApiMassBalanceRequest.ITEMS.at("")),
                Optional.ofNullable(request.weighing()).map(BalanceReading::weighing),
                Optional.ofNullable(request.wing()).map(AirframeReading::wing),
                AirframeReading.tail(request.tail(), tailless, request.fuselageShiftPercentMac(), "", reading),
                Optional.ofNullable(request.limits())
                        .map(l -> parts.limits(l, request.wing() != null, ApiMassBalanceRequest.LIMITS.at(""))),
                parts.target(
                        request.targetArmMm(), request.targetPercentMac(), request.targetStaticMarginPercent(), ""));
        reading.refuseContradictions();
        return task;
    }

    @Override
    public Balance work(BalanceTask read) {
        return MassBalance.of(read);
    }

    @Override
    public ApiMassBalanceAnswer answer(Done<ApiMassBalanceRequest, BalanceTask, Balance> done) {
        return BalanceWriting.write(done.work(), judgement(done.work(), POINTERS::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiMassBalanceRequest, BalanceTask, Balance> done) {
        return WorkingWriting.write(MassBalanceWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiMassBalanceRequest, BalanceTask, Balance> done, Theme theme) {
        return BalanceFigure.of(done.read(), done.work(), theme);
    }

    /** The judgement on a balance, with its parts where a request has them. */
    public static ApiJudgement judgement(
            Balance balance, Function<Subject, String> place, List<ApiAssumption> assumed) {
        return JudgementWriting.of(balance.judgement(), place, assumed, CAUTIONS, MODELS);
    }

    /** Where the parts of a balance stand, given the place of the airframe. */
    public static Pointers pointers(String airframe) {
        String items = ApiMassBalanceRequest.ITEMS.at("");
        String weighing = ApiMassBalanceRequest.WEIGHING.at("");
        String support = ApiWeighing.SUPPORTS.at(weighing) + "/{}";
        String wing = ApiMassBalanceRequest.WING.at(airframe);
        String tail = ApiMassBalanceRequest.TAIL.at(airframe);
        String limits = ApiMassBalanceRequest.LIMITS.at(airframe);
        return new Pointers(Map.ofEntries(
                entry(BalancePart.ITEMS, items),
                entry(BalancePart.ITEM_TRAVEL, ApiBalanceItem.MOVABLE_FROM_MM.at(items + "/{}")),
                entry(BalancePart.WEIGHING, weighing),
                entry(BalancePart.SUPPORT, support),
                entry(BalancePart.SUPPORT_LATERAL, ApiSupport.LATERAL_MM.at(support)),
                entry(BalancePart.WING, wing),
                entry(BalancePart.PANELS, ApiWing.PANELS.at(wing)),
                entry(BalancePart.TAIL, tail),
                entry(BalancePart.TAIL_ARM, ApiTail.QUARTER_CHORD_ARM_MM.at(tail)),
                entry(BalancePart.FUSELAGE_SHIFT, ApiMassBalanceRequest.FUSELAGE_SHIFT_PERCENT_MAC.at(airframe)),
                entry(BalancePart.MAXIMUM_TAKEOFF_MASS, ApiBalanceLimits.MAX_TAKEOFF_MASS_G.at(limits)),
                entry(BalancePart.FORWARD_LIMIT, limits),
                entry(BalancePart.AFT_LIMIT, limits),
                entry(BalancePart.LATERAL_LIMIT, ApiBalanceLimits.LATERAL_MM.at(limits)),
                entry(BalancePart.TARGET, airframe)));
    }

    private static void consistent(ApiMassBalanceRequest request, boolean tailless, Reading reading) {
        boolean wing = request.wing() != null;
        if (request.targetPercentMac() != null && !wing) {
            reading.fault(ApiMassBalanceRequest.WING.at(""), "missing", "target_percent_mac needs the wing");
        }
        if (request.targetStaticMarginPercent() != null && !wing) {
            reading.fault(ApiMassBalanceRequest.WING.at(""), "missing", "target_static_margin_percent needs the wing");
        }
        AirframeReading.marginNeedsTail(request.targetStaticMarginPercent(), request.tail(), tailless, "", reading);
    }
}
