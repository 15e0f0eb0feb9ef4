package trestle.battery;

import trestle.finding.Chain;
import trestle.units.Temperature;

/**
 * The voltage at the first moment of a discharge, taken apart.
 *
 * @param chain where to write
 * @param task what was asked
 * @param result what came of it
 */
record StartWorkings(Chain chain, PackTask task, PackEnergy result) {
    private static final String OHMIC = "Arrhenius law and rise of an empty cell; parameters fitted to published cells,"
            + " /v1/reference/cell-chemistries";
    private static final String KINETIC = "J. Newman, Electrochemical Systems: Butler-Volmer, symmetric (from memory)";

    private static final String COLD = "P. Kollmeyer et al., McMaster University, doi 10.17632/cp3473x7xv.3 and"
            + " 10.17632/4fx8cjprxm.1; G. Plett, Battery Management Systems 1 (2015): middle of measured resistances";

    void write() {
        Pack pack = task.pack();
        PackState start = PackState.of(pack, task.surroundings());
        double currentA = currentA(start);
        String how = task.load() instanceof Load.Current
                ? "the current asked for; 0 where it would leave the pack no voltage"
                : "Newton's method on V_start*I = P; 0 where the pack cannot give P";
        chain.found("I", "current at the start", currentA, "A", how, Chain.ARITHMETIC);
        String sum = "";
        for (int k = 0; k < pack.segments().size(); k++) {
            cell(pack.segments().get(k), start.copyOfCell(k), k + 1, currentA);
            sum += (k == 0 ? "" : "+") + pack.segments().get(k).seriesCount() + "*u_" + (k + 1);
        }
        chain.given("R_l", "leads", pack.leadResistanceOhm(), "Ω");
        double startV = result.discharge().startVoltageV();
        chain.step("V_start", "voltage at the start", startV, "V", sum + "-I*R_l", Chain.ARITHMETIC);
    }

    private double currentA(PackState start) {
        Circuit circuit = new Circuit(start);
        if (task.load() instanceof Load.Current current) {
            circuit.solveFixed(current.currentA());
            return circuit.currentA();
        }
        double powerW = task.load() instanceof Load.Profile profile
                ? profile.steps().get(0).powerW()
                : ((Load.Power) task.load()).powerW();
        circuit.solvePower(powerW);
        return circuit.currentA();
    }

    private void cell(Segment segment, CellState cell, int n, double currentA) {
        cell.prepare();
        CellModel model = cell.cell();
        CellSet set = model.set();
        String of = " of a cell, segment " + n;
        chain.given("g_" + n, "health" + of, segment.healthFraction(), "1");
        double growth = CellModel.growthRatio(segment.healthFraction());
        String law = "1+" + Chain.number(CellModel.GROWTH_PER_LOSS) + "*(1-g_" + n + ")";
        String assumed = "engineering assumption from memory: 1.5 times at 80 % health";
        chain.step("a_" + n, "growth of resistance" + of, growth, "1", law, assumed);
        chain.given("z_" + n, "state of charge" + of, cell.charge, "1");
        double startC = Temperature.cFromK(cell.temperatureK);
        chain.given("T_" + n, "temperature" + of, startC, "°C");
        chain.found(
                "R25_" + n,
                "ohmic resistance at 25 °C, grown by a_" + n + "," + of,
                model.ohmicOhm(),
                "Ω",
                "of the chemistry at this capacity, scaled so that a pulse gives the resistance" + " stated",
                OHMIC);
        chain.step(
                "R_" + n,
                "ohmic resistance at its temperature and charge" + of,
                cell.resistanceOhm(),
                "Ω",
                "R25_%1$d*exp(%2$s*(1/(T_%1$d+273.15)-1/298.15))*(1+%3$s*exp(-max(z_%1$d,0)/%4$s))"
                        .formatted(
                                n,
                                Chain.number(set.ohmicActivationK()),
                                Chain.number(set.emptyRiseRatio()),
                                Chain.number(CellState.RISE_OVER_CHARGE)),
                OHMIC);
        chain.step(
                "J_" + n,
                "twice the exchange current" + of,
                cell.twoExchangeA(),
                "A",
                "2*%2$s*exp(-(%3$s)*(1/(T_%1$d+273.15)-1/298.15))"
                        .formatted(n, Chain.number(model.exchangeA()), Chain.number(set.exchangeActivationK())),
                OHMIC);
        String coldLaw = "exp(%2$s*max(0,1/(T_%1$d+273.15)-1/298.15))".formatted(n, Chain.number(set.coldFactorK()));
        chain.step("f_" + n, "growth of the drop in the cold" + of, cell.coldFactor(), "1", coldLaw, COLD);
        chain.found(
                "U_" + n,
                "open-circuit voltage" + of,
                cell.openV(),
                "V",
                "positive less negative electrode at z_" + n,
                "/v1/reference/cell-chemistries, or the request's curve");
        double cellA = currentA / segment.parallelCount();
        String share = "I/" + segment.parallelCount();
        chain.step("i_" + n, "current" + of, cellA, "A", share, Chain.ARITHMETIC);
        chain.step(
                "u_" + n,
                "terminal voltage U - f (i R + kinetic)" + of,
                cell.voltageV(cellA),
                "V",
                "U_%1$d-f_%1$d*(i_%1$d*R_%1$d+2*8.314463/96485.33*(T_%1$d+273.15)*asinh(i_%1$d/J_%1$d))".formatted(n),
                KINETIC);
    }
}
