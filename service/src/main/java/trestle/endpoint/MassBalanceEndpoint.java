package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.api.model.BalanceItem;
import trestle.api.model.BalanceLimits;
import trestle.api.model.MassBalanceAnswer;
import trestle.api.model.MassBalanceRequest;
import trestle.massbalance.Balance;
import trestle.massbalance.BalancePart;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Station;
import trestle.massbalance.Support;
import trestle.massbalance.Target;
import trestle.massbalance.Travel;
import trestle.massbalance.Weighing;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/** The door of {@code /v1/mass-balance}: reads the request once, writes the answer once. */
final class MassBalanceEndpoint implements Calculation<MassBalanceRequest, MassBalanceAnswer> {
    static final List<String> MODELS =
            List.of(
                    "point-mass build-up and weighing (FAA-H-8083-1B)",
                    "mean aerodynamic chord of trapezoidal panels (Raymer, Aircraft Design)",
                    "neutral point from tail volume with downwash (Etkin and Reid; lift slopes of"
                            + " the USAF DATCOM)");

    static final List<String> CAUTIONS =
            List.of(
                    "Weigh and balance the finished aircraft before its first flight: a build-up is"
                            + " only as good as its list.",
                    "The neutral point is an estimate; begin with the centre of gravity well"
                            + " forward of it and follow the maker's range where there is one.");

    private static final Pointers POINTERS =
            new Pointers(
                    Map.ofEntries(
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
        return BalanceWriting.write(
                MassBalance.of(task), result -> judgement(result, POINTERS, reading));
    }

    /** The judgement on a balance, with its parts where a request has them. */
    static trestle.api.model.Judgement judgement(
            Balance balance, Pointers pointers, Reading reading) {
        return Judge.of(
                balance.findings(), balance.assumptions(), pointers, reading, CAUTIONS, MODELS);
    }

    private static BalanceTask read(MassBalanceRequest request, Reading reading) {
        consistent(request, reading);
        List<Item> items =
                IntStream.range(0, request.items().size())
                        .mapToObj(i -> item(request.items().get(i), "/items/" + i, reading))
                        .toList();
        reading.refuseContradictions();
        return new BalanceTask(
                items,
                Optional.ofNullable(request.weighing()).map(MassBalanceEndpoint::weighing),
                Optional.ofNullable(request.wing()).map(AirframeReading::wing),
                AirframeReading.tail(
                        request.tail(),
                        Boolean.TRUE.equals(request.tailless()),
                        request.fuselageShiftPercentMac(),
                        "",
                        reading),
                Optional.ofNullable(request.limits()).map(MassBalanceEndpoint::limits),
                target(request));
    }

    private static void consistent(MassBalanceRequest request, Reading reading) {
        reading.atMostOne(
                "",
                List.of("target_arm_mm", "target_percent_mac", "target_static_margin_percent"),
                request.targetArmMm(),
                request.targetPercentMac(),
                request.targetStaticMarginPercent());
        if (request.targetPercentMac() != null && request.wing() == null) {
            reading.fault("/wing", "missing", "target_percent_mac needs the wing");
        }
        if (request.targetStaticMarginPercent() != null
                && (request.wing() == null
                        || request.tail() == null && !Boolean.TRUE.equals(request.tailless()))) {
            reading.fault(
                    request.wing() == null ? "/wing" : "/tail",
                    "missing",
                    "target_static_margin_percent needs wing and tail");
        }
        if (request.tail() != null && Boolean.TRUE.equals(request.tailless())) {
            reading.fault("/tailless", "contradiction", "tailless is true, but a tail is given");
        }
        BalanceLimits limits = request.limits();
        if (limits != null) {
            consistent(limits, request.wing() != null, reading);
        }
    }

    private static void consistent(BalanceLimits limits, boolean wing, Reading reading) {
        reading.atMostOne(
                "/limits",
                List.of("forward_arm_mm", "forward_percent_mac"),
                limits.forwardArmMm(),
                limits.forwardPercentMac());
        reading.atMostOne(
                "/limits",
                List.of("aft_arm_mm", "aft_percent_mac"),
                limits.aftArmMm(),
                limits.aftPercentMac());
        if (!wing && (limits.forwardPercentMac() != null || limits.aftPercentMac() != null)) {
            reading.fault("/wing", "missing", "limits in % of the mean chord need the wing");
        }
        ordered(limits.forwardArmMm(), limits.aftArmMm(), "/limits/aft_arm_mm", reading);
        ordered(
                limits.forwardPercentMac(),
                limits.aftPercentMac(),
                "/limits/aft_percent_mac",
                reading);
    }

    private static void ordered(Double forward, Double aft, String at, Reading reading) {
        if (forward != null && aft != null && aft < forward) {
            reading.fault(
                    at,
                    "contradiction",
                    "the aft limit "
                            + FieldUnit.withUnit(aft, at)
                            + " lies ahead of the forward limit "
                            + FieldUnit.withUnit(forward, at));
        }
    }

    private static Item item(BalanceItem item, String at, Reading reading) {
        return new Item(
                item.name(),
                item.quantity() == null ? BalanceItem.DEFAULT_QUANTITY : item.quantity(),
                Mass.kgFromG(item.massG()),
                Length.mFromMm(item.armMm()),
                metres(item.lateralMm()),
                metres(item.verticalMm()),
                Mass.kgFromG(orZero(item.massToleranceG())),
                Length.mFromMm(orZero(item.armToleranceMm())),
                travel(item, at, reading));
    }

    private static Optional<Travel> travel(BalanceItem item, String at, Reading reading) {
        Double from = item.movableFromMm();
        Double to = item.movableToMm();
        if (from == null && to == null) {
            return Optional.empty();
        }
        if (from == null || to == null) {
            String lacking = from == null ? "movable_from_mm" : "movable_to_mm";
            reading.fault(at + "/" + lacking, "missing", "give both ends of the travel or neither");
            return Optional.empty();
        }
        if (to < from) {
            reading.fault(
                    at + "/movable_to_mm",
                    "contradiction",
                    "movable_to_mm lies ahead of movable_from_mm");
            return Optional.empty();
        }
        return Optional.of(new Travel(Length.mFromMm(from), Length.mFromMm(to)));
    }

    private static Weighing weighing(trestle.api.model.Weighing weighing) {
        return new Weighing(
                weighing.supports().stream()
                        .map(
                                support ->
                                        new Support(
                                                support.name(),
                                                Mass.kgFromG(support.readingG()),
                                                Mass.kgFromG(orZero(support.tareG())),
                                                Length.mFromMm(support.armMm()),
                                                metres(support.lateralMm()),
                                                Support.USUAL_READING_TOLERANCE_KG,
                                                Support.USUAL_PLACE_TOLERANCE_M))
                        .toList());
    }

    private static Limits limits(BalanceLimits limits) {
        Double most = limits.maxTakeoffMassG();
        return new Limits(
                most == null ? OptionalDouble.empty() : OptionalDouble.of(Mass.kgFromG(most)),
                station(limits.forwardArmMm(), limits.forwardPercentMac()),
                station(limits.aftArmMm(), limits.aftPercentMac()),
                metres(limits.lateralMm()));
    }

    private static Optional<Station> station(Double armMm, Double percentMac) {
        if (armMm != null) {
            return Optional.of(new Station.AtArm(Length.mFromMm(armMm)));
        }
        return Optional.ofNullable(percentMac)
                .map(percent -> new Station.AtMacFraction(Share.fractionFromPercent(percent)));
    }

    private static Optional<Target> target(MassBalanceRequest request) {
        Double margin = request.targetStaticMarginPercent();
        if (margin != null) {
            return Optional.of(new Target.StaticMargin(Share.fractionFromPercent(margin)));
        }
        return station(request.targetArmMm(), request.targetPercentMac()).map(s -> s);
    }

    private static OptionalDouble metres(Double lengthMm) {
        return lengthMm == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Length.mFromMm(lengthMm));
    }

    private static double orZero(Double value) {
        return value == null ? 0 : value;
    }
}
