package trestle.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.battery.ChargingCell;
import trestle.battery.LinearCells;
import trestle.battery.Pack;
import trestle.battery.Surroundings;

/**
 * Charges of a cell that is a straight line and a resistor, {@code U = 3.4 + 0.8 z V}, 30 mΩ, 4.9 Ah, held at 4.2 V down
 * to 0.245 A: {@code z1 = (Vh − R I − U0) / k}, {@code t = 3600 Q (z1 − z0) / I}, {@code τ = 3600 R Q / k}, hold {@code τ
 * ln(I / Ie)}. Nothing published.
 */
class ChargeClosedFormTest {
    private static StringCharge charged(
            double startFraction, Charger charger, double setA, ChargeTarget target, int count) {
        Pack pack = LinearCells.pack(count);
        ChargeTask task = new ChargeTask(
                pack,
                Surroundings.of(298.15, trestle.battery.Covering.BARE),
                Connection.IN_SERIES,
                charger,
                OptionalDouble.of(setA),
                target,
                OptionalDouble.of(4.2),
                0.245 / (4.9 * 3600),
                0,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        List<ChargingCell> cells = LinearCells.charging(pack, startFraction, 0.06);
        return new ChargeRun(
                        task,
                        java.util.stream.IntStream.range(0, count).boxed().toList(),
                        cells,
                        Double.POSITIVE_INFINITY)
                .run();
    }

    private static Charger charger(OptionalDouble powerW, boolean balances) {
        return new Charger(
                OptionalDouble.empty(), powerW, OptionalDouble.empty(), OptionalInt.empty(), 1, 1, balances, 0.3);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 2.45, 5818.5, 7341.7, 0.990813, 17.0529, 0.30743",
        "0.1, 4.9, 2578.5, 4560.2, 0.990813, 17.3274, 0.58193",
        "0.1, 1.2, 12568.5, 13619.5, 0.990813, 16.9001, NaN",
        "0.5, 4.9, 1138.5, 3120.2, 0.990813, 9.9049, NaN"
    })
    void constantCurrentThenConstantVoltage(
            double from, double currentA, double constantS, double totalS, double end, double energyWh, double heatWh) {
        StringCharge charge = charged(from, charger(OptionalDouble.empty(), true), currentA, ChargeTarget.FULL, 1);
        assertThat(charge.constantCurrentS()).isCloseTo(constantS, offset(0.5));
        assertThat(charge.timeToFullS().orElseThrow()).isCloseTo(totalS, offset(totalS * 5e-4));
        assertThat(charge.segments().get(0).endFraction()).isCloseTo(end, offset(1e-4));
        assertThat(charge.energyJ() / 3600).isCloseTo(energyWh, offset(2e-3));
        if (heatWh > 0) {
            assertThat(charge.heatJ() / 3600).isCloseTo(heatWh, offset(1e-3));
        }
    }

    /** {@code t = 3600 Q / P ∫ ½ (U + √(U² + 4 R P)) dz}. */
    @Test
    void constantPower() {
        StringCharge charge = charged(
                0.1,
                charger(OptionalDouble.of(8), true),
                20,
                new ChargeTarget(ChargeTarget.Kind.STATE_OF_CHARGE, 0.9),
                1);
        assertThat(charge.timeToTargetS().orElseThrow()).isCloseTo(6813.06, offset(1.5));
        assertThat(charge.limit()).isEqualTo(LimitedBy.CHARGER_POWER);
    }

    /** The fuller of two cells goes over, as the string is held as a whole. */
    @Test
    void aStringWithoutABalancerPushesTheFullerCellOver() {
        StringCharge charge = charged(0.1, charger(OptionalDouble.empty(), false), 2.45, ChargeTarget.FULL, 2);
        assertThat(charge.segments().get(1).highestCellV()).isCloseTo(4.224, offset(1e-3));
        assertThat(charge.segments().get(0).endCellV()).isCloseTo(4.176, offset(1e-3));
        assertThat(charge.segments().get(1).endCellV()).isCloseTo(4.224, offset(1e-3));
    }

    @Test
    void aBalancerHoldsTheFullerCell() {
        StringCharge charge = charged(0.1, charger(OptionalDouble.empty(), true), 2.45, ChargeTarget.FULL, 2);
        assertThat(charge.segments().get(1).highestCellV()).isLessThan(4.2001);
    }
}
