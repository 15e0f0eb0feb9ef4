package trestle.charging;

import trestle.finding.Judge;

/** What is to be said of a charge. */
final class ChargeChecks {
    private ChargeChecks() {}

    static void judge(ChargeTask task, PackCharge charge, Judge judge) {
        ChargedCellChecks.judge(task, charge, judge);
        ChargerChecks.judge(task, charge, judge);
        TimeChecks.judge(task, charge, judge);
        ChargeChoices.assume(task, charge, judge);
    }
}
