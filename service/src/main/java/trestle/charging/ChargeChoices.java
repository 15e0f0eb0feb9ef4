package trestle.charging;

import trestle.battery.PackPart;
import trestle.battery.Segment;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Charge;

/** Says what was taken where the request says nothing. */
final class ChargeChoices {
    private ChargeChoices() {}

    static void assume(ChargeTask task, PackCharge charge, Judge judge) {
        judge.assume(
                Subject.of(ChargePart.CHARGE),
                "80 % to within 2 %, full up to a tenth later than told",
                "nickel and iron phosphate cells at 20 to 40 °C and up to 1C, against charges that were computed with"
                        + " published parameter sets; none measured was at hand, and in the cold both are missed by more");
        for (int k = 0; k < task.pack().segments().size(); k++) {
            Segment segment = task.pack().segments().get(k);
            if (segment.cell().limits().maxChargeCurrentA().isEmpty()) {
                judge.assume(
                        Subject.of(PackPart.MAX_CHARGE_CURRENT, k),
                        Judge.text(
                                "%.3g A a cell",
                                Charge.ahFromC(segment.cell().capacityC())
                                        * segment.cell().dynamics().chargeRatePerH()),
                        "usual charging rate of the chemistry, from memory");
            }
        }
        if (task.coldRatingK().isEmpty()) {
            judge.assume(
                    Subject.of(ChargePart.COLD_RATING),
                    "the rating holds from 25 °C on, and falls as exp(-3200 (1/T - 1/298.15)) below it",
                    "the largest rate without plating of two published sets of one nickel cell; a maker's own figure for"
                            + " the cold goes before it");
        }
    }
}
