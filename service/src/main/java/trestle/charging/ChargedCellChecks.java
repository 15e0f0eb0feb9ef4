package trestle.charging;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.battery.PackPart;
import trestle.battery.Segment;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;
import trestle.units.Time;

/** Whether the cells may take the charge. */
final class ChargedCellChecks {
    private static final Basis DATA_SHEETS = Basis.source("common limits of data sheets, from memory");
    private static final Basis PLATING =
            Basis.source("largest rate without plating of published parameter sets (O'Kane et al. 2022)");

    private static final double COOL_C = 15;
    private static final double ROOM_C = 20;
    private static final double WARM_START_C = 40;

    /** Beyond what a balanced string may show. */
    private static final double MOST_OVER_HOLD_V = 0.02;

    private final ChargeTask task;
    private final PackCharge charge;
    private final double startC;

    private ChargedCellChecks(ChargeTask task, PackCharge charge) {
        this.task = task;
        this.charge = charge;
        startC = Temperature.cFromK(task.surroundings().startK());
    }

    static void judge(ChargeTask task, PackCharge charge, Judge judge) {
        ChargedCellChecks checks = new ChargedCellChecks(task, charge);
        judge.essential(
                "start-temperature",
                "temperature of the cells at the start",
                Subject.of(ChargePart.PACK_TEMPERATURE),
                checks::start);
        judge.essential(
                "charge-current", "current against the cells' rating", Subject.of(ChargePart.CURRENT), checks::current);
        judge.essential(
                "hold-voltage",
                "voltage that the cells are held at",
                Subject.of(ChargePart.HOLD_VOLTAGE),
                checks::hold);
        judge.essential(
                "charge-temperature",
                "highest temperature of the cells",
                Subject.of(ChargePart.CURRENT),
                checks::highest);
        judge.check("string-alike", "segments of one string alike", Subject.of(ChargePart.CONNECTION), checks::alike);
    }

    private void start(Trial trial) {
        double leastC = Math.min(
                Temperature.cFromK(CellCare.FREEZING_K),
                Temperature.cFromK(task.coldRatingK().orElse(CellCare.FREEZING_K)));
        boolean rated = task.coldRatingK().isPresent()
                && task.surroundings().startK() >= task.coldRatingK().getAsDouble();
        trial.of(startC, "°C")
                .atLeast(leastC, DATA_SHEETS)
                .stop(
                        "too-cold-to-charge",
                        "The cells are at %s °C, and below %s °C lithium plates and stays: warm them to 10 °C first.",
                        Digits.beside(startC, leastC, 0),
                        Digits.beside(leastC, startC, 0))
                .atMost(Temperature.cFromK(CellCare.TOO_HOT_K), DATA_SHEETS)
                .stopIf(
                        task.surroundings().startK() >= CellCare.TOO_HOT_K,
                        "too-hot-to-charge",
                        "The cells are at %.0f °C: none are charged above %.0f °C; let them cool to 30 °C.",
                        startC,
                        Temperature.cFromK(CellCare.TOO_HOT_K))
                .atLeast(COOL_C, PLATING)
                .attentionIf(
                        startC < COOL_C && !rated,
                        "cold-charge-reduced",
                        "At %.0f °C the %.1f A that the cells are taken to stand falls to %.1f A, and this charge takes"
                                + " %s; from %.0f °C it takes %s: warm the pack first.",
                        startC,
                        rating().least(),
                        charge.slowest().segments().stream()
                                .mapToDouble(SegmentCharge::allowedA)
                                .min()
                                .orElse(0),
                        Judge.later(() -> said(charge.timeToTargetS())),
                        ROOM_C,
                        Judge.later(() -> said(PackCharge.unjudged(task.startingAtK(Temperature.kFromC(ROOM_C)))
                                .timeToTargetS())))
                .atMost(WARM_START_C, Basis.COMMON_PRACTICE)
                .attention(
                        "warm-pack",
                        "The cells are at %.0f °C: let the pack cool to 30 °C before it is charged.",
                        startC);
    }

    private static String said(OptionalDouble timeS) {
        return timeS.isPresent() ? Time.saidInMinutes(timeS.getAsDouble()) : "more than a day";
    }

    /** The rating of the segment that takes least, and of which it is. */
    private record Rating(double least, int segment, boolean known) {}

    private Rating rating() {
        List<Segment> segments = task.pack().segments();
        int least = IntStream.range(0, segments.size())
                .boxed()
                .min((a, b) -> Double.compare(CellCare.ratedA(segments.get(a)), CellCare.ratedA(segments.get(b))))
                .orElseThrow();
        return new Rating(CellCare.ratedA(segments.get(least)), least, unrated().length == 0);
    }

    private Subject[] unrated() {
        List<Segment> segments = task.pack().segments();
        return IntStream.range(0, segments.size())
                .filter(k -> segments.get(k).cell().limits().maxChargeCurrentA().isEmpty())
                .mapToObj(k -> Subject.of(PackPart.MAX_CHARGE_CURRENT, k))
                .toArray(Subject[]::new);
    }

    private void current(Trial trial) {
        Rating rating = rating();
        double askedA = task.setA().orElse(charge.slowest().startA());
        Digits said = Digits.apart(askedA, rating.least(), 1);
        String strings = task.pack().nameOf(rating.segment());
        if (!rating.known()) {
            trial.of(askedA, "A")
                    .atMost(rating.least(), Basis.COMMON_PRACTICE)
                    .attentionIf(
                            task.setA().isPresent() && askedA > rating.least(),
                            "charge-current-above-usual",
                            "%s A is more than the %s A that cells of this kind in %s usually stand, and their rating is"
                                    + " not given: look it up before you set it.",
                            said.first(),
                            said.second(),
                            strings)
                    .notJudged(unrated());
            return;
        }
        trial.of(askedA, "A")
                .atMost(rating.least(), Basis.REQUEST)
                .stopIf(
                        task.setA().isPresent() && askedA > rating.least(),
                        "charge-current-above-rating",
                        "%s A is more than the %s A that the cells of %s are rated for: set %s A.",
                        said.first(),
                        said.second(),
                        strings,
                        said.second());
    }

    private void hold(Trial trial) {
        List<Segment> segments = task.pack().segments();
        int least = IntStream.range(0, segments.size())
                .boxed()
                .min((a, b) -> Double.compare(
                        segments.get(a).cell().fullVoltageV(),
                        segments.get(b).cell().fullVoltageV()))
                .orElseThrow();
        double limitV = segments.get(least).cell().fullVoltageV();
        double heldV = task.holdV().orElse(limitV);
        boolean given = segments.get(least).cell().limits().fullVoltageV().isPresent();
        trial.of(heldV, "V")
                .atMost(limitV, given ? Basis.REQUEST : DATA_SHEETS)
                .stop(
                        "hold-voltage-too-high",
                        "Cells of %s are full at %s V, and %s V would overcharge them, which can set them on fire: set"
                                + " %s V.",
                        task.pack().nameOf(least),
                        Digits.beside(limitV, heldV, 2),
                        Digits.beside(heldV, limitV, 2),
                        Digits.beside(limitV, heldV, 2));
    }

    private void highest(Trial trial) {
        double highestC = Temperature.cFromK(charge.highestK());
        double warmC = Temperature.cFromK(CellCare.WARM_K);
        double tooHotC = Temperature.cFromK(CellCare.TOO_HOT_K);
        trial.of(highestC, "°C")
                .atMost(tooHotC, DATA_SHEETS)
                .stopIf(
                        charge.strings().stream().anyMatch(string -> string.end() == ChargeEnd.TOO_HOT)
                                && startC < tooHotC,
                        "pack-hot-on-charge",
                        "The cells reach %.0f °C on this charge, where it has to end: take the pack out of its covering"
                                + " and charge at a lower current.",
                        tooHotC)
                .atMost(warmC, DATA_SHEETS)
                .attention(
                        "pack-hot-on-charge",
                        "The cells reach %.0f °C on this charge, and above %.0f °C they age fast: take the pack out of its"
                                + " covering, or charge at a lower current.",
                        highestC,
                        warmC);
    }

    /** Without a balancer a string is held as a whole. */
    private void alike(Trial trial) {
        boolean string = task.connection() == Connection.IN_SERIES
                && task.pack().segments().size() > 1;
        if (!string || task.charger().balances()) {
            return;
        }
        double overV = charge.segments().stream()
                .mapToDouble(segment -> segment.highestCellV() - heldV(segment))
                .max()
                .orElse(0);
        double highestV = charge.segments().stream()
                .mapToDouble(SegmentCharge::highestCellV)
                .max()
                .orElse(0);
        trial.of(highestV, "V")
                .atMost(highestV - overV + MOST_OVER_HOLD_V, Basis.COMMON_PRACTICE)
                .stop(
                        "series-needs-balance",
                        "Charged as one string without a balancer, the fuller segment ends at %.3f V a cell, %.0f mV over:"
                                + " charge the segments separately, or with the balance lead.",
                        highestV,
                        1000 * overV);
    }

    private double heldV(SegmentCharge segment) {
        return task.holdV()
                .orElse(task.pack().segments().get(segment.index()).cell().fullVoltageV());
    }
}
