package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trestle.atmosphere.StandardAtmosphere;

class EndurancePropertyTest {
    private static final int TRIES = 150;

    private static TestAircraft aircraft(
            double massKg, double areaM2, double zeroLift, double systemsW, double altitudeM) {
        Airframe airframe = new Airframe(massKg, areaM2, 3, 1.3);
        return TestAircraft.mapper()
                .with(airframe)
                .with(new PolarPower(
                        DragPolar.of(zeroLift, 0.8, airframe.aspectRatio()),
                        PropulsiveEfficiency.constant(0.6, 0.85, 0.95),
                        systemsW))
                .in(StandardAtmosphere.at(altitudeM));
    }

    private static double rangeM(TestAircraft aircraft) {
        return aircraft.result().bestRange().map(SpeedPoint::groundRangeM).orElse(0.0);
    }

    @Property(tries = TRIES)
    void moreHeadwindIsNeverALongerWay(
            @ForAll @DoubleRange(min = 3, max = 25) double massKg,
            @ForAll @DoubleRange(min = 0, max = 100) double systemsW,
            @ForAll @DoubleRange(min = -20, max = 20) double headwind,
            @ForAll @DoubleRange(min = 0, max = 30) double more) {
        TestAircraft aircraft = aircraft(massKg, 0.9, 0.03, systemsW, 0);
        assertThat(rangeM(aircraft.headwind(headwind + more)))
                .isLessThanOrEqualTo(rangeM(aircraft.headwind(headwind)) * (1 + 1e-9));
    }

    @Property(tries = TRIES)
    void heavierIsNeverASlowerStallNorALongerFlight(
            @ForAll @DoubleRange(min = 3, max = 20) double massKg,
            @ForAll @DoubleRange(min = 0, max = 5) double more,
            @ForAll @DoubleRange(min = 0, max = 3000) double altitudeM) {
        EnduranceResult light = aircraft(massKg, 0.9, 0.03, 10, altitudeM).result();
        EnduranceResult heavy =
                aircraft(massKg + more, 0.9, 0.03, 10, altitudeM).result();
        assertThat(heavy.stallSpeedMPerS()).isGreaterThanOrEqualTo(light.stallSpeedMPerS());
        assertThat(heavy.bestEndurance().orElseThrow().enduranceS())
                .isLessThanOrEqualTo(light.bestEndurance().orElseThrow().enduranceS() * (1 + 1e-9));
    }

    @Property(tries = TRIES)
    void bestRangeIsNeverFlownSlowerThanBestEnduranceInStillAir(
            @ForAll @DoubleRange(min = 3, max = 25) double massKg,
            @ForAll @DoubleRange(min = 0.4, max = 1.6) double areaM2,
            @ForAll @DoubleRange(min = 0.01, max = 0.08) double zeroLift,
            @ForAll @DoubleRange(min = 0, max = 200) double systemsW) {
        EnduranceResult result = aircraft(massKg, areaM2, zeroLift, systemsW, 0).result();
        assertThat(result.bestRange().orElseThrow().airspeedMPerS())
                .isGreaterThanOrEqualTo(result.bestEndurance().orElseThrow().airspeedMPerS() * (1 - 1e-6));
    }

    @Property(tries = TRIES)
    void noPointOfTheCurveAboveTheFloorBeatsTheBest(
            @ForAll @DoubleRange(min = 3, max = 25) double massKg,
            @ForAll @DoubleRange(min = 0.01, max = 0.08) double zeroLift,
            @ForAll @DoubleRange(min = 0, max = 12) double headwind) {
        EnduranceResult result =
                aircraft(massKg, 0.9, zeroLift, 15, 500).headwind(headwind).result();
        SpeedPoint longest = result.bestEndurance().orElseThrow();
        SpeedPoint furthest = result.bestRange().orElseThrow();
        assertThat(result.curve()).hasSize(40);
        for (CurvePoint point : result.curve()) {
            if (point.airspeedMPerS() >= result.leastRecommendedAirspeedMPerS()) {
                assertThat(point.powerW()).isGreaterThanOrEqualTo(longest.powerW() * (1 - 1e-9));
                assertThat(point.groundRangeM()).isLessThanOrEqualTo(furthest.groundRangeM() * (1 + 1e-9));
            }
        }
    }

    /** For the plain polar the floor, or the closed form of least power, is found exactly. */
    @Property(tries = TRIES)
    void bestEnduranceIsTheClosedFormOrTheFloor(
            @ForAll @DoubleRange(min = 3, max = 25) double massKg,
            @ForAll @DoubleRange(min = 0.01, max = 0.08) double zeroLift,
            @ForAll @DoubleRange(min = 0, max = 200) double systemsW) {
        EnduranceResult result = aircraft(massKg, 0.9, zeroLift, systemsW, 0).result();
        double closed = LevelFlight.airspeedMPerS(
                massKg,
                0.9,
                result.densityKgPerM3(),
                DragPolar.of(zeroLift, 0.8, 10).leastPowerLiftCoefficient());
        assertThat(result.bestEndurance().orElseThrow().airspeedMPerS())
                .isCloseTo(Math.max(closed, result.leastRecommendedAirspeedMPerS()), withPercentage(1e-4));
    }

    @Property(tries = TRIES)
    void energyIsConservedOverTheLegs(
            @ForAll @DoubleRange(min = 50, max = 400) double heightM,
            @ForAll @DoubleRange(min = 1, max = 150) double distanceKm,
            @ForAll @DoubleRange(min = 1, max = 90) double loiterMin,
            @ForAll @DoubleRange(min = 0, max = 1) double descentPower) {
        double energyJ = 400 * TestAircraft.WATT_HOUR;
        EnergyBudget energy = TestAircraft.mapper()
                .flying(
                        new Leg.Climb(heightM, 2, OptionalDouble.empty()),
                        new Leg.Cruise(new Extent.Distance(1000 * distanceKm), 3, OptionalDouble.empty()),
                        new Leg.Loiter(60 * loiterMin, OptionalDouble.empty()),
                        new Leg.Descent(heightM, 1.5, descentPower, OptionalDouble.empty()))
                .result()
                .energy();
        double takenJ = energy.legs().stream().mapToDouble(LegResult::energyJ).sum();
        assertThat(takenJ + energy.leftJ()).isCloseTo(energyJ, withPercentage(1e-9));
        assertThat(energy.availableJ()).isCloseTo(energyJ, withPercentage(1e-9));
        double missingJ = energy.shortfall().map(Shortfall::missingJ).orElse(0.0);
        assertThat(energy.plannedJ() - missingJ).isLessThanOrEqualTo(0.8 * energyJ * (1 + 1e-9));
        if (energy.shortfall().isPresent()) {
            assertThat(energy.plannedJ() - missingJ).isCloseTo(0.8 * energyJ, within(1e-3));
        }
        double timeS = 0;
        for (LegResult leg : energy.legs()) {
            assertThat(leg.startS()).isCloseTo(timeS, within(1e-6));
            timeS = leg.endS();
        }
    }

    @Property(tries = TRIES)
    void allNumbersAreFinite(
            @ForAll @DoubleRange(min = 0.2, max = 60) double massKg,
            @ForAll @DoubleRange(min = 0.05, max = 3) double areaM2,
            @ForAll @DoubleRange(min = -100, max = 100) double headwind,
            @ForAll @DoubleRange(min = 1, max = 100) double airspeed,
            @ForAll @DoubleRange(min = -1000, max = 20_000) double altitudeM)
            throws ReflectiveOperationException {
        EnduranceResult result = aircraft(massKg, areaM2, 0.03, 0, altitudeM)
                .headwind(headwind)
                .at(airspeed)
                .with(new CarriedPack(0.3 * massKg, OptionalDouble.of(1.5 * massKg)))
                .flying(
                        new Leg.Climb(100, 3, OptionalDouble.empty()),
                        new Leg.Cruise(new Extent.Duration(600), headwind, OptionalDouble.of(airspeed)),
                        new Leg.Descent(100, 2, 0, OptionalDouble.empty()))
                .result();
        assertFinite(result);
    }

    private static void assertFinite(Object value) throws ReflectiveOperationException {
        if (value instanceof Double number) {
            assertThat(number).isFinite();
        } else if (value instanceof OptionalDouble maybe) {
            maybe.ifPresent(number -> assertThat(number).isFinite());
        } else if (value instanceof Optional<?> maybe) {
            if (maybe.isPresent()) {
                assertFinite(maybe.get());
            }
        } else if (value instanceof List<?> list) {
            for (Object element : list) {
                assertFinite(element);
            }
        } else if (value instanceof Record of) {
            for (RecordComponent component : of.getClass().getRecordComponents()) {
                assertFinite(component.getAccessor().invoke(of));
            }
        }
    }
}
