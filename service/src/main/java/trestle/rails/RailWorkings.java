package trestle.rails;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trestle.finding.Chain;
import trestle.finding.Chain.Term;
import trestle.finding.Working;
import trestle.units.Share;
import trestle.units.Temperature;

/** How a budget of rails was reached, rail by rail. */
public final class RailWorkings {
    private static final String REGULATOR =
            "P. Horowitz, W. Hill, The Art of Electronics, 3rd edition, chapter 9 (from memory)";
    private static final String PEAK = "simultaneous peaks, or one more alone; common practice";

    private final RailTask task;
    private final Chain chain = new Chain();

    private RailWorkings(RailTask task) {
        this.task = task;
    }

    /**
     * The workings of a budget.
     *
     * @param task what was asked
     * @param budget what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(RailTask task, RailBudget budget) {
        RailWorkings workings = new RailWorkings(task);
        Chain chain = workings.chain;
        chain.given("V_hi", "full pack at rest", task.supply().fullVoltageV(), "V");
        chain.given("V_lo", "pack under load, lowest", task.supply().lowestVoltageV(), "V");
        for (int i = 0; i < task.rails().size(); i++) {
            workings.rail(task.rails().get(i), budget.rails().get(i), i + 1);
        }
        if (!task.rails().isEmpty()) {
            String mean = workings.all("P_");
            String peak = workings.all("Q_");
            chain.step("P", "systems power", budget.systemsPowerW(), "W", mean, Chain.ARITHMETIC);
            chain.step("Q", "peak power", budget.peakPowerW(), "W", peak, Chain.ARITHMETIC);
        }
        return chain.lines();
    }

    private String all(String symbol) {
        return IntStream.rangeClosed(1, task.rails().size())
                .mapToObj(n -> symbol + n)
                .collect(Collectors.joining("+"));
    }

    private void rail(Rail rail, RailLoad load, int n) {
        String of = " of rail " + n + ", " + rail.name();
        Regulator regulator = rail.regulator();
        currents(rail, load, n, of);
        chain.step(
                "p_" + n,
                "mean load" + of,
                Share.percentFromFraction(load.loadFraction()),
                "%",
                "100*I_" + n + "/" + Chain.number(regulator.maxCurrentA()),
                Chain.ARITHMETIC);
        chain.step(
                "pp_" + n,
                "peak load" + of,
                Share.percentFromFraction(load.peakLoadFraction()),
                "%",
                "100*K_" + n + "/" + Chain.number(regulator.peakRatingA()),
                Chain.ARITHMETIC);
        chain.given("V_" + n, "output voltage" + of, regulator.outputVoltageV(), "V");
        String drawn = drawn(regulator.conversion(), "V_hi", n);
        chain.step(
                "P_" + n,
                "mean power from the full pack" + of,
                load.inputPowerW(),
                "W",
                drawn.replace("CURRENT", "I_" + n),
                REGULATOR);
        chain.step(
                "Q_" + n,
                "peak power from the full pack" + of,
                load.peakInputPowerW(),
                "W",
                drawn.replace("CURRENT", "K_" + n),
                REGULATOR);
        String heat = "max(0,P_%1$d-V_%1$d*I_%1$d)".formatted(n);
        chain.step("H_" + n, "heat in the regulator" + of, load.heatW(), "W", heat, REGULATOR);
        String low = "(" + drawn(regulator.conversion(), "V_lo", n) + ")/V_lo";
        chain.step(
                "J_" + n,
                "mean current from the pack at its lowest" + of,
                load.inputCurrentA(),
                "A",
                low.replace("CURRENT", "I_" + n),
                REGULATOR);
        chain.step(
                "L_" + n,
                "peak current from the pack at its lowest" + of,
                load.peakInputCurrentA(),
                "A",
                low.replace("CURRENT", "K_" + n),
                REGULATOR);
        regulator.cooling().ifPresent(cooling -> temperature(cooling, load, n, of));
    }

    private void currents(Rail rail, RailLoad load, int n, String of) {
        if (rail.loads().isEmpty()) {
            chain.given("I_" + n, "mean current" + of + ", which has no load", 0, "A");
            chain.given("K_" + n, "peak current" + of + ", which has no load", 0, "A");
            return;
        }
        sum("I_" + n, "mean current" + of, rail, Load::meanA, RailWorkings::mean);
        sum("W_" + n, "current while all work" + of, rail, Load::workingA, RailWorkings::working);
        sum(
                "R_" + n,
                "rise by the peaks that fall together" + of,
                rail,
                RailWorkings::together,
                l -> l.simultaneous() ? rise(l) : "0");
        String alone = rail.loads().stream()
                .filter(l -> !l.simultaneous())
                .max(Comparator.comparingDouble(RailWorkings::riseA))
                .map(RailWorkings::rise)
                .orElse("0");
        String peak = "W_%1$d+max(R_%1$d,%2$s)".formatted(n, alone);
        chain.step("K_" + n, "peak current" + of, load.peakA(), "A", peak, PEAK);
    }

    private void sum(
            String symbol, String meaning, Rail rail, ToDoubleFunction<Load> value, Function<Load, String> formula) {
        List<Term> terms = rail.loads().stream()
                .map(l -> new Term(formula.apply(l), value.applyAsDouble(l)))
                .toList();
        chain.sum(symbol, meaning, "A", terms, Chain.ARITHMETIC);
    }

    private static String working(Load load) {
        return load.quantityCount() + "*" + Chain.number(load.typicalA());
    }

    private static String mean(Load load) {
        return working(load) + "*" + Chain.number(load.dutyFraction());
    }

    private static double riseA(Load load) {
        return load.allPeakA() - load.workingA();
    }

    private static double together(Load load) {
        return load.simultaneous() ? riseA(load) : 0;
    }

    private static String rise(Load load) {
        return load.quantityCount()
                + "*("
                + Chain.number(load.peakA().orElse(load.typicalA()))
                + "-"
                + Chain.number(load.typicalA())
                + ")";
    }

    private static String drawn(Conversion conversion, String input, int n) {
        return conversion instanceof Conversion.Switching switching
                ? "V_" + n + "*CURRENT/" + Chain.number(switching.efficiencyRatio())
                : input + "*CURRENT";
    }

    private void temperature(Cooling cooling, RailLoad load, int n, String of) {
        String formula = Chain.number(Temperature.cFromK(cooling.ambientTemperatureK()))
                + "+H_"
                + n
                + "*"
                + Chain.number(cooling.thermalResistanceKPerW());
        double hottestC = Temperature.cFromK(load.temperatureK().orElseThrow());
        chain.step("T_" + n, "hottest part" + of, hottestC, "°C", formula, REGULATOR);
    }
}
