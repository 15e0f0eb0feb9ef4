package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
        workings.list();
        workings.tolerances();
        balance.weighed().ifPresent(w -> new WeighingWorkings(workings.chain, task, balance, w).write());
        balance.planform().ifPresent(wing -> new WingWorkings(workings.chain, task, balance, wing).write());
        balance.inertia().ifPresent(workings::inertia);
        workings.corrections();
        return workings.chain.lines();
    }

    /** Symbols of the list end in {@code _i} where the scales tell what flies. */
    private String ofList(String symbol) {
        return balance.weighed().isEmpty() ? symbol : symbol + "_i";
    }

    private void list() {
        chain.sum(ofList("m"), "mass of all items", "g", terms(this::mass, Item::totalMassKg), BALANCE);
        along(
                "x",
                "M_x",
                "x_cg",
                "CG, aft of the datum",
                Item::armM,
                balance.list().armM());
        if (task.items().stream().anyMatch(item -> item.lateralM().isPresent())) {
            ToDoubleFunction<Item> lateralM = item -> item.pointMass().lateralM();
            along(
                    "y",
                    "M_y",
                    "y_cg",
                    "CG, right of the plane of symmetry",
                    lateralM,
                    balance.list().lateralM());
        }
        if (task.items().stream().anyMatch(item -> item.verticalM().isPresent())) {
            ToDoubleFunction<Item> verticalM = item -> item.pointMass().verticalM();
            along(
                    "z",
                    "M_z",
                    "z_cg",
                    "CG, above the datum",
                    verticalM,
                    balance.list().verticalM());
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
        String meaning = place + (balance.weighed().isEmpty() ? "" : ", by the list");
        chain.step(ofList(symbol), meaning, Length.mmFromM(cgM), "mm", moment + "/" + ofList("m"), BALANCE);
    }

    private void tolerances() {
        List<Term> ofMass = new ArrayList<>();
        List<Term> ofArm = new ArrayList<>();
        double massG = Mass.gFromKg(balance.list().massKg());
        double cgMm = Length.mmFromM(balance.list().armM());
        for (Item item : task.items()) {
            double offG = item.quantityCount() * Mass.gFromKg(item.massToleranceKg());
            double offMm = Length.mmFromM(item.armToleranceM());
            if (offG > 0) {
                ofMass.add(new Term(Chain.number(offG) + "^2", offG * offG));
                String lever = "((" + mm(item.armM()) + "-" + ofList("x_cg") + ")*" + Chain.number(offG) + "/"
                        + ofList("m") + ")^2";
                ofArm.add(new Term(lever, square((Length.mmFromM(item.armM()) - cgMm) * offG / massG)));
            }
            if (offMm > 0) {
                String term = "(" + mass(item) + "*" + Chain.number(offMm) + "/" + ofList("m") + ")^2";
                ofArm.add(new Term(term, square(gFromKg(item) * offMm / massG)));
            }
        }
        if (!ofMass.isEmpty()) {
            double valueG = Mass.gFromKg(balance.list().massToleranceKg());
            chain.sum("V_m", "variance of the mass", "g²", ofMass, TOLERANCE);
            chain.step(ofList("dm"), "tolerance of the mass", valueG, "g", "sqrt(V_m)", TOLERANCE);
        }
        if (!ofArm.isEmpty()) {
            double valueMm = Length.mmFromM(balance.list().armToleranceM());
            chain.sum("V_x", "variance of the CG", "mm²", ofArm, TOLERANCE);
            chain.step(ofList("dx"), "tolerance of the CG", valueMm, "mm", "sqrt(V_x)", TOLERANCE);
        }
    }

    private void inertia(Inertia inertia) {
        String how =
                "own inertia, in strips or by its closed form, and mass times squared distance from the list's CG, over all"
                        + " items";
        String source = "parallel axes; mass of a strip by its chord, common practice";
        chain.found("I_xx", "moment of inertia in roll", inertia.rollKgM2(), "kg m²", how, source);
        chain.found("I_yy", "moment of inertia in pitch", inertia.pitchKgM2(), "kg m²", how, source);
        chain.found("I_zz", "moment of inertia in yaw", inertia.yawKgM2(), "kg m²", how, source);
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
