package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.units.FluxDensity;

/** Fields of straight wires; see reference/straight-wire-fields/README.md. */
class CompassClearanceReferenceTest {

    /** MG01: 4.00 A at 20.6 cm, 3.88 µT. */
    @Test
    void fieldOfOneWireIsReproduced() {
        double distanceM = Math.hypot(0.20, 0.05);
        assertThat(FluxDensity.utFromT(Conductor.fieldT(4, distanceM))).isCloseTo(3.88, within(0.005));
    }

    /** MG03: 18 A and 5.4 A opposed, midway in 0.15 m, 62.4 µT. */
    @Test
    void opposedCurrentsAddBetweenTheWires() {
        double fieldT = Conductor.fieldT(18, 0.075) - Conductor.fieldT(5.4, -0.075);
        assertThat(FluxDensity.utFromT(fieldT)).isCloseTo(62.4, within(0.05));
    }

    /** MG04: midway between equal opposed currents, 2 µ0 I / (π s). */
    @Test
    void fieldMidwayBetweenThePairIsReproduced() {
        double magneticConstant = 4e-7 * Math.PI;
        double currentA = 7;
        double separationM = 0.04;
        assertThat(Math.abs(Conductor.pairFieldT(currentA, separationM, 0)))
                .isCloseTo(2 * magneticConstant * currentA / (Math.PI * separationM), within(1e-15));
    }

    /** MG05: 10 mA, 2.00 m apart, midway: 0 along, 4.0 nT opposed. */
    @Test
    void currentsAlongCancelMidwayAndOpposedOnesAdd() {
        double along = Conductor.fieldT(0.01, 1) + Conductor.fieldT(0.01, -1);
        assertThat(along).isZero();
        assertThat(Math.abs(Conductor.pairFieldT(0.01, 2, 0))).isCloseTo(4.0e-9, within(5e-11));
    }

    /** MG06: 100 µT at 5.0 cm is the field of 25 A. */
    @Test
    void currentOfAFieldIsReproduced() {
        assertThat(Conductor.fieldT(25, 0.05)).isCloseTo(1.0e-4, within(5e-7));
    }

    /** MG07: 50 A, 5 mm apart, 100 mm off: one wire 100.0 µT, the pair 5.0031, far field 5.000. */
    @Test
    void fieldOfAReturnPairIsReproduced() {
        assertThat(FluxDensity.utFromT(Conductor.fieldT(50, 0.1))).isCloseTo(100.0, within(0.05));
        LeadRun run = new LeadRun("pack", 50, 0.005, false, 0.1, OptionalDouble.empty());
        CompassTask task = new CompassTask(
                List.of(run), CompassTask.USUAL_EARTH_HORIZONTAL_T, CompassTask.USUAL_ALLOWED_ERROR_RAD);
        Disturbance found = CompassClearance.of(task).runs().get(0);
        assertThat(FluxDensity.utFromT(found.fieldT())).isCloseTo(5.0031, within(5e-5));
        assertThat(found.fieldT()).isCloseTo(5.000e-6, within(5e-9));
        // By hand: 5.0031 of 20 µT is atan 0.25016 = 14.04°.
        assertThat(Math.toDegrees(found.headingErrorRad())).isCloseTo(14.04, within(5e-3));
    }
}
