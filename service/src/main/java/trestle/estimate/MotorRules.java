package trestle.estimate;

/**
 * What a brushless motor is likely to be, from what its label says.
 *
 * <p>Least squares in logarithms over the stated figures of 191 outrunners in three product lines: 51 in the table of a
 * university course on sizing (Toulouse, 2022), 140 in the component table of a university design study (Vanderbilt,
 * 2022). The scatter is that of a line which the fit has not seen. They hold for 80 to 3000 rpm/V and 15 to 1500 g.
 */
public final class MotorRules {
    /** Rules end here, rpm/V. */
    public static final double LEAST_SPEED_CONSTANT = 80;

    /** Rules end here, rpm/V. */
    public static final double GREATEST_SPEED_CONSTANT = 3000;

    /** Rules end here, g. */
    public static final double LEAST_MASS_G = 15;

    /** Rules end here, g. */
    public static final double GREATEST_MASS_G = 1500;

    /** Voltage of the no-load current where the maker states none, V. */
    public static final double NO_LOAD_VOLTAGE_V = 10;

    /** How residuals of resistance and no-load current go against each other. */
    public static final double RESISTANCE_AGAINST_NO_LOAD = -0.45;

    /** Scatter of ln R by mass and speed constant. */
    public static final double RESISTANCE_BY_MASS = 0.50;

    /** Scatter of ln R by a stated greatest current or power. */
    public static final double RESISTANCE_BY_RATING = 0.38;

    /** Scatter of ln R where the mass itself is guessed from the speed constant. */
    public static final double RESISTANCE_BY_SPEED = 0.83;

    /** Scatter of ln I0. */
    public static final double NO_LOAD = 0.60;

    private MotorRules() {}

    /** R = 76.10 Kv^−0.4071 Imax^−1.2463, Ω. */
    public static double resistanceOfCurrent(double rpmPerV, double maxCurrentA) {
        return 76.10 * Math.pow(rpmPerV, -0.4071) * Math.pow(maxCurrentA, -1.2463);
    }

    /** R = 8831 Kv^−0.8475 Pmax^−0.9669, Ω. */
    public static double resistanceOfPower(double rpmPerV, double maxPowerW) {
        return 8831 * Math.pow(rpmPerV, -0.8475) * Math.pow(maxPowerW, -0.9669);
    }

    /** R = 20350 Kv^−1.0358 m^−1.1935, Ω, m in g. */
    public static double resistanceOfMass(double rpmPerV, double massG) {
        return 20_350 * Math.pow(rpmPerV, -1.0358) * Math.pow(massG, -1.1935);
    }

    /** I0 = 6.297·10⁻⁵ Kv^0.8325 m^0.8432, A, at about 10 V, m in g. */
    public static double noLoadOfMass(double rpmPerV, double massG) {
        return 6.297e-5 * Math.pow(rpmPerV, 0.8325) * Math.pow(massG, 0.8432);
    }

    /** I0 = 4.252·10⁻³ Kv^0.3732 Imax^0.8344, A, at about 10 V. */
    public static double noLoadOfCurrent(double rpmPerV, double maxCurrentA) {
        return 4.252e-3 * Math.pow(rpmPerV, 0.3732) * Math.pow(maxCurrentA, 0.8344);
    }

    /** Imax = 0.012915 Kv^0.4935 m^0.9449, A, held 30 to 180 s, m in g. */
    public static double maxCurrentOfMass(double rpmPerV, double massG) {
        return 0.012915 * Math.pow(rpmPerV, 0.4935) * Math.pow(massG, 0.9449);
    }

    /** m = 0.6100 Pmax^0.8409, g. */
    public static double massOfPower(double maxPowerW) {
        return 0.6100 * Math.pow(maxPowerW, 0.8409);
    }

    /** m = 7.674 Pmax^0.7012 Kv^−0.2531, g. */
    public static double massOfPowerAndSpeed(double maxPowerW, double rpmPerV) {
        return 7.674 * Math.pow(maxPowerW, 0.7012) * Math.pow(rpmPerV, -0.2531);
    }

    /** m = 219.5 Imax^0.9204 Kv^−0.5672, g. */
    public static double massOfCurrent(double maxCurrentA, double rpmPerV) {
        return 219.5 * Math.pow(maxCurrentA, 0.9204) * Math.pow(rpmPerV, -0.5672);
    }

    /** m = 42420 Kv^−0.8667, g: almost nothing is known. */
    public static double massOfSpeed(double rpmPerV) {
        return 42_420 * Math.pow(rpmPerV, -0.8667);
    }
}
