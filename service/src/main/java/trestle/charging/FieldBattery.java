package trestle.charging;

import trestle.numeric.Guard;

/**
 * A battery that packs are charged from.
 *
 * @param leadAcid whether it is a lead-acid battery, which gives less at a high current
 * @param nominalVoltageV voltage on its label, V, above 0
 * @param capacityC charge on its label, C, above 0
 * @param usableFraction share of it that may be drawn, above 0 to 1
 * @param ratedS time of the discharge that the label speaks of, s, above 0
 */
public record FieldBattery(
        boolean leadAcid, double nominalVoltageV, double capacityC, double usableFraction, double ratedS) {
    /** Exponent of a usual lead-acid battery; from memory. */
    static final double PEUKERT_EXPONENT = 1.2;

    /** Checks the physics. */
    public FieldBattery {
        Guard.positive("nominalVoltageV", nominalVoltageV);
        Guard.positive("capacityC", capacityC);
        Guard.within("usableFraction", usableFraction, 0.01, 1);
        Guard.positive("ratedS", ratedS);
    }

    /**
     * How long it gives a current, by Peukert's relation {@code t = H (C / (I H))^k}; k is 1 but for lead-acid.
     *
     * @param currentA current, A, above 0
     * @return time until it is flat, s
     */
    double timeS(double currentA) {
        double exponent = leadAcid ? PEUKERT_EXPONENT : 1;
        return ratedS * Math.pow(capacityC / (currentA * ratedS), exponent);
    }

    /**
     * Charge that may be drawn: the allowed share, or what it gives at this current if that is less.
     *
     * @param currentA mean current, A, above 0
     * @return charge, C
     */
    double usableC(double currentA) {
        return Math.min(usableFraction * capacityC, timeS(currentA) * currentA);
    }
}
