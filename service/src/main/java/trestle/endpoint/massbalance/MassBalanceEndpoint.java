package trestle.endpoint.massbalance;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.BalanceFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.massbalance.Balance;
import trestle.massbalance.BalancePart;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.MassBalanceWorkings;
import trestle.massbalance.TailArrangement;
import trestle.massbalance.Target;

/** The door of {@code /v1/mass-balance}: reads the request once, writes the answer once. */
public final class MassBalanceEndpoint
        implements Calculation<ApiMassBalanceRequest, BalanceTask, Balance, ApiMassBalanceAnswer> {
    static final List<String> MODELS = List.of(
            "point-mass build-up and weighing (FAA-H-8083-1B)",
            "mean aerodynamic chord of trapezoidal panels (Raymer, Aircraft Design; from memory)",
            "neutral point from tail volume, downwash and the whole aircraft's lift (Etkin and Reid; lift slopes of the USAF"
                    + " DATCOM; both from memory; fall of the downwash with height by our own vortex lattice)");

    private static final String WEIGH =
            "Weigh and balance the finished aircraft before its first flight: a list is only as good as its entries.";
    private static final String WEIGH_AGAIN =
            "Weigh again after any change of packs, payload or repair: the scales tell only what stood on them.";
    private static final String STEPS =
            "The neutral point is an estimate: begin with the CG at the forward end of its range, follow the maker's range where"
                    + " there is one, and move it aft in small steps.";
    private static final String MASS =
            "Local rules go by mass classes, and wing joiner, mounts and landing gear must carry the take-off mass: check both at"
                    + " this mass.";

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
    public ApiMassBalanceRequest complete(ApiMassBalanceRequest request, Estimating estimating) {
        return BalanceCompletion.complete(request, estimating);
    }

    @Override
    public void figures(Balance work, Map<MainFigure, Double> figures) {
        BalanceWriting.figures(work, figures);
    }

    @Override
    public Set<String> stops(Balance work) {
        return work.judgement().stops();
    }

    @Override
    public BalanceTask read(ApiMassBalanceRequest request, Reading reading) {
        BalanceReading parts = new BalanceReading(reading);
        boolean tailless = Boolean.TRUE.equals(request.tailless());
        consistent(request, tailless, reading);
        String itemsAt = ApiMassBalanceRequest.ITEMS.at("");
        List<Item> items = parts.items(request.items(), itemsAt);
        parts.spreadNeeds(request.items(), request.wing() != null, request.tail() != null, itemsAt);
        Optional<TailArrangement> tail =
                AirframeReading.tail(request.tail(), tailless, shiftPercentMac(request, reading), "", reading);
        Optional<Limits> limits = Optional.ofNullable(request.limits())
                .map(l -> parts.limits(l, request.wing() != null, ApiMassBalanceRequest.LIMITS.at("")));
        Optional<Target> target = parts.target(
                request.targetArmMm(), request.targetPercentMac(), request.targetStaticMarginPercent(), "");
        reading.refuseContradictions();
        return new BalanceTask(
                items,
                Optional.ofNullable(request.weighing()).map(BalanceReading::weighing),
                Optional.ofNullable(request.wing()).map(AirframeReading::wing),
                tail,
                Optional.ofNullable(request.fuselage()).map(AirframeReading::fuselage),
                limits,
                target);
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
    public static ApiJudgement judgement(Balance balance, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(balance.judgement(), place, assumed, cautions(balance), MODELS);
    }

    private static List<String> cautions(Balance balance) {
        String weigh = balance.weighed().isPresent() ? WEIGH_AGAIN : WEIGH;
        return balance.neutralPoint().isPresent() ? List.of(weigh, STEPS, MASS) : List.of(weigh, MASS);
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
                entry(BalancePart.TAIL_HEIGHT, ApiTail.VERTICAL_MM.at(tail)),
                entry(BalancePart.TAIL_DIHEDRAL, ApiTail.DIHEDRAL_DEG.at(tail)),
                entry(BalancePart.FUSELAGE_SHIFT, ApiMassBalanceRequest.FUSELAGE_SHIFT_PERCENT_MAC.at(airframe)),
                entry(BalancePart.MAXIMUM_TAKEOFF_MASS, ApiBalanceLimits.MAX_TAKEOFF_MASS_G.at(limits)),
                entry(BalancePart.FORWARD_LIMIT, ApiBalanceLimits.FORWARD_ARM_MM.at(limits)),
                entry(BalancePart.FORWARD_LIMIT_MAC, ApiBalanceLimits.FORWARD_PERCENT_MAC.at(limits)),
                entry(BalancePart.AFT_LIMIT, ApiBalanceLimits.AFT_ARM_MM.at(limits)),
                entry(BalancePart.AFT_LIMIT_MAC, ApiBalanceLimits.AFT_PERCENT_MAC.at(limits)),
                entry(BalancePart.LATERAL_LIMIT, ApiBalanceLimits.LATERAL_MM.at(limits)),
                entry(BalancePart.TARGET, ApiMassBalanceRequest.TARGET_ARM_MM.at(airframe)),
                entry(BalancePart.TARGET_MAC, ApiMassBalanceRequest.TARGET_PERCENT_MAC.at(airframe)),
                entry(BalancePart.TARGET_MARGIN, ApiMassBalanceRequest.TARGET_STATIC_MARGIN_PERCENT.at(airframe))));
    }

    /** A fuselage of known shape has its own share, so what is added is the propeller's alone. */
    private static Double shiftPercentMac(ApiMassBalanceRequest request, Reading reading) {
        boolean judged = request.tail() != null || Boolean.TRUE.equals(request.tailless());
        if (request.fuselage() == null || request.fuselageShiftPercentMac() != null || !judged) {
            return request.fuselageShiftPercentMac();
        }
        reading.assume(
                ApiMassBalanceRequest.FUSELAGE_SHIFT_PERCENT_MAC.at(""),
                "0 %",
                "the fuselage's share follows from its shape, and the propeller's is not counted");
        return 0.0;
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
