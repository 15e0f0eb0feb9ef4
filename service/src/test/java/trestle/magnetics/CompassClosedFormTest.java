package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Basis;
import trestle.units.FluxDensity;

/** Fields of wires and pairs against {@code B = µ0 I / (2 π r)} by hand; nothing published. */
class CompassClosedFormTest {

    /** 4 A at the root of 20² + 5² cm: 3.8806 µT by hand. */
    @Test
    void fieldOfOneWire() {
        assertThat(FluxDensity.utFromT(Conductor.fieldT(4, Math.hypot(0.20, 0.05))))
                .isCloseTo(3.8806, within(5e-5));
    }

    /** 18 A and 5.4 A opposed, midway in 0.15 m: 62.4 µT by hand. */
    @Test
    void opposedCurrentsAddBetweenTheWires() {
        double fieldT = Conductor.fieldT(18, 0.075) - Conductor.fieldT(5.4, -0.075);
        assertThat(FluxDensity.utFromT(fieldT)).isCloseTo(62.4, within(0.05));
    }

    /** Midway between equal opposed currents: 2 µ0 I / (π s). */
    @Test
    void fieldMidwayBetweenThePair() {
        double magneticConstant = 4e-7 * Math.PI;
        double currentA = 7;
        double separationM = 0.04;
        assertThat(Math.abs(Conductor.pairFieldT(currentA, separationM, 0)))
                .isCloseTo(2 * magneticConstant * currentA / (Math.PI * separationM), within(1e-15));
    }

    /** Equal currents along cancel midway; of 10 mA, 2 m apart and opposed, 4 nT are left. */
    @Test
    void currentsAlongCancelMidwayAndOpposedOnesAdd() {
        double along = Conductor.fieldT(0.01, 1) + Conductor.fieldT(0.01, -1);
        assertThat(along).isZero();
        assertThat(Math.abs(Conductor.pairFieldT(0.01, 2, 0))).isCloseTo(4.0e-9, within(5e-11));
    }

    /** 50 A, 5 mm apart, 100 mm off: one wire 100.0 µT, the pair 5.0031, far field 5.000. */
    @Test
    void fieldOfAReturnPair() {
        assertThat(FluxDensity.utFromT(Conductor.fieldT(50, 0.1))).isCloseTo(100.0, within(0.05));
        LeadRun run = new LeadRun("pack", 50, OptionalDouble.empty(), 0.005, false, 0.1, OptionalDouble.empty());
        CompassTask task = new CompassTask(
                List.of(run),
                CompassTask.USUAL_EARTH_HORIZONTAL_T,
                CompassTask.USUAL_ALLOWED_ERROR_RAD,
                Basis.COMMON_PRACTICE);
        Disturbance found = CompassClearance.of(task).cruise().runs().get(0);
        assertThat(FluxDensity.utFromT(found.fieldT())).isCloseTo(5.0031, within(5e-5));
        assertThat(found.fieldT()).isCloseTo(5.000e-6, within(5e-9));
        // By hand: asin(5.0031/20) is 0.252841 rad, 14.4867°.
        assertThat(Math.toDegrees(found.headingErrorRad().orElseThrow())).isCloseTo(14.4867, within(1e-4));
    }
}
