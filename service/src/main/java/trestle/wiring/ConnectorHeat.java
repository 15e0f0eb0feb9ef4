package trestle.wiring;

import trestle.units.Temperature;

/**
 * How warm one contact of a connector gets: by its heat {@code I² R} and its thermal resistance where that is known, else
 * by the square of the current over the rating, which is commonly set for a rise of 30 K (IEC 60512-5, from memory). A
 * peak adds its own rise as one time constant lets it, on top of that of the continuous current.
 *
 * @param connector the connector
 * @param lossW heat of one contact at the continuous current, W
 * @param riseK rise above the air round it: at the end of the peak, or of the continuous current without one, K
 * @param temperatureK the temperature that it comes to, K
 */
public record ConnectorHeat(Connector connector, double lossW, double riseK, double temperatureK) {
    /** How fast a connector of this size warms, s. Common practice, no source. */
    static final double TIME_CONSTANT_S = 90;

    /**
     * A connector in a run.
     *
     * @param connector the connector
     * @param run what flows
     * @param airK air round it, K
     * @return how warm it gets
     */
    public static ConnectorHeat of(Connector connector, WireRun run, double airK) {
        double steadyK = steadyRiseK(connector, run.currentA());
        double riseK = run.peak()
                .map(peak -> steadyK
                        + (steadyRiseK(connector, peak.currentA()) - steadyK)
                                * (1 - Math.exp(-peak.durationS() / TIME_CONSTANT_S)))
                .orElse(steadyK);
        return new ConnectorHeat(connector, lossW(connector, run.currentA()), riseK, airK + riseK);
    }

    /**
     * Heat of one contact, {@code I² R}.
     *
     * @param connector the connector
     * @param currentA current, A
     * @return heat, W
     */
    public static double lossW(Connector connector, double currentA) {
        return currentA * currentA * connector.contactResistanceOhm();
    }

    /**
     * Rise under a current that lasts.
     *
     * @param connector the connector
     * @param currentA current, A
     * @return rise, K
     */
    public static double steadyRiseK(Connector connector, double currentA) {
        if (connector.thermalResistanceKPerW().isPresent()) {
            return lossW(connector, currentA)
                    * connector.thermalResistanceKPerW().getAsDouble();
        }
        double share = currentA / connector.ratedCurrentA();
        return connector.ratedRiseK() * share * share;
    }

    /** Its temperature, °C. */
    double temperatureC() {
        return Temperature.cFromK(temperatureK);
    }
}
