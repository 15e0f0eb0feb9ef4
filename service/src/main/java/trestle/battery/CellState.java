package trestle.battery;

/**
 * The state of one cell while it is discharged. Not thread-safe; lives inside one run. Symbols of
 * the model in brackets; what depends on temperature or on the step is kept until that changes.
 */
final class CellState {
    /** Shares of the three diffusion modes; the first two are exact for a sphere [1]. */
    private static final double SHARE_0 = 0.495;

    private static final double SHARE_1 = 0.168;
    private static final double SHARE_2 = 0.337;

    /** Squares of the sphere's eigenvalues 4.4934 and 7.7253 [1]; the rest lumped. */
    private static final double EIGEN_0 = 20.19;

    private static final double EIGEN_1 = 59.68;
    private static final double EIGEN_2 = 200;

    /** Surface against mean of a sphere at constant flux: r² / (15 D) times the rate [1]. */
    private static final double SPHERE = 15;

    /** 2 R / F, V/K. */
    private static final double TWO_R_OVER_F = 2 * 8.314462618 / 96485.33212;

    /** Electrolyte that is left at the least; keeps the logarithm finite. */
    private static final double LEAST_ELECTROLYTE = 0.03;

    static final double RISE_OVER_CHARGE = 0.1;

    /** Laws of temperature are refreshed at this change: half a percent of resistance. */
    private static final double REFRESH_K = 0.25;

    private final CellModel cell;
    private final CellSet set;
    private final Bath bath;

    double charge;
    double temperatureK;
    private double positive0;
    private double positive1;
    private double positive2;
    private double negative0;
    private double negative1;
    private double negative2;
    private double depletion;

    private double lawsK = Double.NaN;
    private double thermalV;
    private double ohmicOhm;
    private double twoExchangeA;
    private double positiveScaleS;
    private double negativeScaleS;
    private double electrolyteS;
    private double electrolyteGainS;
    private double coldFactor;

    private double decayS = Double.NaN;
    private double decayK = Double.NaN;
    private double decayPositive0;
    private double decayPositive1;
    private double decayPositive2;
    private double decayNegative0;
    private double decayNegative1;
    private double decayNegative2;
    private double decayElectrolyte;
    private double decayHeat;

    private double openV;
    private double resistanceOhm;
    private double twoExchangeNowA;

    CellState(CellModel cell, Bath bath, double chargeFraction) {
        this.cell = cell;
        this.set = cell.set();
        this.bath = bath;
        this.charge = chargeFraction;
        this.temperatureK = bath.startK();
    }

    CellModel cell() {
        return cell;
    }

    /** Takes over another state of the same cell. */
    void take(CellState other) {
        charge = other.charge;
        temperatureK = other.temperatureK;
        positive0 = other.positive0;
        positive1 = other.positive1;
        positive2 = other.positive2;
        negative0 = other.negative0;
        negative1 = other.negative1;
        negative2 = other.negative2;
        depletion = other.depletion;
    }

    CellState copy() {
        CellState copy = new CellState(cell, bath, charge);
        copy.take(this);
        if (lawsK > 0) {
            copy.lawsAt(lawsK);
        }
        return copy;
    }

    /** Works out what of the terminal voltage does not depend on the current. */
    void prepare() {
        lawsOfTemperature();
        double atPositive = charge - (positive0 + positive1 + positive2);
        double atNegative = charge - (negative0 + negative1 + negative2);
        double electrolyte = Math.max(1 - depletion, LEAST_ELECTROLYTE);
        openV = set.electrodes().positiveV(atPositive)
                - set.electrodes().negativeV(atNegative)
                + thermalV * Math.log(electrolyte);
        double rise = set.emptyRiseRatio() * Math.exp(-Math.max(atPositive, 0) / RISE_OVER_CHARGE);
        resistanceOhm = ohmicOhm * (1 + rise);
        twoExchangeNowA = twoExchangeA * Math.sqrt(electrolyte);
    }

    /** Voltage without current, at the present lags, V. */
    double openV() {
        return openV;
    }

    /** Open-circuit voltage at the mean charge, V: what it would recover to at rest. */
    double restV() {
        return set.electrodes().openCircuitV(charge);
    }

    /**
     * Terminal voltage: {@code U - f (i R + (2RT/F) asinh(i / 2 I0))}, f the growth in the cold.
     *
     * @param currentA discharge current of this cell, A, not negative
     * @return voltage, V
     */
    double voltageV(double currentA) {
        double ratio = currentA / twoExchangeNowA;
        double asinh = Math.log(ratio + Math.sqrt(ratio * ratio + 1));
        return openV - coldFactor * (currentA * resistanceOhm + thermalV * asinh);
    }

    /** Ohmic resistance as prepared, Ω. */
    double resistanceOhm() {
        return resistanceOhm;
    }

    /** {@code 2 R T / F} as prepared, V. */
    double thermalV() {
        return thermalV;
    }

    /** Twice the exchange current as prepared, A. */
    double twoExchangeA() {
        return twoExchangeNowA;
    }

    /** How much the drop has grown in the cold beyond the set's own laws: 1 at 25 °C and above. */
    double coldFactor() {
        return coldFactor;
    }

    /** Fall of voltage with current, {@code f (R + vt / sqrt((2 I0)² + i²))}, Ω. */
    double slopeOhm(double currentA) {
        double kineticOhm = thermalV / Math.sqrt(twoExchangeNowA * twoExchangeNowA + currentA * currentA);
        return coldFactor * (resistanceOhm + kineticOhm);
    }

    /**
     * Goes on for a while at a constant current.
     *
     * @param currentA discharge current of this cell, A
     * @param heatW heat set free in it, W
     * @param durationS how long, s
     */
    void advance(double currentA, double heatW, double durationS) {
        lawsOfTemperature();
        decays(durationS);
        double ratePerS = currentA / cell.capacityC();
        double positive = positiveScaleS / SPHERE * ratePerS;
        double negative = negativeScaleS / SPHERE * ratePerS;
        positive0 = relax(positive0, positive * SHARE_0, decayPositive0);
        positive1 = relax(positive1, positive * SHARE_1, decayPositive1);
        positive2 = relax(positive2, positive * SHARE_2, decayPositive2);
        negative0 = relax(negative0, negative * SHARE_0, decayNegative0);
        negative1 = relax(negative1, negative * SHARE_1, decayNegative1);
        negative2 = relax(negative2, negative * SHARE_2, decayNegative2);
        depletion = relax(depletion, electrolyteGainS * ratePerS, decayElectrolyte);
        charge -= ratePerS * durationS;
        warm(heatW, durationS);
    }

    private void warm(double heatW, double durationS) {
        if (bath.conductanceWPerK() > 0) {
            double settledK = bath.ambientK() + heatW / bath.conductanceWPerK();
            temperatureK = relax(temperatureK, settledK, decayHeat);
        } else {
            temperatureK += heatW * durationS / bath.heatCapacityJPerK();
        }
    }

    private static double relax(double from, double towards, double decay) {
        return towards + (from - towards) * decay;
    }

    private void lawsOfTemperature() {
        if (Math.abs(temperatureK - lawsK) < REFRESH_K) {
            return;
        }
        lawsAt(temperatureK);
    }

    private void lawsAt(double newK) {
        lawsK = newK;
        double a = 1 / newK - 1 / CellModel.REFERENCE_K;
        thermalV = TWO_R_OVER_F * newK;
        coldFactor = Math.exp(set.coldFactorK() * Math.max(0, a));
        ohmicOhm = cell.ohmicOhm() * Math.exp(set.ohmicActivationK() * a);
        twoExchangeA = 2 * cell.exchangeA() * Math.exp(-set.exchangeActivationK() * a);
        positiveScaleS = set.positiveS() * Math.exp(set.positiveActivationK() * a);
        negativeScaleS = set.negativeS() * Math.exp(set.negativeActivationK() * a);
        double electrolyte = Math.exp(set.electrolyteActivationK() * a);
        electrolyteS = set.electrolyteS() * electrolyte;
        electrolyteGainS = set.electrolyteGainS() * electrolyte;
    }

    private void decays(double durationS) {
        if (durationS == decayS && lawsK == decayK) {
            return;
        }
        decayS = durationS;
        decayK = lawsK;
        double positive = -durationS / positiveScaleS;
        double negative = -durationS / negativeScaleS;
        decayPositive0 = Math.exp(positive * EIGEN_0);
        decayPositive1 = Math.exp(positive * EIGEN_1);
        decayPositive2 = Math.exp(positive * EIGEN_2);
        decayNegative0 = Math.exp(negative * EIGEN_0);
        decayNegative1 = Math.exp(negative * EIGEN_1);
        decayNegative2 = Math.exp(negative * EIGEN_2);
        decayElectrolyte = Math.exp(-durationS / electrolyteS);
        decayHeat = Math.exp(-durationS * bath.conductanceWPerK() / bath.heatCapacityJPerK());
    }
}
