package trestle.flight;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pack mass for longest endurance: {@code t(m_b) = e m_b / P_least(m_0 + m_b)} with the
 * specific energy e and the rest mass m_0 held. Without systems power {@code t ∝ f sqrt(1 − f)}
 * over the pack's share f of the mass, longest at 2/3; systems power moves it up. That is far beyond what
 * structure, stall and launch allow, so it is sought under a mass limit alone.
 */
final class PackSizing {
    private static final double SMALLEST_RATIO_TO_REST = 0.01;

    private PackSizing() {}

    /**
     * The optimum.
     *
     * @param flight the aircraft as it is
     * @param pack its pack
     * @param usableEnergyJ energy that this pack gives above the reserve, J
     * @return the optimum; empty without a mass limit, and where there is no rest mass or no room under the limit
     */
    static Optional<PackOptimum> of(SteadyFlight flight, CarriedPack pack, double usableEnergyJ) {
        double restKg = flight.airframe().massKg() - pack.massKg();
        if (pack.takeoffMassLimitKg().isEmpty() || !(restKg > 0) || !(usableEnergyJ > 0)) {
            return Optional.empty();
        }
        double specificEnergyJPerKg = usableEnergyJ / pack.massKg();
        double roomKg = pack.takeoffMassLimitKg().getAsDouble() - restKg;
        double lowestLog = Math.log(SMALLEST_RATIO_TO_REST * restKg);
        if (!(roomKg > SMALLEST_RATIO_TO_REST * restKg)) {
            return Optional.empty();
        }
        double highestLog = Math.log(roomKg);
        OptionalDouble bestLog = SpeedSearch.leastAt(
                log -> 1 / enduranceS(flight, restKg, Math.exp(log), specificEnergyJPerKg),
                lowestLog,
                highestLog,
                SpeedSearch.COARSE);
        if (bestLog.isEmpty()) {
            return Optional.empty();
        }
        double packKg = Math.exp(bestLog.getAsDouble());
        SteadyFlight then = withMassKg(flight, restKg + packKg);
        return Optional.of(new PackOptimum(
                packKg,
                restKg + packKg,
                enduranceS(flight, restKg, packKg, specificEnergyJPerKg),
                then.stallSpeedMPerS(),
                bestLog.getAsDouble() == highestLog));
    }

    private static double enduranceS(SteadyFlight flight, double restKg, double packKg, double specificEnergyJPerKg) {
        SteadyFlight then = withMassKg(flight, restKg + packKg);
        OptionalDouble airspeedMPerS = then.leastPowerAirspeedMPerS(SpeedSearch.COARSE);
        return airspeedMPerS.isEmpty() ? 0 : specificEnergyJPerKg * packKg / then.powerW(airspeedMPerS.getAsDouble());
    }

    private static SteadyFlight withMassKg(SteadyFlight flight, double massKg) {
        return new SteadyFlight(flight.airframe().withMassKg(massKg), flight.power(), flight.densityKgPerM3());
    }
}
