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
        mean("x", "leading edge of the mean chord", edgeMm, "mm");
        mean("t", "tangent of the half-chord sweep", planform.halfChordSweepTangent(), "1");
        chain.step(
                "p_cg",
                "CG in percent of the mean chord",
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
                "mean chord" + of,
                Length.mmFromM(MeanChord.lengthM(panel.rootChordM(), panel.tipChordM())),
                "mm",
                "2/3*(%1$s^2+%1$s*%2$s+%2$s^2)/(%1$s+%2$s)".formatted(root, tip),
                CHORD);
        chain.step(
                "x_" + n,
                "leading edge at the mean chord" + of,
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
        chain.given("f", "shift by fuselage and propeller, over the mean chord", tail.fuselageShiftFraction(), "1");
        double armMm = Length.mmFromM(point.armM());
        if (tail instanceof Tail behind) {
            tail(behind, point);
            chain.step("x_np", "neutral point", armMm, "mm", "x+0.25*c+c*(eta_t*V_t*a_t/a_w*(1-de)+f)", ETKIN);
        } else {
            chain.step("x_np", "neutral point", armMm, "mm", "x+0.25*c+c*f", ETKIN);
        }
        chain.step(
                "SM",
                "static margin",
                Share.percentFromFraction(balance.staticMarginFraction().orElseThrow()),
                "%",
                "100*(x_np-x_cg)/c",
                ETKIN);
    }

    private void tail(Tail tail, NeutralPoint point) {
        chain.given("S_t", "tail area", Area.dm2FromM2(tail.areaM2()), "dm²");
        chain.given("b_t", "tail span", Length.mmFromM(tail.spanM()), "mm");
        chain.given("x_t4", "tail quarter chord", Length.mmFromM(tail.quarterChordArmM()), "mm");
        chain.given("eta_t", "tail efficiency", tail.efficiencyRatio(), "1");
        double leverMm = Length.mmFromM(tail.quarterChordArmM() - planform.quarterMacArmM());
        chain.step("l_t", "lever of the tail", leverMm, "mm", "x_t4-(x+0.25*c)", CHORD);
        chain.step("V_t", "tail volume coefficient", point.tailVolumeRatio(), "1", "S_t*l_t/(S*c)", CHORD);
        double aspect = tail.aspectRatio();
        chain.step("A_t", "aspect ratio of the tail", aspect, "1", "b_t^2/(S_t*10000)", CHORD);
        slope("a_t", "lift slope of the tail", point.tailLiftSlopePerRad(), "A_t", "0");
        chain.step("de", "downwash gradient at the tail", point.downwashGradient(), "1", "2*a_w/(pi*A)", ETKIN);
    }

    private void slope(String symbol, String meaning, double value, String aspect, String sweep) {
        String formula = "2*pi*%1$s/(2+sqrt(4+(%1$s/%2$s)^2*(1+%3$s)))"
                .formatted(aspect, Chain.number(LiftSlope.SECTION_SLOPE_RATIO), sweep);
        chain.step(symbol, meaning, value, "1/rad", formula, SLOPE);
    }
}
