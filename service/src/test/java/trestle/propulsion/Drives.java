package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Finding;
import trestle.units.Length;
import trestle.units.Rotation;

/** Drives that tests turn: an aircraft of 8 kg with 0.9 m² of wing, a 16 x 8 in propeller, 24 V. */
final class Drives {
    static final AirState AIR = StandardAtmosphere.at(0);
    static final double MASS_KG = 8;
    static final double CRUISE_M_PER_S = 15;

    private Drives() {}

    static Motor motor() {
        return new Motor(
                Rotation.radPerSFromRpm(320),
                0.05,
                1.2,
                OptionalDouble.of(20),
                OptionalDouble.of(60),
                OptionalDouble.of(1300));
    }

    static Controller controller() {
        return new Controller(80, 26, 0.003);
    }

    static Propeller propeller(double diameterIn, double pitchIn) {
        return Propeller.ofSize(Length.mFromIn(diameterIn), Length.mFromIn(pitchIn), 2, BladeType.EFFICIENT);
    }

    static Supply pack() {
        return pack(24.5, 0.04);
    }

    static Supply pack(double openVoltageV, double resistanceOhm) {
        return new Supply(
                VoltageSource.behindResistance(openVoltageV, resistanceOhm),
                25.2,
                OptionalDouble.of(60),
                OptionalDouble.of(18));
    }

    static PropulsionSystem system() {
        return new PropulsionSystem(motor(), controller(), propeller(16, 8), 1, pack());
    }

    static PropulsionSystem with(Propeller propeller) {
        return new PropulsionSystem(motor(), controller(), propeller, 1, pack());
    }

    static PropulsionSystem with(Supply supply) {
        return new PropulsionSystem(motor(), controller(), propeller(16, 8), 1, supply);
    }

    static PropulsionSystem with(Motor motor) {
        return new PropulsionSystem(motor, controller(), propeller(16, 8), 1, pack());
    }

    static PropulsionSystem with(Controller controller) {
        return new PropulsionSystem(motor(), controller, propeller(16, 8), 1, pack());
    }

    /** Parasitic and induced drag, the second by weight squared. */
    static double dragN(double airspeedMPerS, double zeroLiftCoefficient) {
        double wingAreaM2 = 0.9;
        double pressureArea = 0.5 * AIR.densityKgPerM3() * airspeedMPerS * airspeedMPerS * wingAreaM2;
        double weightN = MASS_KG * StandardAtmosphere.GRAVITY_M_PER_S2;
        return zeroLiftCoefficient * pressureArea + weightN * weightN / (pressureArea * Math.PI * 0.8 * 10);
    }

    static PropulsionTask task(PropulsionSystem system) {
        return task(system, 0.028);
    }

    static PropulsionTask task(PropulsionSystem system, double zeroLiftCoefficient) {
        return new PropulsionTask(
                system,
                AIR,
                Optional.of(new CruiseDemand(CRUISE_M_PER_S, v -> dragN(v, zeroLiftCoefficient))),
                OptionalDouble.of(MASS_KG),
                List.of());
    }

    /** The one finding of a code. */
    static Finding only(PropulsionMatch match, String code) {
        List<Finding> found = match.judgement().findings().stream()
                .filter(f -> f.code().equals(code))
                .toList();
        assertThat(found)
                .describedAs("%s in %s", code, match.judgement().findings())
                .hasSize(1);
        return found.get(0);
    }
}
