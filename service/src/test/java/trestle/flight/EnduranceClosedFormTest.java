package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trestle.atmosphere.AirState;

/** Endurance against closed forms that we worked out; see reference/endurance-closed-forms/README.md. */
class EnduranceClosedFormTest {
    /** Air of exactly 1.225 kg/m³, as the examples take it. */
    private static final AirState AIR = airOf(1.225);

    /** An aircraft in Traub's notation, from memory: 9.34 N, 0.32 m², C_D0 0.015, k 0.13, η 0.5. */
    private static final TestAircraft TRAUB = TestAircraft.mapper()
            .in(AIR)
            .reserve(0)
            .with(new Airframe(9.34 / GRAVITY_M_PER_S2, 0.32, 1, 1.3))
            .with(new PolarPower(new DragPolar(0.015, 0.13, 0), PropulsiveEfficiency.constant(0.5, 1, 1), 0));

    private static AirState airOf(double densityKgPerM3) {
        double gasConstant = 8314.32 / 28.9644;
        return new AirState(288.15, densityKgPerM3 * gasConstant * 288.15);
    }

    /** P_E 8.572 W at 9.00 m/s, P_R 9.770 W at 11.84 m/s: thrust powers, half of pack power. */
    @Test
    void speedsAndPowersOfTheTraubExample() {
        EnduranceResult result =
                TRAUB.with(new FixedEnergy(11.1 * TestAircraft.WATT_HOUR)).result();
        SpeedPoint slow = result.bestEndurance().orElseThrow();
        SpeedPoint fast = result.bestRange().orElseThrow();
        assertThat(slow.airspeedMPerS()).isCloseTo(9.00, within(0.005));
        assertThat(0.5 * slow.powerW()).isCloseTo(8.572, within(0.0005));
        assertThat(fast.airspeedMPerS()).isCloseTo(11.84, within(0.005));
        assertThat(0.5 * fast.powerW()).isCloseTo(9.770, within(0.0005));
        assertThat(slow.enduranceS() / 3600).isCloseTo(0.6474, within(0.00005));
        assertThat(fast.groundRangeM() / 1000).isCloseTo(24.22, within(0.005));
    }

    /**
     * With a store that follows Peukert's law, which the service's own packs do not, the same
     * calculation gives that theory's endurance. The range is counted at 11.84 m/s, as there; at
     * its own best airspeed the calculation finds a little more.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/endurance-closed-forms/peukert_endurance.csv", numLinesToSkip = 1)
    void enduranceOnAPeukertBattery(double capacityAh, double exponent, double enduranceH, double rangeKm) {
        double leastDragPerAirspeedMPerS = 11.8435;
        EnduranceResult result = TRAUB.with(new PeukertStore(11.1, capacityAh, exponent))
                .at(leastDragPerAirspeedMPerS)
                .result();
        assertThat(result.bestEndurance().orElseThrow().enduranceS() / 3600).isCloseTo(enduranceH, within(0.00005));
        double atKm = result.atAirspeed().orElseThrow().groundRangeM() / 1000;
        assertThat(atKm).isCloseTo(rangeKm, within(0.005));
        assertThat(result.bestRange().orElseThrow().groundRangeM() / 1000).isGreaterThanOrEqualTo(atKm - 1e-9);
    }

    /** R = e η (L/D) f / g: 180 Wh/kg, η 0.7, L/D 16, f 0.4: 296.03 km (equation from memory). */
    @Test
    void rangeAtConstantLiftToDrag() {
        double massKg = 5;
        double zeroLift = 0.025;
        double inducedFactor = 1 / (4 * 16 * 16 * zeroLift);
        EnduranceResult result = TestAircraft.mapper()
                .reserve(0)
                .with(new Airframe(massKg, 0.8, 3, 1.3))
                .with(new PolarPower(
                        new DragPolar(zeroLift, inducedFactor, 0), PropulsiveEfficiency.constant(0.7, 1, 1), 0))
                .with(new FixedEnergy(180 * TestAircraft.WATT_HOUR * 0.4 * massKg))
                .result();
        assertThat(result.bestRange().orElseThrow().groundRangeM() / 1000).isCloseTo(296.03, within(0.005));
        assertThat(result.radiusOfActionM().orElseThrow() / 1000).isCloseTo(296.03 / 2, within(0.005));
    }

    /** Endurance ∝ f sqrt(1 − f), greatest at f = 2/3. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/endurance-closed-forms/battery_fraction.csv", numLinesToSkip = 1)
    void enduranceOverTheBatterysShareOfTheMass(double fraction, double relative) {
        double restKg = 2;
        double massKg = restKg / (1 - fraction);
        double batteryKg = massKg - restKg;
        EnduranceResult result = TestAircraft.mapper()
                .reserve(0)
                // A wing that reaches the lift coefficient of least power above the floor.
                .with(new Airframe(massKg, 0.9, 3, 3))
                .with(new PolarPower(DragPolar.of(0.02, 0.8, 10), PropulsiveEfficiency.constant(0.6, 1, 1), 0))
                .with(new FixedEnergy(200 * TestAircraft.WATT_HOUR * batteryKg))
                .with(new CarriedPack(batteryKg, OptionalDouble.of(20 * restKg)))
                .result();
        PackOptimum optimum = result.packOptimum().orElseThrow();
        assertThat(optimum.packMassKg() / optimum.takeoffMassKg()).isCloseTo(2.0 / 3, within(1e-6));
        assertThat(result.bestEndurance().orElseThrow().enduranceS() / optimum.enduranceS())
                .isCloseTo(relative, within(0.00005));
    }
}
