package trestle.propulsion;

import trestle.finding.Chain;

/**
 * How one state of a drive was reached.
 *
 * @param chain where to write; it knows the parts
 * @param task what was asked
 * @param point the state
 * @param tag end of this state's symbols
 * @param at what a meaning adds
 */
record PointWorkings(Chain chain, PropulsionTask task, OperatingPoint point, String tag, String at) {
    private static final String MAP =
            "blade elements in their own induced flow fitted to the UIUC Propeller Data Site, or"
                    + " the request's own measurements";
    private static final String COEFFICIENTS = "definition of CT and CP, UIUC Propeller Data Site";
    private static final String DRELA = "M. Drela, First-Order DC Electric Motor Model, 2007 (quoted second hand)";
    private static final String CONTROLLER = "averaging stage, own form; placeholder losses";

    void write(String how) {
        double revPerS = point.rotationRadPerS() / (2 * Math.PI);
        chain.given(s("V"), "airspeed" + at, point.airspeedMPerS(), "m/s");
        chain.found(s("n"), "rotation" + at, revPerS, "1/s", how, "search, bracketed root");
        step("J", "advance ratio", point.advanceRatio(), "1", "V_@/(n_@*D)", COEFFICIENTS);
        propeller(revPerS);
        motor(revPerS);
        controller();
        efficiencies();
    }

    private void propeller(double revPerS) {
        double diameterM = task.system().propeller().diameterM();
        double scaleN = task.air().densityKgPerM3()
                * revPerS
                * revPerS
                * task.system().propeller().diameterToTheFourthM4();
        double thrust = point.thrustN() / (task.system().motorCount() * scaleN);
        double power = point.torqueNm() * 2 * Math.PI / (scaleN * diameterM);
        String read = "read from the propeller's map at J and n";
        chain.found(s("CT"), "thrust coefficient" + at, thrust, "1", read, MAP);
        chain.found(s("CP"), "power coefficient" + at, power, "1", read, MAP);
        step("T", "thrust of all motors", point.thrustN(), "N", "N*CT_@*rho*n_@^2*D^4", COEFFICIENTS);
        step("Q", "torque at one shaft", point.torqueNm(), "N m", "CP_@*rho*n_@^2*D^5/(2*pi)", COEFFICIENTS);
        step("P", "shaft power of all", point.shaftPowerW(), "W", "N*Q_@*2*pi*n_@", "mechanics");
    }

    private void motor(double revPerS) {
        Motor motor = task.system().motor();
        double noLoadA = motor.noLoadCurrentA(2 * Math.PI * revPerS);
        String law = motor.noLoadVoltageV().isPresent() ? "I_0*(0.5+0.5*2*pi*n_@/((V_n-I_0*R_m)*K))" : "I_0";
        step("I0", "no-load current at n", noLoadA, "A", law, DRELA + "; half and half, practice");
        step("I", "current in one motor", point.motorCurrentA(), "A", "Q_@*K+I0_@", DRELA);
        step("U", "voltage at one motor", point.motorVoltageV(), "V", "2*pi*n_@/K+I_@*R_m", DRELA);
    }

    private void controller() {
        double supplyV = point.supplyVoltageV();
        String how = "voltage of the supply under L, bracketed root";
        chain.found(s("B"), "supply voltage" + at, supplyV, "V", how, "search, bracketed root");
        step("d", "throttle", point.throttleFraction(), "1", "(U_@+I_@*R_c)/B_@", CONTROLLER);
        step(
                "L",
                "current from the supply",
                point.supplyCurrentA(),
                "A",
                "max(0,N*(d_@*I_@+%s/V_r+%s*max(0,min(1,(1-d_@)/%s))*I_@))"
                        .formatted(
                                Chain.number(Controller.IDLE_POWER_W),
                                Chain.number(Controller.SWITCHING_LOSS_FRACTION),
                                Chain.number(Controller.SWITCHING_FADES_OVER)),
                CONTROLLER);
        step("W", "electrical power", point.electricalPowerW(), "W", "B_@*L_@", "power");
    }

    private void efficiencies() {
        Efficiency part = point.efficiency();
        share("ep", "propeller efficiency", part.propeller(), "T_@*V_@/P_@");
        share("em", "motor efficiency", part.motor(), "P_@/(N*U_@*I_@)");
        share("ec", "controller efficiency", part.controller(), "N*U_@*I_@/W_@");
        step("et", "drive efficiency", part.total(), "1", "ep_@*em_@*ec_@", Chain.ARITHMETIC);
    }

    /** Where power runs the other way there is no efficiency. */
    private void share(String symbol, String meaning, double value, String formula) {
        if (value > 0) {
            step(symbol, meaning, value, "1", formula, "definition");
        } else {
            chain.given(s(symbol), meaning + at, 0, "1", "no driving power");
        }
    }

    private void step(String symbol, String meaning, double value, String unit, String formula, String by) {
        chain.step(s(symbol), meaning + at, value, unit, formula.replace("@", tag), by);
    }

    private String s(String symbol) {
        return symbol + "_" + tag;
    }
}
