package trestle.endpoint.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.api.Field;
import trestle.api.model.ApiBalanceItem;
import trestle.api.model.ApiBalanceLimits;
import trestle.api.model.ApiMassBalanceRequest;
import trestle.api.model.ApiSpread;
import trestle.api.model.ApiSpreadBuild;
import trestle.api.model.ApiSpreadKind;
import trestle.api.model.ApiSupport;
import trestle.api.model.ApiWeighing;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.Spread;
import trestle.massbalance.Station;
import trestle.massbalance.Support;
import trestle.massbalance.Target;
import trestle.massbalance.Travel;
import trestle.massbalance.Weighing;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/**
 * Reads items, scales, limits and target, which several requests share.
 *
 * @param reading notes contradictions
 */
public record BalanceReading(Reading reading) {

    /** The items of a list that stands at a pointer. */
    public List<Item> items(List<ApiBalanceItem> items, String at) {
        return IntStream.range(0, items.size())
                .mapToObj(i -> item(items.get(i), at + "/" + i))
                .toList();
    }

    private Item item(ApiBalanceItem item, String at) {
        return new Item(
                item.name(),
                Reading.or(item.quantity(), ApiBalanceItem.QUANTITY),
                Mass.kgFromG(item.massG()),
                Length.mFromMm(item.armMm()),
                metres(item.lateralMm()),
                metres(item.verticalMm()),
                Mass.kgFromG(Reading.or(item.massToleranceG(), ApiBalanceItem.MASS_TOLERANCE_G)),
                Length.mFromMm(Reading.or(item.armToleranceMm(), ApiBalanceItem.ARM_TOLERANCE_MM)),
                travel(item.movableFromMm(), item.movableToMm(), at),
                Optional.ofNullable(item.spread()).flatMap(s -> spread(s, ApiBalanceItem.SPREAD.at(at))));
    }

    private Optional<Spread> spread(ApiSpread spread, String at) {
        return switch (spread.kind()) {
            case WING, TAIL -> {
                String what = "a spread over a wing or tail";
                reading.takesNo(what, at, ApiSpread.AXIS, spread.axis());
                reading.takesNo(what, at, ApiSpread.LENGTH_MM, spread.lengthMm());
                reading.takesNo(what, at, ApiSpread.WIDTH_MM, spread.widthMm());
                reading.takesNo(what, at, ApiSpread.HEIGHT_MM, spread.heightMm());
                boolean wing = spread.kind() == ApiSpreadKind.WING;
                yield Optional.of(wing ? new Spread.OverWing(build(spread)) : new Spread.OverTail(build(spread)));
            }
            case ROD -> {
                reading.takesNo("a rod", at, ApiSpread.BUILD, spread.build());
                reading.takesNo("a rod", at, ApiSpread.HEIGHT_MM, spread.heightMm());
                yield length("a rod", spread, at).map(m -> new Spread.Rod(axis(spread), m, widthM(spread)));
            }
            case BLOCK -> {
                reading.takesNo("a block", at, ApiSpread.BUILD, spread.build());
                reading.takesNo("a block", at, ApiSpread.AXIS, spread.axis());
                double heightM = Length.mFromMm(Reading.or(spread.heightMm(), ApiSpread.HEIGHT_MM));
                yield length("a block", spread, at).map(m -> new Spread.Block(m, widthM(spread), heightM));
            }
        };
    }

    private static double widthM(ApiSpread spread) {
        return Length.mFromMm(Reading.or(spread.widthMm(), ApiSpread.WIDTH_MM));
    }

    private Optional<Double> length(String what, ApiSpread spread, String at) {
        return reading.needs(what, at, ApiSpread.LENGTH_MM.name(), spread.lengthMm())
                ? Optional.of(Length.mFromMm(spread.lengthMm()))
                : Optional.empty();
    }

    private static Spread.Build build(ApiSpread spread) {
        return Reading.or(spread.build(), ApiSpread.BUILD) == ApiSpreadBuild.SKIN
                ? Spread.Build.SKIN
                : Spread.Build.SOLID;
    }

    private static Spread.Axis axis(ApiSpread spread) {
        return Spread.Axis.valueOf(Reading.or(spread.axis(), ApiSpread.AXIS).name());
    }

    /**
     * Demands the wing and the tail that items are spread over.
     *
     * @param items of the request
     * @param wing whether there is a wing
     * @param tail whether there is a tail
     * @param at JSON Pointer of the list
     */
    public void spreadNeeds(List<ApiBalanceItem> items, boolean wing, boolean tail, String at) {
        for (int i = 0; i < items.size(); i++) {
            ApiSpread spread = items.get(i).spread();
            String kind = ApiBalanceItem.SPREAD.at(at + "/" + i);
            if (spread != null && spread.kind() == ApiSpreadKind.WING && !wing) {
                reading.fault(ApiSpread.KIND.at(kind), "missing", "an item spread over the wing needs the wing");
            }
            if (spread != null && spread.kind() == ApiSpreadKind.TAIL && !tail) {
                reading.fault(ApiSpread.KIND.at(kind), "missing", "an item spread over the tail needs the tail");
            }
        }
    }

    /** How far something can be moved; empty where the request does not say. */
    public Optional<Travel> travel(Double fromMm, Double toMm, String at) {
        if (fromMm == null && toMm == null) {
            return Optional.empty();
        }
        if (fromMm == null || toMm == null) {
            Field<Double> lacking = fromMm == null ? ApiBalanceItem.MOVABLE_FROM_MM : ApiBalanceItem.MOVABLE_TO_MM;
            reading.fault(lacking.at(at), "missing", "give both ends of the travel or neither");
            return Optional.empty();
        }
        if (toMm < fromMm) {
            reading.fault(
                    ApiBalanceItem.MOVABLE_TO_MM.at(at),
                    "contradiction",
                    "movable_to_mm lies forward of movable_from_mm");
            return Optional.empty();
        }
        return Optional.of(new Travel(Length.mFromMm(fromMm), Length.mFromMm(toMm)));
    }

    /** The aircraft on scales. */
    public static Weighing weighing(ApiWeighing weighing) {
        return new Weighing(
                weighing.supports().stream().map(BalanceReading::support).toList());
    }

    private static Support support(ApiSupport support) {
        return new Support(
                support.name(),
                Mass.kgFromG(support.readingG()),
                Mass.kgFromG(Reading.or(support.tareG(), ApiSupport.TARE_G)),
                Length.mFromMm(support.armMm()),
                metres(support.lateralMm()),
                Support.USUAL_READING_TOLERANCE_KG,
                Support.USUAL_PLACE_TOLERANCE_M);
    }

    /**
     * What the balance is held against.
     *
     * @param limits of the request
     * @param wing whether there is a wing to take shares of
     * @param at JSON Pointer of the limits
     * @return the limits
     */
    public Limits limits(ApiBalanceLimits limits, boolean wing, String at) {
        consistent(limits, wing, at);
        Double most = limits.maxTakeoffMassG();
        return new Limits(
                most == null ? OptionalDouble.empty() : OptionalDouble.of(Mass.kgFromG(most)),
                station(limits.forwardArmMm(), limits.forwardPercentMac()),
                station(limits.aftArmMm(), limits.aftPercentMac()),
                metres(limits.lateralMm()));
    }

    private void consistent(ApiBalanceLimits limits, boolean wing, String at) {
        reading.atMostOne(
                at,
                List.of(ApiBalanceLimits.FORWARD_ARM_MM.name(), ApiBalanceLimits.FORWARD_PERCENT_MAC.name()),
                limits.forwardArmMm(),
                limits.forwardPercentMac());
        reading.atMostOne(
                at,
                List.of(ApiBalanceLimits.AFT_ARM_MM.name(), ApiBalanceLimits.AFT_PERCENT_MAC.name()),
                limits.aftArmMm(),
                limits.aftPercentMac());
        if (!wing && (limits.forwardPercentMac() != null || limits.aftPercentMac() != null)) {
            reading.fault(
                    ApiMassBalanceRequest.WING.at(""),
                    "missing",
                    "limits in % of the mean aerodynamic chord need the wing");
        }
        ordered(limits.forwardArmMm(), limits.aftArmMm(), ApiBalanceLimits.AFT_ARM_MM.at(at));
        ordered(limits.forwardPercentMac(), limits.aftPercentMac(), ApiBalanceLimits.AFT_PERCENT_MAC.at(at));
    }

    private void ordered(Double forward, Double aft, String at) {
        if (forward != null && aft != null && aft < forward) {
            reading.fault(
                    at,
                    "contradiction",
                    "the aft limit "
                            + FieldUnit.withUnit(aft, at)
                            + " lies forward of the forward limit "
                            + FieldUnit.withUnit(forward, at));
        }
    }

    /**
     * Where the centre of gravity should be: at most one of three.
     *
     * @param armMm an arm, or null
     * @param percentMac a share of the mean chord, or null
     * @param marginPercent a static margin, or null
     * @param at JSON Pointer of what holds the fields
     * @return the target; empty where there is none
     */
    public Optional<Target> target(Double armMm, Double percentMac, Double marginPercent, String at) {
        reading.atMostOne(
                at,
                List.of(
                        ApiMassBalanceRequest.TARGET_ARM_MM.name(),
                        ApiMassBalanceRequest.TARGET_PERCENT_MAC.name(),
                        ApiMassBalanceRequest.TARGET_STATIC_MARGIN_PERCENT.name()),
                armMm,
                percentMac,
                marginPercent);
        if (marginPercent != null) {
            return Optional.of(new Target.StaticMargin(Share.fractionFromPercent(marginPercent)));
        }
        return station(armMm, percentMac).map(station -> station);
    }

    private static Optional<Station> station(Double armMm, Double percentMac) {
        if (armMm != null) {
            return Optional.of(new Station.AtArm(Length.mFromMm(armMm)));
        }
        return Optional.ofNullable(percentMac)
                .map(percent -> new Station.AtMacFraction(Share.fractionFromPercent(percent)));
    }

    private static OptionalDouble metres(Double lengthMm) {
        return lengthMm == null ? OptionalDouble.empty() : OptionalDouble.of(Length.mFromMm(lengthMm));
    }
}
