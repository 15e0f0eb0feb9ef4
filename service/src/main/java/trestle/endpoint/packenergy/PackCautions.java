package trestle.endpoint.packenergy;

import java.util.ArrayList;
import java.util.List;
import trestle.battery.PackTask;
import trestle.finding.Judge;
import trestle.units.Temperature;

/** Safety sentences that apply to a pack as it was described. */
final class PackCautions {
    /** Above this direct voltage a touch is dangerous, V; common practice, no source. */
    private static final double SHOCK_V = 60;

    /** Cells that start as cold as this are likely to be charged below freezing, °C. */
    private static final double CHARGED_COLD_C = 5;

    private PackCautions() {}

    static List<String> of(PackTask task) {
        List<String> cautions = new ArrayList<>(List.of(
                "Lithium cells burn when shorted, crushed, overcharged or discharged too far: follow the maker's data, charge"
                        + " attended on a fireproof surface, and never use a cell that is damaged, swollen, or has been"
                        + " discharged below its minimum voltage.",
                "Joining cells into a pack is skilled work: matched cells only, no heat into the cells, a fuse, and nothing"
                        + " that can short them; store the pack half charged, cool and away from what burns.",
                "Carriage of lithium packs is governed by transport rules that depend on their energy."));
        if (task.pack().segments().size() > 1) {
            cautions.add(
                    "Before packs are joined in series, check polarity and equal charge; charge and watch each by itself,"
                            + " for a weak one is driven below its limit by the others.");
        }
        double fullV = task.pack().fullVoltageV();
        if (fullV > SHOCK_V) {
            cautions.add(Judge.text(
                    "The full pack has %.0f V: above %.0f V a touch can be fatal (common practice); insulate every"
                            + " contact and plug it in with one hand.",
                    fullV, SHOCK_V));
        }
        double startC = Temperature.cFromK(task.surroundings().startK());
        if (startC < CHARGED_COLD_C) {
            cautions.add(Judge.text(
                    "Do not charge these cells as cold as they start, %.0f °C: below 0 °C charging damages lithium cells, and"
                            + " near it they take little (common practice); warm them first.",
                    startC));
        }
        return List.copyOf(cautions);
    }
}
