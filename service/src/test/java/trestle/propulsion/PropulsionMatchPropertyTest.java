package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.units.Rotation;

class PropulsionMatchPropertyTest {

    /**
     * Sound or absurd, a drive gets an answer: finite numbers, and a reason for each absent one.
     */
    @Property(tries = 150)
    void everyDriveGetsAFiniteAnswer(
            @ForAll @DoubleRange(min = 20, max = 3000) double rpmPerV,
            @ForAll @DoubleRange(min = 0, max = 2) double motorOhm,
            @ForAll @DoubleRange(min = 0, max = 20) double noLoadA,
            @ForAll @DoubleRange(min = 3, max = 60) double diameterIn,
            @ForAll @DoubleRange(min = 0.05, max = 3) double pitchRatio,
            @ForAll @IntRange(min = 1, max = 8) int blades,
            @ForAll BladeType type,
            @ForAll @IntRange(min = 1, max = 8) int motors,
            @ForAll @DoubleRange(min = 1, max = 100) double packV,
            @ForAll @DoubleRange(min = 0, max = 5) double packOhm,
            @ForAll @DoubleRange(min = 0, max = 15_000) double altitudeM,
            @ForAll @DoubleRange(min = 0.01, max = 10) double dragCoefficient) {
        Motor motor = new Motor(
                Rotation.radPerSFromRpm(rpmPerV),
                motorOhm,
                noLoadA,
                OptionalDouble.empty(),
                OptionalDouble.of(50),
                OptionalDouble.of(1000));
        Propeller propeller = Propeller.ofSize(diameterIn * 0.0254, pitchRatio * diameterIn * 0.0254, blades, type);
        Supply supply = new Supply(
                VoltageSource.behindResistance(packV, packOhm), packV, OptionalDouble.of(50), OptionalDouble.empty());
        PropulsionTask task = new PropulsionTask(
                new PropulsionSystem(motor, Drives.controller(), propeller, motors, supply),
                StandardAtmosphere.at(altitudeM),
                Optional.of(new CruiseDemand(14, v -> Drives.dragN(v, dragCoefficient))),
                OptionalDouble.of(8),
                List.of(0.0, 5.0, 40.0));

        PropulsionMatch match = PropulsionMatch.of(task);

        DrivePerformance drive = match.performance();
        drive.curve().forEach(p -> assertThat(numbers(p)).allMatch(Double::isFinite));
        drive.cruise().ifPresent(p -> assertThat(numbers(p)).allMatch(Double::isFinite));
        assertThat(match.judgement().findings())
                .allMatch(f -> Double.isFinite(f.value().orElse(0) + f.limit().orElse(0)))
                .noneMatch(f -> f.message().contains("NaN") || f.message().contains("Infinity"));
        if (drive.atRest().isEmpty() || drive.cruise().isEmpty()) {
            assertThat(match.judgement().findings())
                    .extracting(Finding::severity)
                    .contains(Severity.STOP);
        }
    }

    private static List<Double> numbers(OperatingPoint p) {
        return DoubleStream.of(
                        p.throttleFraction(),
                        p.rotationRadPerS(),
                        p.advanceRatio(),
                        p.thrustN(),
                        p.torqueNm(),
                        p.shaftPowerW(),
                        p.motorCurrentA(),
                        p.motorVoltageV(),
                        p.supplyCurrentA(),
                        p.supplyVoltageV(),
                        p.tipMachRatio(),
                        p.efficiency().total(),
                        p.idealPropellerEfficiency())
                .boxed()
                .toList();
    }
}
