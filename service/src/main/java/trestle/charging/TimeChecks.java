package trestle.charging;

import trestle.battery.Chemistry;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Charge;
import trestle.units.Temperature;
import trestle.units.Time;

/** How long it takes, how far that was checked, and how the pack rests afterwards. */
final class TimeChecks {
    private static final Basis CHECKED = Basis.source("the range in which this model was checked");

    private static final double LONG_BALANCE_S = 1800;
    private static final double LONG_REST_S = 7 * 24 * 3600;
    private static final double COLD_C = 15;

    /** Rates to which times were held against published computations, cold and warm, 1/h. */
    private static final double COLD_RATE_PER_H = 0.5;

    private static final double RATE_PER_H = 1;

    private final ChargeTask task;
    private final PackCharge charge;

    private TimeChecks(ChargeTask task, PackCharge charge) {
        this.task = task;
        this.charge = charge;
    }

    static void judge(ChargeTask task, PackCharge charge, Judge judge) {
        TimeChecks checks = new TimeChecks(task, charge);
        judge.check("charge-rate", "rate, inside the checked range", Subject.of(ChargePart.CURRENT), checks::rate);
        judge.check(
                "chemistry", "chemistry, inside the checked range", Subject.of(ChargePart.CHARGE), checks::chemistry);
        judge.check("charge-time", "time of the charge", Subject.of(ChargePart.CURRENT), checks::time);
        judge.check("balance-time", "time of the balancer", Subject.of(ChargePart.BALANCE_CURRENT), checks::balance);
        judge.check("storage", "charge that the pack rests at", Subject.of(ChargePart.STORAGE), checks::storage);
    }

    private void rate(Trial trial) {
        double startC = Temperature.cFromK(task.surroundings().startK());
        double ratePerH = charge.strings().stream()
                .mapToDouble(string -> string.startA()
                        * Time.sFromH(1)
                        / string.segments().stream()
                                .mapToDouble(segment -> task.pack()
                                                .segments()
                                                .get(segment.index())
                                                .cell()
                                                .capacityC()
                                        * task.pack()
                                                .segments()
                                                .get(segment.index())
                                                .parallelCount())
                                .min()
                                .orElseThrow())
                .max()
                .orElse(0);
        double limitPerH = startC < COLD_C ? COLD_RATE_PER_H : RATE_PER_H;
        trial.of(ratePerH, "1/h")
                .atMost(limitPerH, CHECKED)
                .attention(
                        "outside-validated-range",
                        "The charge begins at %.2fC, and at %.0f °C its times hold to %.1fC: beyond it charges that"
                                + " were computed with published sets were missed by up to a quarter, either way.",
                        ratePerH,
                        startC,
                        limitPerH);
    }

    private void chemistry(Trial trial) {
        boolean unchecked = task.pack().segments().stream()
                .anyMatch(segment -> segment.cell().dynamics() == Chemistry.LIPO);
        trial.noteIf(
                unchecked,
                "charge-unchecked",
                "No charge of a lithium polymer pouch was at hand: the model of its discharge is turned round.");
    }

    private void time(Trial trial) {
        boolean late = charge.strings().stream().anyMatch(string -> string.end() == ChargeEnd.TOO_LONG);
        trial.attentionIf(
                late,
                "charge-too-long",
                "The charge is not done after a day: set more current, or charge less at a time.");
    }

    private void balance(Trial trial) {
        trial.of(Time.hFromS(charge.balanceS()), "h")
                .atMost(Time.hFromS(LONG_BALANCE_S), Basis.COMMON_PRACTICE)
                .noteIf(
                        task.charger().balances() && charge.runs() && charge.balanceS() > LONG_BALANCE_S,
                        "balance-takes-long",
                        "Bringing cells together that differ by %.0f %% takes %s more at %.2g A: a charger that counts"
                                + " time may give up first.",
                        100
                                * charge.balanceS()
                                * task.charger().balanceCurrentA()
                                / task.pack().capacityC(),
                        Time.saidInMinutes(charge.balanceS()),
                        task.charger().balanceCurrentA());
    }

    private void storage(Trial trial) {
        if (task.storageS().isEmpty()) {
            trial.notJudged(Subject.of(ChargePart.STORAGE));
            return;
        }
        boolean flat = task.pack().segments().get(0).cell().dynamics() == Chemistry.LFP;
        trial.noteIf(
                task.target().kind() == ChargeTarget.Kind.FULL
                        && task.storageS().getAsDouble() > LONG_REST_S,
                "resting-full",
                "A pack that rests full for %.0f days ages faster: charge it to %.0f %%, %s.",
                task.storageS().getAsDouble() / 86400,
                100 * charge.rest().fraction(),
                flat
                        ? Judge.text(
                                "%.1f Ah from here, since the voltage of iron phosphate tells nothing",
                                Charge.ahFromC(charge.rest().chargeC()))
                        : Judge.text("%.2f V a cell at rest", charge.rest().cellV()));
    }
}
