package trestle.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trestle.battery.Covering;
import trestle.battery.Pack;
import trestle.battery.ReferenceCells;
import trestle.battery.Surroundings;

/**
 * Charges against those of published parameter sets in a porous-electrode model: see {@code
 * reference/charging/README.md}. They are computations, not measurements, and the small model was fitted to discharges of
 * the same sets.
 */
class ChargeReferenceTest {
    private static StringCharge charged(
            String source, double currentA, double holdV, double endA, double temperatureK) {
        Pack pack = ReferenceCells.pack(source);
        ChargeTask task = new ChargeTask(
                pack,
                Surroundings.of(temperatureK, Covering.BARE),
                Connection.IN_SERIES,
                new Charger(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        1,
                        1,
                        true,
                        0.3),
                OptionalDouble.of(currentA),
                ChargeTarget.FULL,
                OptionalDouble.of(holdV),
                endA / ReferenceCells.capacityC(source),
                0,
                Optional.empty(),
                OptionalDouble.of(223.15),
                OptionalDouble.empty());
        var cell = ReferenceCells.empty(source, pack.segments().get(0), temperatureK);
        return new ChargeRun(task, List.of(0), List.of(cell), Double.POSITIVE_INFINITY).run();
    }

    private static double timeToShareS(StringCharge charge, double share) {
        double end = charge.segments().get(0).endFraction();
        ChargePoint before = charge.curve().get(0);
        for (ChargePoint point : charge.curve()) {
            if (point.fraction() >= share * end) {
                double part = (share * end - before.fraction()) / (point.fraction() - before.fraction());
                return before.timeS() + part * (point.timeS() - before.timeS());
            }
            before = point;
        }
        throw new IllegalStateException();
    }

    /** What is off, in percent; the bounds are what was found, to 0.2. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/charging/summary.csv", numLinesToSkip = 1)
    void timesAreWithinTheirResiduals(
            String set,
            double ratePerH,
            double temperatureC,
            double currentA,
            double holdV,
            double endA,
            double to80S,
            double to90S,
            double totalS,
            double totalAh,
            double energyWh) {
        StringCharge charge = charged(set, currentA, holdV, endA, 273.15 + temperatureC);
        Residuals bounds = Residuals.of(set, ratePerH, temperatureC);
        assertThat(percent(timeToShareS(charge, 0.8), to80S)).isBetween(bounds.to80[0], bounds.to80[1]);
        assertThat(percent(timeToShareS(charge, 0.9), to90S)).isBetween(bounds.to90[0], bounds.to90[1]);
        assertThat(percent(charge.timeToFullS().orElseThrow(), totalS)).isBetween(bounds.total[0], bounds.total[1]);
        assertThat(percent(charge.chargeC() / 3600, totalAh)).isBetween(-1.0, 1.9);
        assertThat(percent(charge.energyJ() / 3600, energyWh)).isBetween(-1.7, 1.6);
    }

    private record Residuals(double[] to80, double[] to90, double[] total) {
        private static Residuals of(
                double least80, double most80, double least90, double most90, double least, double most) {
            return new Residuals(
                    new double[] {least80, most80}, new double[] {least90, most90}, new double[] {least, most});
        }

        static Residuals of(String set, double ratePerH, double temperatureC) {
            boolean slow = ratePerH <= 0.5;
            boolean warm = temperatureC >= 20;
            return switch (set) {
                case "lco_ai2020" -> of(-0.1, 0.4, -0.6, 0.4, -5.5, 0.1);
                case "lfp_prada2013" -> of(-0.2, 0.1, -0.2, 0.1, -0.1, 0.9);
                case "nmc_chen2020" ->
                    warm ? of(-1.5, 0.2, -4.0, -0.2, -9.0, -4.1) : of(1.3, 12.4, 3.1, 12.2, 3.2, 8.6);
                case "nmc_okane2022" ->
                    slow
                            ? of(-0.8, 1.8, -2.9, 1.4, -6.1, 0.1)
                            : warm ? of(-1.9, 0.6, -5.1, -1.5, -9.5, -5.7) : of(-7.1, -3.6, -8.8, -6.6, -10.8, -10.0);
                case "nco_ecker2015" ->
                    slow || warm ? of(-1.3, -0.1, -8.9, -0.1, -11.9, 0.3) : of(-19.7, -4.8, -29.0, -16.0, -24.7, -18.1);
                default -> throw new IllegalArgumentException(set);
            };
        }
    }

    private static double percent(double ours, double theirs) {
        return 100 * (ours / theirs - 1);
    }

    /** The law of the cold against the largest rates without plating: two sets of one cell, from which it was made, and two
     * other cells. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/charging/plating_limit.csv", numLinesToSkip = 1)
    void theLawOfTheColdFollowsTheLimitOfPlating(String set, double temperatureC, double ratePerH) {
        double at25 = switch (set) {
            case "nmc_okane2022" -> 0.69;
            case "nmc_chen2020" -> 0.67;
            case "lfp_prada2013" -> 0.94;
            case "nco_ecker2015" -> 0.81;
            default -> throw new IllegalArgumentException(set);
        };
        double allowed = CellCare.coldFraction(273.15 + temperatureC, OptionalDouble.empty());
        assertThat(allowed).isCloseTo(ratePerH / at25, offset(set.startsWith("nmc") ? 0.05 : 0.08));
    }
}
