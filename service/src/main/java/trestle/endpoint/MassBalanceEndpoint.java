package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.MassBalanceAnswer;
import trestle.api.model.MassBalanceRequest;
import trestle.api.model.Working;
import trestle.figure.BalanceFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.massbalance.Balance;
import trestle.massbalance.BalancePart;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.MassBalance;
import trestle.massbalance.MassBalanceWorkings;

/** The door of {@code /v1/mass-balance}: reads the request once, writes the answer once. */
final class MassBalanceEndpoint
        implements Calculation<MassBalanceRequest, MassBalanceAnswer>,
                Drawn<MassBalanceRequest>,
                Worked<MassBalanceRequest> {
    static final List<String> MODELS = List.of(
            "point-mass build-up and weighing (FAA-H-8083-1B)",
            "mean aerodynamic chord of trapezoidal panels (Raymer, Aircraft Design; from memory)",
            "neutral point from tail volume with downwash (Etkin and Reid; lift slopes of"
                    + " the USAF DATCOM; both from memory)");

    static final List<String> CAUTIONS = List.of(
            "Weigh and balance the finished aircraft before its first flight: a build-up is only as good as its list.",
            "The neutral point is an estimate; begin with the centre of gravity well"
                    + " forward of it and follow the maker's range where there is one.");

    private static final Pointers POINTERS = new Pointers(Map.ofEntries(
            entry(BalancePart.ITEMS, "/items"),
            entry(BalancePart.ITEM_TRAVEL, "/items/{}/movable_from_mm"),
            entry(BalancePart.WEIGHING, "/weighing"),
            entry(BalancePart.SUPPORT, "/weighing/supports/{}"),
            entry(BalancePart.SUPPORT_LATERAL, "/weighing/supports/{}/lateral_mm"),
            entry(BalancePart.WING, "/wing"),
            entry(BalancePart.PANELS, "/wing/panels"),
            entry(BalancePart.TAIL, "/tail"),
            entry(BalancePart.TAIL_ARM, "/tail/quarter_chord_arm_mm"),
            entry(BalancePart.FUSELAGE_SHIFT, "/fuselage_shift_percent_mac"),
            entry(BalancePart.MAXIMUM_TAKEOFF_MASS, "/limits/max_takeoff_mass_g"),
            entry(BalancePart.FORWARD_LIMIT, "/limits"),
            entry(BalancePart.AFT_LIMIT, "/limits"),
            entry(BalancePart.LATERAL_LIMIT, "/limits/lateral_mm"),
            entry(BalancePart.TARGET, "")));

    @Override
    public String name() {
        return "mass-balance";
    }

    @Override
    public Class<MassBalanceRequest> requestType() {
        return MassBalanceRequest.class;
    }

    @Override
    public MassBalanceAnswer answer(MassBalanceRequest request) {
        Reading reading = new Reading();
        BalanceTask task = read(request, reading);
        Balance balance = MassBalance.of(task);
        return BalanceWriting.write(balance, judgement(balance, POINTERS::to, reading));
    }

    @Override
    public List<Working> workings(MassBalanceRequest request) {
        BalanceTask task = read(request, new Reading());
        return WorkingWriting.write(MassBalanceWorkings.of(task, MassBalance.of(task)));
    }

    @Override
    public String figure(MassBalanceRequest request, Theme theme) {
        BalanceTask task = read(request, new Reading());
        return BalanceFigure.of(task, MassBalance.of(task), theme);
    }

    /** The judgement on a balance, with its parts where a request has them. */
    static trestle.api.model.Judgement judgement(Balance balance, Function<Subject, String> place, Reading reading) {
        return Judge.of(balance.findings(), balance.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    private static BalanceTask read(MassBalanceRequest request, Reading reading) {
        BalanceReading parts = new BalanceReading(reading);
        boolean tailless = Boolean.TRUE.equals(request.tailless());
        consistent(request, tailless, reading);
        BalanceTask task = new BalanceTask(
                parts.items(request.items(), "/items"),
                Optional.ofNullable(request.weighing()).map(BalanceReading::weighing),
                Optional.ofNullable(request.wing()).map(AirframeReading::wing),
                AirframeReading.tail(request.tail(), tailless, request.fuselageShiftPercentMac(), "", reading),
                Optional.ofNullable(request.limits()).map(l -> parts.limits(l, request.wing() != null, "/limits")),
                parts.target(
                        request.targetArmMm(), request.targetPercentMac(), request.targetStaticMarginPercent(), ""));
        reading.refuseContradictions();
        return task;
    }

    private static void consistent(MassBalanceRequest request, boolean tailless, Reading reading) {
        boolean wing = request.wing() != null;
        if (request.targetPercentMac() != null && !wing) {
            reading.fault("/wing", "missing", "target_percent_mac needs the wing");
        }
        if (request.targetStaticMarginPercent() != null && !wing) {
            reading.fault("/wing", "missing", "target_static_margin_percent needs the wing");
        }
        AirframeReading.marginNeedsTail(request.targetStaticMarginPercent(), request.tail(), tailless, "", reading);
    }
}
