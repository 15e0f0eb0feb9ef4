package trestle.wiring;

import static trestle.finding.Digits.significant;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Capacitance;

/** The checks of the moment in which a motor controller is plugged in. */
final class PlugChecks {
    /** A spark of more pits the contacts, J; so does any above this voltage. Common practice, no source. */
    private static final double SPARK_J = 0.3;

    private static final double SPARK_V = 22;

    private final Plugging plugging;

    private PlugChecks(Plugging plugging) {
        this.plugging = plugging;
    }

    static void judge(WireTask task, Judge judge) {
        Subject capacitance = Subject.of(WiringPart.CAPACITANCE);
        if (task.plug().capacitanceF().isPresent()) {
            PlugChecks checks = new PlugChecks(Plugging.of(task));
            judge.check("plug-spark", "spark at the plug", capacitance, checks::spark);
            if (task.plug().precharge().isPresent()) {
                judge.check(
                        "precharge-pulse",
                        "pulse in the precharge resistor",
                        Subject.of(WiringPart.PRECHARGE_RATING),
                        checks::pulse);
            }
            if (task.plug().fullVoltageV().isEmpty()) {
                judge.assume(
                        Subject.of(WiringPart.FULL_VOLTAGE),
                        significant(task.run().supplyVoltageV(), 4) + " V at the plug",
                        "the supply voltage, for want of that of a full pack, which is up to a quarter higher");
            }
        } else if (task.run().feedsController()) {
            judge.check("plug-spark", "spark at the plug", capacitance, trial -> trial.notJudged(capacitance));
        }
    }

    private void spark(Trial trial) {
        if (plugging.precharged()) {
            trial.of(plugging.leftEnergyJ(), "J").atMost(SPARK_J, Basis.COMMON_PRACTICE);
            return;
        }
        String sentence =
                "Plugging in %s V charges %s µF with %s J in a spark: touch through %s Ω for %s s first, by a plug"
                        + " with such a resistor (common practice: above 0.3 J or 22 V).";
        Object[] values = {
            significant(plugging.voltageV(), 4),
            significant(Capacitance.ufFromF(plugging.capacitanceF()), 4),
            significant(plugging.energyJ(), 3),
            significant(plugging.resistanceOhm(), 3),
            significant(plugging.waitS(), 2)
        };
        trial.of(plugging.energyJ(), "J")
                .atMost(SPARK_J, Basis.COMMON_PRACTICE)
                .attention("plug-sparks", sentence, values);
        if (plugging.energyJ() <= SPARK_J && plugging.voltageV() > SPARK_V) {
            trial.of(plugging.voltageV(), "V")
                    .atMost(SPARK_V, Basis.COMMON_PRACTICE)
                    .attention("plug-sparks", sentence, values);
        }
    }

    private void pulse(Trial trial) {
        if (plugging.energyRatingJ().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.PRECHARGE_RATING));
            return;
        }
        double ratedJ = plugging.energyRatingJ().getAsDouble();
        trial.of(plugging.energyJ(), "J")
                .atMost(ratedJ, Basis.REQUEST)
                .attention(
                        "precharge-resistor-weak",
                        "The precharge resistor takes %s J each time, %s W at first, and stands %s J: take one that stands"
                                + " the pulse, wirewound or two in parallel.",
                        significant(plugging.energyJ(), 3),
                        significant(plugging.peakPowerW(), 3),
                        significant(ratedJ, 3));
    }
}
