package trestle.massbalance;

import static trestle.massbalance.MassBalanceWorkings.mm;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trestle.finding.Chain;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/**
 * How mean chord, neutral point and static margin were reached.
 *
 * @param chain where to write; it knows {@code m} and {@code x_cg}
 * @param task what was asked
 * @param balance what came of it
 * @param planform the wing
 */
record WingWorkings(Chain chain, BalanceTask task, Balance balance, Planform planform) {
    private static final String CHORD = "D. Raymer, Aircraft Design: A Conceptual Approach (from memory)";
    private static final String ETKIN = "B. Etkin, L. Reid, Dynamics of Flight, chapter 2 (from memory)";
    private static final String BODY = "R. Gilruth, M. White, NACA Report 711, 1941, as tabled since (from memory)";
    private static final String V_TAIL = "P. Purser, J. Campbell, NACA Report 823, 1945 (summary)";
    private static final String LATTICE =
            "B. Etkin, L. Reid, Dynamics of Flight, chapter 2 (from memory); height fitted to our own vortex lattice";
    private static final String JUDGEMENT =
            "root sum of squares of what each input may be off by; judgement, no source";
    private static final String SLOPE =
            "USAF Stability and Control DATCOM, section 4.1.3.2, incompressible (from memory)";

    void write() {
        List<Panel> panels = task.wing().orElseThrow().panels();
        panels();
        int count = panels.size();
        chain.step(
                "S",
                "wing area",
                Area.dm2FromM2(planform.areaM2()),
                "dm²",
                "2*(" + sum(count, "S_%d") + ")/10000",
                CHORD);
        double spanMm = Length.mmFromM(planform.spanM());
        chain.step("b", "wing span", spanMm, "mm", "2*(" + sum(count, "b_%d") + ")", CHORD);
        chain.step("A", "aspect ratio", planform.aspectRatio(), "1", "b^2/(S*10000)", CHORD);
        mean("c", "mean aerodynamic chord", Length.mmFromM(planform.meanAerodynamicChordM()), "mm");
        double edgeMm = Length.mmFromM(planform.macLeadingEdgeArmM());
        mean("x", "leading edge of the mean aerodynamic chord", edgeMm, "mm");
        mean("t", "tangent of the half-chord sweep", planform.halfChordSweepTangent(), "1");
        chain.step(
                "p_cg",
                "CG in percent of the mean aerodynamic chord",
                Share.percentFromFraction(balance.cgMacFraction().orElseThrow()),
                "%",
                "100*(x_cg-x)/c",
                Chain.ARITHMETIC);
        chain.step(
                "w",
                "wing loading",
                balance.wingLoadingKgPerM2().orElseThrow() * Mass.gFromKg(1) / Area.dm2FromM2(1),
                "g/dm²",
                "m/S",
                Chain.ARITHMETIC);
        balance.neutralPoint().ifPresent(this::neutralPoint);
    }

    private void panels() {
        Wing wing = task.wing().orElseThrow();
        String edge = mm(wing.rootLeadingEdgeArmM());
        double edgeM = wing.rootLeadingEdgeArmM();
        for (int i = 0; i < wing.panels().size(); i++) {
            panel(wing.panels().get(i), i + 1, edge, edgeM);
            edge += "+" + mm(wing.panels().get(i).sweepM());
            edgeM += wing.panels().get(i).sweepM();
        }
    }

    private void panel(Panel panel, int n, String edge, double edgeM) {
        String of = " of panel " + n;
        String root = mm(panel.rootChordM());
        String tip = mm(panel.tipChordM());
        double spanMm = Length.mmFromM(panel.projectedSpanM());
        double rootMm = Length.mmFromM(panel.rootChordM());
        double tipMm = Length.mmFromM(panel.tipChordM());
        double station = MeanChord.spanFraction(panel.rootChordM(), panel.tipChordM());
        String slope = panel.dihedralRad() == 0
                ? ""
                : "*cos(" + Chain.number(Math.toDegrees(panel.dihedralRad())) + "*pi/180)";
        chain.step("b_" + n, "span seen from above" + of, spanMm, "mm", mm(panel.spanM()) + slope, CHORD);
        chain.step(
                "S_" + n,
                "area" + of,
                spanMm * (rootMm + tipMm) / 2,
                "mm²",
                "b_" + n + "*(" + root + "+" + tip + ")/2",
                CHORD);
        chain.step(
                "c_" + n,
                "mean aerodynamic chord" + of,
                Length.mmFromM(MeanChord.lengthM(panel.rootChordM(), panel.tipChordM())),
                "mm",
                "2/3*(%1$s^2+%1$s*%2$s+%2$s^2)/(%1$s+%2$s)".formatted(root, tip),
                CHORD);
        chain.step(
                "x_" + n,
                "leading edge at its mean aerodynamic chord" + of,
                Length.mmFromM(edgeM + station * panel.sweepM()),
                "mm",
                "%3$s+(%1$s+2*%2$s)/(3*(%1$s+%2$s))*%4$s".formatted(root, tip, edge, mm(panel.sweepM())),
                CHORD);
        chain.step(
                "t_" + n,
                "tangent of the half-chord sweep" + of,
                (Length.mmFromM(panel.sweepM()) + (tipMm - rootMm) / 2) / spanMm,
                "1",
                "(%3$s+(%2$s-%1$s)/2)/b_%4$d".formatted(root, tip, mm(panel.sweepM()), n),
                CHORD);
    }

    /** The area-weighted mean over the panels. */
    private void mean(String symbol, String meaning, double value, String unit) {
        int count = task.wing().orElseThrow().panels().size();
        String formula = "(" + sum(count, "S_%1$d*" + symbol + "_%1$d") + ")/(" + sum(count, "S_%d") + ")";
        chain.step(symbol, meaning, value, unit, formula, CHORD);
    }

    private static String sum(int count, String term) {
        return IntStream.rangeClosed(1, count).mapToObj(term::formatted).collect(Collectors.joining("+"));
    }

    private void neutralPoint(NeutralPoint point) {
        TailArrangement tail = task.tail().orElseThrow();
        slope("a_w", "lift slope of the wing", point.wingLiftSlopePerRad(), "A", "t^2");
        chain.given("f", "shift added, over the mean aerodynamic chord", tail.fuselageShiftFraction(), "1");
        task.fuselage().ifPresent(fuselage -> fuselage(fuselage, point));
        String less = task.fuselage().isPresent() ? "-dx_f" : "";
        double armMm = Length.mmFromM(point.armM());
        if (tail instanceof Tail behind) {
            tail(behind, point);
            String formula = less.isEmpty() ? "x+0.25*c+K*l_t/(1+K)+c*f" : "x+0.25*c+(K*l_t-dx_f)/(1+K)+c*f";
            chain.step("x_np", "neutral point", armMm, "mm", formula, ETKIN);
            tolerance(point, less.isEmpty() ? "l_t" : "(l_t+dx_f)");
        } else {
            chain.step("x_np", "neutral point", armMm, "mm", "x+0.25*c+c*f" + less, ETKIN);
            double offMm = Length.mmFromM(point.toleranceM());
            String body = Chain.number(NeutralPoint.BODY_TOLERANCE_FRACTION) + "*c";
            chain.step("dx_np", "tolerance of the neutral point", offMm, "mm", body, JUDGEMENT);
        }
        chain.step(
                "SM",
                "static margin",
                Share.percentFromFraction(balance.staticMarginFraction().orElseThrow()),
                "%",
                "100*(x_np-x_cg)/c",
                ETKIN);
    }

    private void fuselage(Fuselage fuselage, NeutralPoint point) {
        chain.given("L_f", "length of the fuselage", Length.mmFromM(fuselage.lengthM()), "mm");
        chain.given("w_f", "width of the fuselage", Length.mmFromM(fuselage.widthM()), "mm");
        double quarterM = task.wing().orElseThrow().rootQuarterChordArmM();
        double place = fuselage.place(quarterM);
        String from = "(" + mm(quarterM) + "-" + mm(fuselage.noseArmM()) + ")/L_f";
        chain.step("p_f", "quarter root chord along the fuselage", place, "1", from, Chain.ARITHMETIC);
        chain.found(
                "K_f",
                "moment factor of the fuselage",
                Fuselage.momentFactor(place),
                "1",
                "between the points of the table at p_f",
                BODY);
        chain.step(
                "dx_f",
                "how far the fuselage takes the wing's neutral point forward",
                Length.mmFromM(point.fuselageM()),
                "mm",
                "K_f*w_f^2*L_f/(S*10000*a_w)",
                BODY);
    }

    private void tail(Tail tail, NeutralPoint point) {
        chain.given("S_t", "tail area", Area.dm2FromM2(tail.areaM2()), "dm²");
        chain.given("b_t", "tail span", Length.mmFromM(tail.spanM()), "mm");
        chain.given("x_t4", "tail quarter chord", Length.mmFromM(tail.quarterChordArmM()), "mm");
        chain.given("eta_t", "tail efficiency", tail.efficiencyRatio(), "1");
        String area = "S_t";
        if (tail.dihedralRad().isPresent()) {
            area = "S_p";
            double dihedralDeg = Math.toDegrees(tail.dihedralRad().getAsDouble());
            String formula = "S_t*cos(" + Chain.number(dihedralDeg) + "*pi/180)^2";
            chain.step(
                    area, "tail area that acts in pitch", Area.dm2FromM2(tail.areaInPitchM2()), "dm²", formula, V_TAIL);
        }
        double leverMm = Length.mmFromM(tail.quarterChordArmM() - planform.quarterMacArmM());
        chain.step("l_t", "lever of the tail", leverMm, "mm", "x_t4-(x+0.25*c)", CHORD);
        String volume = area + "*l_t/(S*c)";
        chain.step("V_t", "tail volume coefficient", point.tailVolumeRatio(), "1", volume, CHORD);
        double aspect = tail.aspectRatio();
        chain.step("A_t", "aspect ratio of the tail", aspect, "1", "b_t^2/(S_t*10000)", CHORD);
        slope("a_t", "lift slope of the tail", point.tailLiftSlopePerRad(), "A_t", "0");
        downwash(tail, point);
        String ratio = "eta_t*" + area + "/S*a_t/a_w*(1-de)";
        chain.step("K", "lift slope of the tail over that of the wing", point.tailLiftRatio(), "1", ratio, ETKIN);
    }

    private void downwash(Tail tail, NeutralPoint point) {
        double heightM = task.wing().orElseThrow().heightOfM(tail);
        String meaning = "downwash gradient at the tail";
        if (heightM == 0) {
            chain.step("de", meaning, point.downwashGradient(), "1", "2*a_w/(pi*A)", ETKIN);
            return;
        }
        chain.given("h_t", "height of the tail over the wing's root", Length.mmFromM(heightM), "mm");
        String near = heightM > 0 ? "(1-h_t/b)" : "(1+h_t/b)";
        if (Math.abs(heightM) >= planform.spanM()) {
            near = "0";
        }
        String formula = "2*a_w/(pi*A)*" + near + "^" + Chain.number(LiftSlope.HEIGHT_EXPONENT);
        chain.step("de", meaning, point.downwashGradient(), "1", formula, LATTICE);
    }

    /** First order, by what each input may be off by. */
    private void tolerance(NeutralPoint point, String lever) {
        String byEfficiency = "(K*" + Chain.number(NeutralPoint.EFFICIENCY_TOLERANCE) + "/eta_t)^2";
        String bySlopes = "(K*" + Chain.number(NeutralPoint.SLOPE_RATIO_TOLERANCE) + ")^2";
        String byDownwash = "(K/(1-de)*" + Chain.number(NeutralPoint.DOWNWASH_TOLERANCE) + ")^2";
        String body = "(" + Chain.number(NeutralPoint.BODY_TOLERANCE_FRACTION) + "*c)^2";
        chain.step(
                "dx_np",
                "tolerance of the neutral point",
                Length.mmFromM(point.toleranceM()),
                "mm",
                "sqrt((" + lever + "/(1+K)^2)^2*(" + byEfficiency + "+" + bySlopes + "+" + byDownwash + ")+" + body
                        + ")",
                JUDGEMENT);
    }

    private void slope(String symbol, String meaning, double value, String aspect, String sweep) {
        String formula = "2*pi*%1$s/(2+sqrt(4+(%1$s/%2$s)^2*(1+%3$s)))"
                .formatted(aspect, Chain.number(LiftSlope.SECTION_SLOPE_RATIO), sweep);
        chain.step(symbol, meaning, value, "1/rad", formula, SLOPE);
    }
}
