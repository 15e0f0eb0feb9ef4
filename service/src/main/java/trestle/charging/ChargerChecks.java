package trestle.charging;

import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Time;

/** Whether charger and supply can do it. */
final class ChargerChecks {
    private final ChargeTask task;
    private final PackCharge charge;

    private ChargerChecks(ChargeTask task, PackCharge charge) {
        this.task = task;
        this.charge = charge;
    }

    static void judge(ChargeTask task, PackCharge charge, Judge judge) {
        ChargerChecks checks = new ChargerChecks(task, charge);
        judge.check(
                "charger-voltage", "voltage of the charger", Subject.of(ChargePart.CHARGER_VOLTAGE), checks::voltage);
        judge.check(
                "charger-channels",
                "outputs of the charger",
                Subject.of(ChargePart.CHARGER_CHANNELS),
                checks::channels);
        judge.check("charger-power", "power of the charger", Subject.of(ChargePart.CHARGER_POWER), checks::power);
        if (task.supply().isPresent()) {
            judge.essential("supply", "what the supply gives", Subject.of(ChargePart.SUPPLY), checks::supply);
        }
    }

    private void voltage(Trial trial) {
        boolean whole = task.connection() == Connection.IN_SERIES;
        int cells = task.pack().segments().stream()
                .mapToInt(segment -> segment.seriesCount())
                .reduce(0, whole ? Integer::sum : Math::max);
        double neededV = task.pack().segments().stream()
                .mapToDouble(segment -> segment.seriesCount()
                        * task.holdV().orElse(segment.cell().fullVoltageV()))
                .reduce(0, whole ? Double::sum : Math::max);
        OptionalDouble maxV = task.charger().maxVoltageV();
        if (maxV.isEmpty() && task.charger().maxSeriesCells().isEmpty()) {
            trial.notJudged(Subject.of(ChargePart.CHARGER_VOLTAGE));
            return;
        }
        boolean tooMany = task.charger().maxSeriesCells().isPresent()
                && cells > task.charger().maxSeriesCells().getAsInt();
        String instead = whole && task.pack().segments().size() > 1
                ? "charge the segments separately, or take a charger for more cells"
                : "take a charger for more cells";
        if (maxV.isPresent()) {
            double limitV = maxV.getAsDouble();
            Digits said = Digits.apart(neededV, limitV, 1);
            trial.of(neededV, "V")
                    .atMost(limitV, Basis.REQUEST)
                    .stop(
                            "charger-voltage-short",
                            "%d cells in series need %s V and the charger reaches %s V: %s.",
                            cells,
                            said.first(),
                            said.second(),
                            instead);
        }
        trial.stopIf(
                tooMany,
                "charger-voltage-short",
                "%d cells in series are more than the %d that the charger takes: %s.",
                cells,
                task.charger().maxSeriesCells().orElse(0),
                instead);
    }

    private void channels(Trial trial) {
        int wanted = task.connection() == Connection.SEPARATELY
                ? task.pack().segments().size()
                : 1;
        int there = task.charger().channels();
        trial.of(wanted, "")
                .atMost(there, Basis.REQUEST)
                .stop(
                        "charger-channels-short",
                        "%d segments at the same time need as many outputs, and the charger has %d: charge them one after"
                                + " another.",
                        wanted,
                        there);
    }

    private void power(Trial trial) {
        StringCharge slowest = charge.slowest();
        if (task.charger().maxPowerW().isEmpty()) {
            trial.notJudged(Subject.of(ChargePart.CHARGER_POWER));
            return;
        }
        double givenW = task.charger().maxPowerW().getAsDouble();
        double allowedA = slowest.segments().stream()
                .mapToDouble(SegmentCharge::allowedA)
                .min()
                .orElse(0);
        trial.of(slowest.startA(), "A")
                .noteIf(
                        slowest.limit() == LimitedBy.CHARGER_POWER,
                        "charger-power-limits",
                        "The charger's %.0f W give %.1f A at the start, and the cells may take %.1f A: without that limit"
                                + " the charge would take %s instead of %s.",
                        givenW,
                        slowest.startA(),
                        allowedA,
                        Judge.later(() ->
                                said(PackCharge.unjudged(task.onStrongCharger()).timeToTargetS())),
                        said(charge.timeToTargetS()));
    }

    private void supply(Trial trial) {
        SupplyUse use = charge.supply();
        StringCharge slowest = charge.slowest();
        OptionalDouble charges = use.charges();
        if (charges.isPresent()) {
            double neededAh = Charge.ahFromC(use.chargeC().getAsDouble());
            double usableAh = Charge.ahFromC(use.usableC().getAsDouble());
            Digits said = Digits.apart(neededAh, usableAh, 0);
            trial.of(neededAh, "Ah")
                    .atMost(usableAh, Basis.COMPUTED)
                    .attention(
                            "supply-short",
                            "This charge takes %.0f Wh, %s Ah of the field battery, and it gives %s Ah: charge less, or"
                                    + " take a larger one.",
                            Energy.whFromJ(use.energyJ()),
                            said.first(),
                            said.second());
        }
        trial.attentionIf(
                slowest.limit() == LimitedBy.SUPPLY_POWER,
                "supply-short",
                "The supply's %.0f W leave %.1f A at the start, and this charge takes %s.",
                task.supply().orElseThrow().maxPowerW().orElse(0),
                slowest.startA(),
                said(charge.timeToTargetS()));
    }

    private static String said(OptionalDouble timeS) {
        return timeS.isPresent() ? Time.saidInMinutes(timeS.getAsDouble()) : "more than a day";
    }
}
