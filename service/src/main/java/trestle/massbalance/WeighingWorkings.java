package trestle.massbalance;

import static trestle.massbalance.MassBalanceWorkings.mm;

import java.util.List;
import java.util.stream.Collectors;
import trestle.finding.Chain;
import trestle.units.Length;
import trestle.units.Mass;

/**
 * How a weighing gave mass and CG of what flies.
 *
 * @param chain where to write; it knows the list as {@code m_i} and {@code x_cg_i}, and gets {@code m} and {@code x_cg}
 * @param task what was asked
 * @param balance what came of it
 * @param weighed what the scales say
 */
record WeighingWorkings(Chain chain, BalanceTask task, Balance balance, Weighed weighed) {
    private static final String CHAPTER = "FAA-H-8083-1B, Aircraft Weight and Balance Handbook, chapter 3";
    private static final String TOLERANCE = "root sum of squares, first order; common practice";
    private static final String RULE = "what was weighed is what flies";

    void write() {
        String sum = supports().stream().map(WeighingWorkings::net).collect(Collectors.joining("+"));
        chain.step("m", "mass on the scales, tare off", Mass.gFromKg(weighed.massKg()), "g", sum, CHAPTER);
        chain.step(
                "dm_w",
                "scales less list",
                Mass.gFromKg(weighed.differenceFromItemsKg()),
                "g",
                "m-m_i",
                Chain.ARITHMETIC);
        String squares = supports().stream()
                .map(s -> Chain.number(Mass.gFromKg(s.readingToleranceKg())) + "^2")
                .collect(Collectors.joining("+"));
        double offG = Mass.gFromKg(weighed.massToleranceKg());
        chain.step("dm", "tolerance of the mass", offG, "g", "sqrt(" + squares + ")", TOLERANCE);
        arm();
        lateral();
        if (task.items().stream().anyMatch(item -> item.verticalM().isPresent())) {
            double heightMm = Length.mmFromM(balance.centre().verticalM());
            chain.step("z_cg", "CG, above the datum", heightMm, "mm", "z_cg_i", "scales do not tell it");
        }
    }

    private List<Support> supports() {
        return task.weighing().orElseThrow().supports();
    }

    private void arm() {
        double armMm = Length.mmFromM(balance.centre().armM());
        if (weighed.armM().isEmpty()) {
            chain.step("x_cg", "CG, aft of the datum", armMm, "mm", "x_cg_i", "scales at one arm do not tell it");
            return;
        }
        String moments =
                supports().stream().map(s -> net(s) + "*" + mm(s.armM())).collect(Collectors.joining("+"));
        chain.step("x_cg", "CG, aft of the datum, on the scales", armMm, "mm", "(" + moments + ")/m", CHAPTER);
        chain.step(
                "dx_w",
                "CG of the scales less that of the list",
                Length.mmFromM(weighed.differenceFromItemsM().orElseThrow()),
                "mm",
                "x_cg-x_cg_i",
                Chain.ARITHMETIC);
        String squares = supports().stream()
                .map(s -> "((" + mm(s.armM()) + "-x_cg)*" + Chain.number(Mass.gFromKg(s.readingToleranceKg()))
                        + "/m)^2+(" + net(s) + "*" + mm(s.placeToleranceM()) + "/m)^2")
                .collect(Collectors.joining("+"));
        double offMm = Length.mmFromM(weighed.armToleranceM());
        chain.step("dx", "tolerance of the CG", offMm, "mm", "sqrt(" + squares + ")", TOLERANCE);
    }

    private void lateral() {
        double atMm = Length.mmFromM(balance.centre().lateralM());
        if (weighed.lateralM().isPresent()) {
            String moments = supports().stream()
                    .map(s -> net(s) + "*" + mm(s.lateralM().orElseThrow()))
                    .collect(Collectors.joining("+"));
            chain.step(
                    "y_cg",
                    "CG, right of the plane of symmetry, on the scales",
                    atMm,
                    "mm",
                    "(" + moments + ")/m",
                    CHAPTER);
        } else if (task.items().stream().anyMatch(item -> item.lateralM().isPresent())) {
            chain.step(
                    "y_cg",
                    "CG, right of the plane of symmetry",
                    atMm,
                    "mm",
                    "y_cg_i",
                    RULE + "; two scales do not tell it");
        }
    }

    private static String net(Support support) {
        return Chain.number(Mass.gFromKg(support.netKg()));
    }
}
