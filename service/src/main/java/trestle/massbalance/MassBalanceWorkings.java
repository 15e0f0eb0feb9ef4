package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import trestle.finding.Chain;
import trestle.finding.Chain.Term;
import trestle.finding.Working;
import trestle.units.Length;
import trestle.units.Mass;

/** How a balance was reached, in the request's grams and millimetres. */
public final class MassBalanceWorkings {
    private static final String BALANCE = "FAA-H-8083-1B, Aircraft Weight and Balance Handbook, chapter 2";
    private static final String TOLERANCE = "root sum of squares, first order; common practice";
    private static final String SHIFT = "FAA-H-8083-1B, Aircraft Weight and Balance Handbook, chapters 2 and 7";

    private final BalanceTask task;
    private final Balance balance;
    private final Chain chain = new Chain();

    private MassBalanceWorkings(BalanceTask task, Balance balance) {
        this.task = task;
        this.balance = balance;
    }

    /**
     * The workings of a balance.
     *
     * @param task what was asked
     * @param balance what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(BalanceTask task, Balance balance) {
        MassBalanceWorkings workings = new MassBalanceWorkings(task, balance);
        workings.centre();
        workings.tolerances();
        balance.planform().ifPresent(wing -> new WingWorkings(workings.chain, task, balance, wing).write());
        workings.weighed();
        workings.corrections();
        return workings.chain.lines();
    }

    private void centre() {
        chain.sum("m", "mass of all items", "g", terms(this::mass, Item::totalMassKg), BALANCE);
        along("x", "M_x", "x_cg", "arm", Item::armM, balance.centre().armM());
        if (task.items().stream().anyMatch(item -> item.lateralM().isPresent())) {
            ToDoubleFunction<Item> lateralM = item -> item.pointMass().lateralM();
            along(
                    "y",
                    "M_y",
                    "y_cg",
                    "lateral place",
                    lateralM,
                    balance.centre().lateralM());
        }
        if (task.items().stream().anyMatch(item -> item.verticalM().isPresent())) {
            ToDoubleFunction<Item> verticalM = item -> item.pointMass().verticalM();
            along(
                    "z",
                    "M_z",
                    "z_cg",
                    "vertical place",
                    verticalM,
                    balance.centre().verticalM());
        }
    }

    private void along(
            String axis, String moment, String symbol, String place, ToDoubleFunction<Item> placeM, double cgM) {
        List<Term> terms = task.items().stream()
                .map(item -> new Term(
                        mass(item) + "*" + mm(placeM.applyAsDouble(item)),
                        gFromKg(item) * Length.mmFromM(placeM.applyAsDouble(item))))
                .toList();
        chain.sum(moment, "moment of all items along " + axis, "g mm", terms, BALANCE);
        chain.step(symbol, place + " of the CG", Length.mmFromM(cgM), "mm", moment + "/m", BALANCE);
    }

    private void tolerances() {
        List<Term> ofMass = new ArrayList<>();
        List<Term> ofArm = new ArrayList<>();
        double massG = Mass.gFromKg(balance.centre().massKg());
        double cgMm = Length.mmFromM(balance.centre().armM());
        for (Item item : task.items()) {
            double offG = item.quantityCount() * Mass.gFromKg(item.massToleranceKg());
            double offMm = Length.mmFromM(item.armToleranceM());
            if (offG > 0) {
                ofMass.add(new Term(Chain.number(offG) + "^2", offG * offG));
                String lever = "((" + mm(item.armM()) + "-x_cg)*" + Chain.number(offG) + "/m)^2";
                ofArm.add(new Term(lever, square((Length.mmFromM(item.armM()) - cgMm) * offG / massG)));
            }
            if (offMm > 0) {
                String term = "(" + mass(item) + "*" + Chain.number(offMm) + "/m)^2";
                ofArm.add(new Term(term, square(gFromKg(item) * offMm / massG)));
            }
        }
        if (!ofMass.isEmpty()) {
            double valueG = Mass.gFromKg(balance.centre().massToleranceKg());
            chain.sum("V_m", "variance of the mass", "g²", ofMass, TOLERANCE);
            chain.step("dm", "tolerance of the mass", valueG, "g", "sqrt(V_m)", TOLERANCE);
        }
        if (!ofArm.isEmpty()) {
            double valueMm = Length.mmFromM(balance.centre().armToleranceM());
            chain.sum("V_x", "variance of the arm of the CG", "mm²", ofArm, TOLERANCE);
            chain.step("dx", "tolerance of the arm", valueMm, "mm", "sqrt(V_x)", TOLERANCE);
        }
    }

    private void weighed() {
        if (balance.weighed().isEmpty()) {
            return;
        }
        Weighed weighed = balance.weighed().get();
        List<Support> supports = task.weighing().orElseThrow().supports();
        String chapter = "FAA-H-8083-1B, Aircraft Weight and Balance Handbook, chapter 3";
        String sum = supports.stream()
                .map(s -> Chain.number(Mass.gFromKg(s.netKg())))
                .collect(Collectors.joining("+"));
        double massG = Mass.gFromKg(weighed.massKg());
        chain.step("m_w", "mass on the scales, tare off", massG, "g", sum, chapter);
        chain.step(
                "dm_w",
                "scales less list",
                Mass.gFromKg(weighed.differenceFromItemsKg()),
                "g",
                "m_w-m",
                Chain.ARITHMETIC);
        if (weighed.armM().isPresent()) {
            String moments = supports.stream()
                    .map(s -> Chain.number(Mass.gFromKg(s.netKg())) + "*" + mm(s.armM()))
                    .collect(Collectors.joining("+"));
            double armMm = Length.mmFromM(weighed.armM().getAsDouble());
            chain.step("x_w", "arm on the scales", armMm, "mm", "(" + moments + ")/m_w", chapter);
            chain.step(
                    "dx_w",
                    "CG of the scales less that of the list",
                    Length.mmFromM(weighed.differenceFromItemsM().orElseThrow()),
                    "mm",
                    "x_w-x_cg",
                    Chain.ARITHMETIC);
        }
    }

    private void corrections() {
        if (balance.aim().isEmpty()) {
            return;
        }
        Aim aim = balance.aim().get();
        chain.given("x_t", "target of the CG", Length.mmFromM(aim.targetArmM()), "mm");
        for (Move move : aim.alone()) {
            String mass = mass(task.items().get(move.itemIndex()));
            String symbol = "d_" + (move.itemIndex() + 1);
            double byMm = Length.mmFromM(move.byM());
            String meaning = "move of item " + (move.itemIndex() + 1) + " alone to the target";
            chain.step(symbol, meaning, byMm, "mm", "m*(x_t-x_cg)/(" + mass + ")", SHIFT);
        }
        aim.together().ifPresent(this::together);
        for (int i = 0; i < aim.ballast().size(); i++) {
            Ballast ballast = aim.ballast().get(i);
            String at = mm(ballast.armM());
            chain.step(
                    "m_b" + (i + 1),
                    "ballast at " + at + " mm instead",
                    Mass.gFromKg(ballast.massKg()),
                    "g",
                    "m*(x_t-x_cg)/(" + at + "-x_t)",
                    SHIFT);
        }
    }

    /** Each move is in the answer; here is what they come to. */
    private void together(JointMove joint) {
        List<Term> moments = joint.moves().stream()
                .map(move -> {
                    Item item = task.items().get(move.itemIndex());
                    return new Term(mass(item) + "*" + mm(move.byM()), gFromKg(item) * Length.mmFromM(move.byM()));
                })
                .toList();
        chain.sum("dM", "moment of all moves together", "g mm", moments, SHIFT);
        double toMm = Length.mmFromM(joint.cgArmM());
        chain.step("x_j", "CG after all moves together", toMm, "mm", "x_cg+dM/m", SHIFT);
    }

    private List<Term> terms(Function<Item, String> formula, ToDoubleFunction<Item> valueKg) {
        return task.items().stream()
                .map(i -> new Term(formula.apply(i), Mass.gFromKg(valueKg.applyAsDouble(i))))
                .toList();
    }

    private String mass(Item item) {
        String one = Chain.number(Mass.gFromKg(item.massKg()));
        return item.quantityCount() == 1 ? one : item.quantityCount() + "*" + one;
    }

    private static double gFromKg(Item item) {
        return Mass.gFromKg(item.totalMassKg());
    }

    static String mm(double lengthM) {
        return Chain.number(Length.mmFromM(lengthM));
    }

    private static double square(double value) {
        return value * value;
    }
}
