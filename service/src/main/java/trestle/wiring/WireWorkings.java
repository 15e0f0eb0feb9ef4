package trestle.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.finding.Chain;
import trestle.finding.Chain.Term;
import trestle.finding.Working;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;
import trestle.units.Temperature;

/**
 * How the numbers of a gauge were reached: the recommended one, and the one asked about where that
 * is another; the thickest where none is either.
 */
public final class WireWorkings {
    private static final String COPPER = "IEC 60028, annealed copper: 58 MS/m, 0.00393 /K, 8890 kg/m³ at 20 °C";
    private static final String PRACTICE = "common practice, no source";

    private final WireTask task;
    private final WireRun run;
    private final GaugeAnswer answer;
    private final Chain chain = new Chain();

    private WireWorkings(WireTask task, GaugeAnswer answer) {
        this.task = task;
        this.run = task.run();
        this.answer = answer;
    }

    /**
     * The workings of a sizing.
     *
     * @param task what was asked
     * @param sizing what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(WireTask task, WireSizing sizing) {
        List<GaugeAnswer> shown = new ArrayList<>(sizing.recommended().stream().toList());
        sizing.checked()
                .filter(c -> shown.stream().noneMatch(r -> r.gauge().equals(c.gauge())))
                .ifPresent(shown::add);
        if (shown.isEmpty()) {
            shown.add(sizing.candidates().get(sizing.candidates().size() - 1));
        }
        return shown.stream().flatMap(gauge -> of(task, gauge).stream()).toList();
    }

    private static List<Working> of(WireTask task, GaugeAnswer shown) {
        WireWorkings workings = new WireWorkings(task, shown);
        workings.conductor();
        workings.temperature();
        workings.electrical();
        workings.carried();
        String gauge = shown.gauge().label();
        return workings.chain.lines().stream().map(line -> line.about(gauge)).toList();
    }

    private void conductor() {
        Wire wire = answer.wire();
        Gauge gauge = wire.gauge();
        double areaMm2 = Area.mm2FromM2(gauge.areaM2());
        double perM = milli(gauge.resistancePerMOhm());
        String meaning = "copper area";
        if (gauge.system() == GaugeSystem.AWG) {
            double solidMm = Length.mmFromM(gauge.solidDiameterM());
            String law = "0.127*92^((36-" + Chain.number(Awg.number(gauge.designation())) + ")/39)";
            chain.step("d_s", "solid diameter", solidMm, "mm", law, "ASTM B258 (law from memory)");
            chain.step("A", meaning, areaMm2, "mm²", "pi/4*d_s^2", "ASTM B258");
            String lay = Chain.number(Gauge.LAY_RATIO) + "*1000/(58*A)";
            String source = COPPER + "; 1.02 for the lay of strands is common practice";
            chain.step("r_20", "resistance at 20 °C", perM, "mΩ/m", lay, source);
        } else {
            String table = "IEC 60228, class 5; below 0.5 mm² by ratio to solid copper";
            chain.given("A", meaning, areaMm2, "mm²", "IEC 60228");
            chain.given("r_20", "resistance at 20 °C", perM, "mΩ/m", table);
        }
        String round = Chain.number(Gauge.STRANDED_DIAMETER_RATIO) + "*sqrt(4/pi*A)";
        double conductorMm = Length.mmFromM(gauge.conductorDiameterM());
        chain.step("d", "diameter round the strands", conductorMm, "mm", round, PRACTICE);
        String wall = "the request, or the wall that is usual for size and material";
        chain.given("w", "wall of the insulation", Length.mmFromM(wire.wallM()), "mm", wall);
        double outerMm = Length.mmFromM(wire.outerDiameterM());
        chain.step("D", "diameter over the insulation", outerMm, "mm", "d+2*w", Chain.ARITHMETIC);
    }

    /** Steady temperature; a wire that does not settle is shown at the melting point. */
    private void temperature() {
        chain.given("I", "continuous current", run.currentA(), "A");
        chain.given("n", "wires in parallel each way", run.parallelWires(), "1");
        HeatPath path = new HeatPath(answer.wire(), task.effectiveSurroundings());
        Optional<SteadyState> steady = SteadyState.of(answer.wire(), path, run.wireCurrentA());
        if (steady.isPresent()) {
            new HeatWorkings(chain, task, answer.wire(), path, steady.get()).write();
        } else {
            chain.found(
                    "T_c",
                    "copper temperature",
                    Temperature.cFromK(Copper.MELTING_POINT_K),
                    "°C",
                    "the wire does not settle below the melting point of copper",
                    "ITS-90");
        }
        chain.step(
                "r",
                "resistance at the copper temperature",
                milli(answer.wire().resistancePerMOhm(copperK())),
                "mΩ/m",
                "r_20*(1+0.00393*(T_c-20))",
                COPPER);
        if (steady.isPresent()) {
            double heat = run.wireCurrentA() * run.wireCurrentA();
            chain.step(
                    "q_made",
                    "heat made, which is the heat given off",
                    heat * answer.wire().resistancePerMOhm(copperK()),
                    "W/m",
                    "(I/n)^2*r/1000",
                    "Joule's law");
        }
        run.peak().ifPresent(peak -> peakTemperature());
        chain.found(
                "I_max",
                "current of the run that holds the copper at the insulation's rating",
                answer.ampacityA(),
                "A",
                "the same heat balance solved for the current at the rating",
                HeatWorkings.BALANCE);
    }

    /** Copper that melts, and a wire that does not settle before the peak, are shown at the melting point. */
    private void peakTemperature() {
        boolean reached = answer.peakTemperatureK().isPresent();
        chain.found(
                "T_p",
                "copper temperature at the end of the peak",
                Temperature.cFromK(peakK()),
                "°C",
                reached
                        ? "copper and insulation, two lumps, integrated over the peak from T_c on"
                        : "the copper melts in the peak, or before it",
                reached ? "Hairer, Wanner, Solving Ordinary Differential Equations II; method ROS2" : "ITS-90");
        answer.peakSurfaceTemperatureK()
                .ifPresent(surfaceK -> chain.found(
                        "T_sp",
                        "surface at the end of the peak",
                        Temperature.cFromK(surfaceK),
                        "°C",
                        "the other of the two lumps",
                        "Hairer, Wanner, Solving Ordinary Differential Equations II; method ROS2"));
    }

    private double peakK() {
        return answer.peakTemperatureK().orElse(Copper.MELTING_POINT_K);
    }

    private void electrical() {
        chain.given("L", "length of the run, one way", run.lengthM(), "m");
        chain.given("V", "supply voltage", run.supplyVoltageV(), "V");
        double loopMilliohm = milli(answer.resistanceOhm());
        chain.step("R", "out and back", loopMilliohm, "mΩ", "r*2*L/n", Chain.ARITHMETIC);
        chain.step("V_w", "drop in the wires", answer.dropV(), "V", "I*R/1000", "Ohm's law");
        List<Term> connectors = run.connectors().stream()
                .map(c -> milli(c.loopResistanceOhm()))
                .map(ohm -> new Term(Chain.number(ohm), ohm))
                .toList();
        if (connectors.isEmpty()) {
            chain.given("R_c", "connectors, there are none", 0, "mΩ");
        } else {
            chain.sum("R_c", "connectors, two contacts each", "mΩ", connectors, Chain.ARITHMETIC);
        }
        chain.step("V_d", "drop with connectors", answer.totalDropV(), "V", "V_w+I*R_c/1000", "Ohm's law");
        chain.step(
                "p_d",
                "drop with connectors over supply",
                Share.percentFromFraction(answer.totalDropFraction()),
                "%",
                "100*V_d/V",
                Chain.ARITHMETIC);
        run.peak().ifPresent(this::peakDrop);
        chain.step("P", "heat in the wires", answer.lossW(), "W", "I*V_w", "Joule's law");
    }

    private void peakDrop(CurrentPeak peak) {
        chain.given("I_p", "peak current", peak.currentA(), "A");
        double perM = milli(answer.wire().resistancePerMOhm(peakK()));
        chain.step("r_p", "resistance at the end of the peak", perM, "mΩ/m", "r_20*(1+0.00393*(T_p-20))", COPPER);
        double dropV = answer.peakDropV().orElseThrow();
        String law = "I_p*(r_p*2*L/n+R_c)/1000";
        chain.step("V_p", "drop with connectors at the end of the peak", dropV, "V", law, "Ohm's law");
        chain.step(
                "p_p",
                "the same over supply",
                Share.percentFromFraction(answer.peakDropFraction().orElseThrow()),
                "%",
                "100*V_p/V",
                Chain.ARITHMETIC);
    }

    private void carried() {
        Wire wire = answer.wire();
        double copperGPerM = Mass.gFromKg(wire.gauge().areaM2() * Copper.DENSITY_KG_PER_M3);
        chain.step("m_cu", "copper", copperGPerM, "g/m", "A*8.89", COPPER);
        chain.given(
                "s",
                "density of the insulation",
                wire.insulation().material().densityKgPerM3() / Mass.gFromKg(1),
                "g/cm³",
                "typical of the material, from memory");
        double coverGPerM = Mass.gFromKg(wire.massKgPerM()) - copperGPerM;
        chain.step("m_in", "insulation", coverGPerM, "g/m", "pi*w*(d+w)*s", Chain.ARITHMETIC);
        double massG = Mass.gFromKg(answer.massKg());
        chain.step("m", "wire out and back", massG, "g", "2*n*L*(m_cu+m_in)", Chain.ARITHMETIC);
        task.flight().ifPresent(this::flight);
    }

    private void flight(Flight flight) {
        chain.given("t", "duration of the flight", flight.durationS(), "s");
        chain.given("P_m", "power over take-off mass", flight.specificPowerWPerKg(), "W/kg");
        chain.step(
                "E",
                "energy that the wire costs in flight",
                Energy.whFromJ(answer.energyCostJ().orElseThrow()),
                "Wh",
                "(P+1.5*P_m*m/1000)*t/3600",
                "J. Anderson, Introduction to Flight, chapter 6 (from memory): power with mass to the 3/2");
    }

    private double copperK() {
        return answer.conductorTemperatureK().orElse(Copper.MELTING_POINT_K);
    }

    private static double milli(double ohm) {
        return ohm * 1000;
    }
}
