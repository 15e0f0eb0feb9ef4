package trestle.flight;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The battery mass for longest endurance: {@code t(m_b) = e m_b / P_least(m_0 + m_b)} with the
 * specific energy e and the rest mass m_0 held. Without systems power {@code t ∝ f sqrt(1 − f)}
 * over the battery's share f of the mass, greatest at 2/3; systems power moves it up.
 */
final class BatterySizing {
    /** A battery above fifty times the rest mass is no aircraft; ends the search. */
    private static final double GREATEST_RATIO_TO_REST = 50;

    private static final double LEAST_RATIO_TO_REST = 0.01;

    private BatterySizing() {}

    /**
     * The optimum.
     *
     * @param flight the aircraft as it is
     * @param battery its battery
     * @param usableEnergyJ energy that this battery gives above the reserve, J
     * @return the optimum; empty where there is no rest mass or no room under the limit
     */
    static Optional<BatteryOptimum> of(SteadyFlight flight, Battery battery, double usableEnergyJ) {
        double restKg = flight.airframe().massKg() - battery.massKg();
        if (!(restKg > 0) || !(usableEnergyJ > 0)) {
            return Optional.empty();
        }
        double specificEnergyJPerKg = usableEnergyJ / battery.massKg();
        double roomKg = battery.takeoffMassLimitKg().orElse(Double.POSITIVE_INFINITY) - restKg;
        double leastLog = Math.log(LEAST_RATIO_TO_REST * restKg);
        boolean limited = roomKg <= GREATEST_RATIO_TO_REST * restKg;
        double greatestLog = Math.log(limited ? roomKg : GREATEST_RATIO_TO_REST * restKg);
        OptionalDouble bestLog = SpeedSearch.leastAt(
                log -> 1 / enduranceS(flight, restKg, Math.exp(log), specificEnergyJPerKg), leastLog, greatestLog);
        if (bestLog.isEmpty()) {
            return Optional.empty();
        }
        double batteryKg = Math.exp(bestLog.getAsDouble());
        SteadyFlight then = withMassKg(flight, restKg + batteryKg);
        return Optional.of(new BatteryOptimum(
                batteryKg,
                restKg + batteryKg,
                enduranceS(flight, restKg, batteryKg, specificEnergyJPerKg),
                then.stallSpeedMPerS(),
                limited && bestLog.getAsDouble() == greatestLog));
    }

    private static double enduranceS(
            SteadyFlight flight, double restKg, double batteryKg, double specificEnergyJPerKg) {
        SteadyFlight then = withMassKg(flight, restKg + batteryKg);
        OptionalDouble airspeedMPerS = then.leastPowerAirspeedMPerS();
        return airspeedMPerS.isEmpty()
                ? 0
                : specificEnergyJPerKg * batteryKg / then.powerW(airspeedMPerS.getAsDouble());
    }

    private static SteadyFlight withMassKg(SteadyFlight flight, double massKg) {
        return new SteadyFlight(flight.airframe().withMassKg(massKg), flight.power(), flight.densityKgPerM3());
    }
}
