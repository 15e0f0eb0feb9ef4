package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.numeric.ImpossibleValue;

class EnduranceTest {
    private static final TestAircraft MAPPER = TestAircraft.mapper();
    private static final OptionalDouble ITS_OWN = OptionalDouble.empty();

    private static List<String> codes(EnduranceResult result) {
        return result.judgement().findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(EnduranceResult result, String code) {
        return result.judgement().findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: C_L at 1.2 Vs is 1.3/1.44; drag, power and time follow. */
    @Test
    void smallestWorkedExample() {
        EnduranceResult result = MAPPER.result();
        double cl = 1.3 / 1.44;
        double k = 1 / (Math.PI * 0.8 * 10);
        double v = Math.sqrt(2 * 8 * GRAVITY_M_PER_S2 / (1.225 * 0.9 * cl));
        double dragN = 8 * GRAVITY_M_PER_S2 * (0.03 + k * cl * cl) / cl;
        double powerW = dragN * v / (0.65 * 0.85 * 0.95) + 12;
        SpeedPoint best = result.bestEndurance().orElseThrow();
        assertThat(best.airspeedMPerS()).isCloseTo(v, withPercentage(1e-3));
        assertThat(best.powerW()).isCloseTo(powerW, withPercentage(1e-3));
        assertThat(best.enduranceS()).isCloseTo(0.8 * 400 * 3600 / powerW, withPercentage(1e-3));
        assertThat(best.currentA()).isEmpty();
        assertThat(codes(result)).isEmpty();
    }

    @Test
    void systemsPowerMovesTheBestRangeUp() {
        PolarPower plain = (PolarPower) MAPPER.power();
        EnduranceResult without = MAPPER.with(new PolarPower(plain.polar(), plain.efficiency(), 0))
                .result();
        EnduranceResult with = MAPPER.with(new PolarPower(plain.polar(), plain.efficiency(), 60))
                .result();
        assertThat(with.bestRange().orElseThrow().airspeedMPerS())
                .isGreaterThan(1.05 * without.bestRange().orElseThrow().airspeedMPerS());
    }

    /** Range without systems power is at the closed form of the flattest glide. */
    @Test
    void bestRangeWithoutSystemsPowerIsTheFlattestGlide() {
        PolarPower plain = (PolarPower) MAPPER.power();
        DragPolar polar = new DragPolar(0.02, 0.06, 0);
        EnduranceResult result =
                MAPPER.with(new PolarPower(polar, plain.efficiency(), 0)).result();
        double v = LevelFlight.airspeedMPerS(8, 0.9, result.densityKgPerM3(), Math.sqrt(1.0 / 3));
        assertThat(result.bestRange().orElseThrow().airspeedMPerS()).isCloseTo(v, withPercentage(1e-3));
    }

    @Test
    void radiusIsHalfTheRangeInStillAirAndLessInWindEitherWay() {
        EnduranceResult still = MAPPER.result();
        double radiusM = still.radiusOfActionM().orElseThrow();
        assertThat(2 * radiusM).isCloseTo(still.bestRange().orElseThrow().groundRangeM(), withPercentage(1e-6));
        double against = MAPPER.headwind(6).result().radiusOfActionM().orElseThrow();
        double with = MAPPER.headwind(-6).result().radiusOfActionM().orElseThrow();
        assertThat(against).isLessThan(radiusM).isCloseTo(with, withPercentage(1e-9));
    }

    /** The radius flown as two cruises takes what is above the reserve, exactly. */
    @Test
    void theRadiusCanBeFlownOutAndBack() {
        TestAircraft windy = MAPPER.headwind(6);
        Extent radius = new Extent.Distance(windy.result().radiusOfActionM().orElseThrow());
        EnergyBudget energy = windy.flying(new Leg.Cruise(radius, 6, ITS_OWN), new Leg.Cruise(radius, -6, ITS_OWN))
                .result()
                .energy();
        assertThat(energy.leftJ()).isCloseTo(energy.reserveJ(), withPercentage(1e-6));
    }

    @Test
    void theRadiusOnASaggingPackIsNearTheFlownOne() {
        TestAircraft windy = MAPPER.with(new SaggingStore(0.2)).headwind(6);
        Extent radius = new Extent.Distance(windy.result().radiusOfActionM().orElseThrow());
        EnergyBudget energy = windy.flying(new Leg.Cruise(radius, 6, ITS_OWN), new Leg.Cruise(radius, -6, ITS_OWN))
                .result()
                .energy();
        assertThat(energy.leftJ() / energy.availableJ()).isCloseTo(0.2, within(0.003));
    }

    @Test
    void aPackIsAskedAboutTwentyTimesAndSagCounts() {
        SaggingStore store = new SaggingStore(0.2);
        EnduranceResult result = MAPPER.with(store)
                .at(20)
                .headwind(3)
                .with(new Battery(3, OptionalDouble.empty()))
                .flying(new Leg.Loiter(600, ITS_OWN))
                .result();
        assertThat(store.asked()).isLessThanOrEqualTo(25);
        SpeedPoint best = result.bestEndurance().orElseThrow();
        assertThat(best.currentA().orElseThrow()).isBetween(2.0, 4.0);
        assertThat(best.end()).isEqualTo(StoreEnd.CUTOFF);
        assertThat(result.energy().legs().get(0).lowestVoltageV().orElseThrow()).isBetween(45.0, 49.8);
        for (CurvePoint point : result.curve()) {
            double exactS =
                    0.8 * new SaggingStore(0.2).constantPower(point.powerW()).durationS();
            assertThat(point.enduranceS()).isCloseTo(exactS, withPercentage(0.1));
        }
    }

    @Test
    void aPackTooWeakForLevelFlightIsAStop() {
        EnduranceResult result = MAPPER.with(new SaggingStore(6)).result();
        assertThat(result.bestEndurance().orElseThrow().enduranceS()).isZero();
        assertThat(finding(result, "pack-power-limit").severity()).isEqualTo(Severity.STOP);
        assertThat(codes(result)).doesNotContain("headwind-not-overcome");
    }

    @Test
    void aPackThatHoldsOnlySlowFlightGivesNoTimeAboveItsLimit() {
        EnduranceResult result = MAPPER.with(new SaggingStore(3.3)).result();
        assertThat(result.bestEndurance().orElseThrow().enduranceS()).isPositive();
        assertThat(result.curve().get(39).enduranceS()).isZero();
    }

    @Test
    void anAirspeedBelowTheStallHasNoNumbersButAFinding() {
        EnduranceResult result = MAPPER.at(9).result();
        assertThat(result.atAirspeed()).isEmpty();
        Finding finding = finding(result, "stall-above-airspeed");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.message())
                .isEqualTo("9.0 m/s, the airspeed asked for, is below the stall speed of 10.5 m/s.");
    }

    @Test
    void anAirspeedNearTheStallIsThin() {
        EnduranceResult result = MAPPER.at(11.5).result();
        assertThat(result.atAirspeed()).isPresent();
        assertThat(codes(result)).containsExactly("stall-margin-thin");
    }

    @Test
    void anAirspeedThatDoesNotBeatTheWindMakesNoGround() {
        EnduranceResult result = MAPPER.headwind(15).at(14).result();
        assertThat(result.atAirspeed().orElseThrow().groundRangeM()).isZero();
        assertThat(result.atAirspeed().orElseThrow().energyPerGroundMJ()).isEmpty();
        assertThat(result.bestRange().orElseThrow().airspeedMPerS()).isGreaterThan(15);
        assertThat(codes(result)).contains("headwind-not-overcome");
    }

    @Test
    void aMeasuredCurveThatEndsBelowTheWindHasNoRange() {
        EnduranceResult result = MAPPER.with(measured()).headwind(25).result();
        assertThat(result.bestRange()).isEmpty();
        assertThat(result.radiusOfActionM()).isEmpty();
        assertThat(finding(result, "headwind-not-overcome").severity()).isEqualTo(Severity.STOP);
    }

    private static MeasuredPower measured() {
        PowerSource polar = MAPPER.power();
        double density = StandardAtmosphere.at(0).densityKgPerM3();
        List<MeasuredPoint> points =
                List.of(11.0, 12.0, 13.0, 14.0, 15.0, 16.0, 17.0, 18.0, 19.0, 20.0, 21.0, 22.0).stream()
                        .map(v -> new MeasuredPoint(v, polar.powerW(MAPPER.airframe(), density, v, 0)))
                        .toList();
        return new MeasuredPower(points, 8, density, 12, 0.65 * 0.85 * 0.95);
    }

    /**
     * Points read off a polar, flown at another mass and height, give the polar's numbers again.
     */
    @Test
    void aMeasuredCurveIsCarriedToAnotherMassAndDensity() {
        TestAircraft high = MAPPER.with(MAPPER.airframe().withMassKg(9.5)).in(StandardAtmosphere.at(2000));
        EnduranceResult fromPolar = high.result();
        EnduranceResult fromPoints = high.with(measured()).result();
        double v = fromPolar.bestRange().orElseThrow().airspeedMPerS();
        assertThat(high.with(measured())
                        .at(v)
                        .result()
                        .atAirspeed()
                        .orElseThrow()
                        .powerW())
                .isCloseTo(fromPolar.bestRange().orElseThrow().powerW(), withPercentage(0.1));
        assertThat(fromPoints.bestRange().orElseThrow().groundRangeM())
                .isCloseTo(fromPolar.bestRange().orElseThrow().groundRangeM(), withPercentage(0.2));
        assertThat(codes(fromPoints)).contains("thin-air");
    }

    @Test
    void aMeasuredCurveIsNotExtrapolatedSilently() {
        EnduranceResult result = MAPPER.with(measured()).at(24).result();
        assertThat(finding(result, "power-curve-extrapolated").limit().orElseThrow())
                .isCloseTo(22, within(1e-9));
        assertThat(result.atAirspeed().orElseThrow().powerW())
                .isGreaterThan(MAPPER.with(measured())
                        .at(22)
                        .result()
                        .atAirspeed()
                        .get()
                        .powerW());
        assertThat(codes(MAPPER.with(measured()).at(20).result())).doesNotContain("power-curve-extrapolated");
    }

    @Test
    void aMeasuredCurveBelowTheFloorRecommendsNothing() {
        MeasuredPower slow = new MeasuredPower(
                List.of(new MeasuredPoint(8, 90), new MeasuredPoint(11, 100)),
                8,
                StandardAtmosphere.at(0).densityKgPerM3(),
                0,
                0.5);
        EnduranceResult result =
                MAPPER.with(slow).flying(new Leg.Loiter(60, ITS_OWN)).result();
        assertThat(result.bestEndurance()).isEmpty();
        assertThat(codes(result)).contains("no-recommended-airspeed");
    }

    /** k3 = S C_D0 / (2 η), k1 = 2 g² K / (S η): the same aircraft in the log's constants. */
    @Test
    void aCalibrationGivesTheNumbersOfItsPolar() {
        double eta = 0.65 * 0.85 * 0.95;
        double k = 1 / (Math.PI * 0.8 * 10);
        CalibratedPower calibrated = new CalibratedPower(
                12,
                0.9 * 0.03 / (2 * eta),
                2 * GRAVITY_M_PER_S2 * GRAVITY_M_PER_S2 * k / (0.9 * eta),
                7,
                AirspeedRange.ALL,
                eta);
        TestAircraft high = MAPPER.in(StandardAtmosphere.at(1000));
        SpeedPoint one = high.result().bestRange().orElseThrow();
        SpeedPoint other = high.with(calibrated).result().bestRange().orElseThrow();
        assertThat(other.powerW()).isCloseTo(one.powerW(), withPercentage(1e-5));
        assertThat(other.airspeedMPerS()).isCloseTo(one.airspeedMPerS(), withPercentage(1e-3));
        assertThat(calibrated.powerW(high.airframe(), 1.1, 18, 2.5))
                .isCloseTo(high.power().powerW(high.airframe(), 1.1, 18, 2.5), withPercentage(1e-9));
        TestAircraft heavy = high.with(calibrated).with(high.airframe().withMassKg(10));
        assertThat(codes(heavy.result())).contains("calibration-mass-far");
    }

    @Test
    void aPropulsionThatStallsAtSpeedLimitsTheCurve() {
        PolarPower plain = (PolarPower) MAPPER.power();
        PropulsiveEfficiency weak = (v, thrustN) -> v < 17 ? 0.5 : 0;
        EnduranceResult result =
                MAPPER.with(new PolarPower(plain.polar(), weak, 12)).result();
        assertThat(result.curve()).isNotEmpty().allMatch(p -> p.airspeedMPerS() < 17);
        PropulsiveEfficiency dead = (v, thrustN) -> 0;
        EnduranceResult none =
                MAPPER.with(new PolarPower(plain.polar(), dead, 12)).result();
        assertThat(none.bestEndurance()).isEmpty();
        assertThat(codes(none)).contains("thrust-not-available");
    }

    /** m g h / η and level power for the time of the climb. */
    @Test
    void aClimbTakesLevelPowerAndTheLiftingOfTheWeight() {
        EnduranceResult result =
                MAPPER.flying(new Leg.Climb(120, 2, OptionalDouble.of(16))).result();
        double levelW = MAPPER.at(16).result().atAirspeed().orElseThrow().powerW();
        double liftingJ = 8 * GRAVITY_M_PER_S2 * 120 / (0.65 * 0.85 * 0.95);
        LegResult climb = result.energy().legs().get(0);
        assertThat(climb.energyJ()).isCloseTo(levelW * 60 + liftingJ, withPercentage(1e-6));
        assertThat(climb.groundDistanceM()).isCloseTo(60 * Math.sqrt(252), withPercentage(1e-6));
    }

    @Test
    void aDescentRunsTheSystemsInFull() {
        LegResult descent = MAPPER.flying(new Leg.Descent(120, 2, 0, ITS_OWN))
                .result()
                .energy()
                .legs()
                .get(0);
        assertThat(descent.powerW()).isCloseTo(12, within(1e-9));
    }

    @Test
    void thePlanThatIsTooLongNamesTheLegTheTimeAndWhatIsMissing() {
        EnduranceResult result = MAPPER.flying(
                        new Leg.Climb(120, 2, ITS_OWN),
                        new Leg.Cruise(new Extent.Distance(500_000), 0, ITS_OWN),
                        new Leg.Loiter(600, ITS_OWN))
                .result();
        Shortfall shortfall = result.energy().shortfall().orElseThrow();
        assertThat(shortfall.legIndex()).isEqualTo(1);
        assertThat(shortfall.intoReserveOnly()).isFalse();
        LegResult cruise = result.energy().legs().get(1);
        assertThat(shortfall.atS()).isBetween(cruise.startS(), cruise.endS());
        assertThat(cruise.status()).isEqualTo(LegStatus.RAN_OUT);
        assertThat(cruise.groundDistanceM()).isLessThan(500_000);
        assertThat(result.energy().legs().get(2).status()).isEqualTo(LegStatus.NOT_REACHED);
        Finding finding = finding(result, "leg-runs-out");
        assertThat(finding.subject().part()).isEqualTo(FlightPart.LEG);
        assertThat(finding.subject().indices()).containsExactly(1);
        assertThat(finding.message()).startsWith("The energy does not last through the plan: in leg 2,");
    }

    @Test
    void aPlanThatEndsOnTheReserveSaysSo() {
        double allS = MAPPER.result().bestEndurance().orElseThrow().enduranceS();
        assertThat(codes(MAPPER.flying(new Leg.Loiter(allS * 0.999, ITS_OWN)).result()))
                .isEmpty();
        EnduranceResult over =
                MAPPER.flying(new Leg.Loiter(allS * 1.1, ITS_OWN)).result();
        assertThat(codes(over)).containsExactly("leg-uses-reserve");
        assertThat(over.energy().legs().get(0).status()).isEqualTo(LegStatus.FLOWN);
        assertThat(over.energy().shortfall().orElseThrow().atS()).isCloseTo(allS, withPercentage(1e-6));
    }

    @Test
    void aClimbBeyondThePackNamesTheLegAndThePower() {
        EnduranceResult result = MAPPER.with(new SaggingStore(1.2))
                .flying(new Leg.Loiter(60, ITS_OWN), new Leg.Climb(200, 6, OptionalDouble.of(16)))
                .result();
        assertThat(result.bestEndurance().orElseThrow().enduranceS()).isPositive();
        Finding finding = finding(result, "pack-power-limit");
        assertThat(finding.subject().indices()).containsExactly(1);
        assertThat(finding.message()).startsWith("In leg 2, 1.0 min after the start, the pack can no longer give the");
        assertThat(codes(result)).doesNotContain("leg-runs-out");
    }

    @Test
    void aLegThatCannotBeFlownEndsThePlan() {
        EnduranceResult result = MAPPER.flying(
                        new Leg.Loiter(60, ITS_OWN),
                        new Leg.Cruise(new Extent.Distance(1000), 20, OptionalDouble.of(18)),
                        new Leg.Loiter(60, ITS_OWN))
                .result();
        assertThat(result.energy().legs())
                .extracting(LegResult::status)
                .containsExactly(LegStatus.FLOWN, LegStatus.NOT_FLYABLE, LegStatus.NOT_REACHED);
        assertThat(codes(result)).contains("headwind-not-overcome", "leg-not-flyable");
    }

    @Test
    void noReserveIsWorthAttention() {
        assertThat(finding(MAPPER.reserve(0).result(), "reserve-zero").severity())
                .isEqualTo(Severity.ATTENTION);
        assertThat(codes(MAPPER.reserve(0.1).result())).containsExactly("reserve-thin");
    }

    /** With systems power the longest flight wants more battery than two thirds. */
    @Test
    void theBestBatteryMovesUpWithSystemsPowerAndStopsAtTheMassLimit() {
        BatteryOptimum free = MAPPER.with(new Battery(2.5, OptionalDouble.empty()))
                .result()
                .batteryOptimum()
                .orElseThrow();
        assertThat(free.batteryMassKg() / free.takeoffMassKg()).isGreaterThan(2.0 / 3);
        BatteryOptimum limited = MAPPER.with(new Battery(2.5, OptionalDouble.of(10)))
                .result()
                .batteryOptimum()
                .orElseThrow();
        assertThat(limited.atMassLimit()).isTrue();
        assertThat(limited.takeoffMassKg()).isCloseTo(10, within(1e-9));
        assertThat(limited.enduranceS()).isLessThan(free.enduranceS());
        assertThat(MAPPER.with(new Battery(2.5, OptionalDouble.of(5))).result().batteryOptimum())
                .isEmpty();
    }

    /** At the mass that is flown now, the sizing gives the endurance that is flown now. */
    @Test
    void aMassLimitAtTheMassOfNowGivesTheEnduranceOfNow() {
        EnduranceResult result =
                MAPPER.with(new Battery(2.5, OptionalDouble.of(8))).result();
        assertThat(result.batteryOptimum().orElseThrow().enduranceS())
                .isCloseTo(result.bestEndurance().orElseThrow().enduranceS(), withPercentage(1e-6));
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> new Airframe(0, 1, 3, 1.2)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() ->
                        MAPPER.with(new Battery(8, OptionalDouble.empty())).result())
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new MeasuredPower(
                        List.of(new MeasuredPoint(12, 50), new MeasuredPoint(12, 60)), 8, 1.2, 0, 0.5))
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> PropulsiveEfficiency.constant(1.2, 1, 1)).isInstanceOf(ImpossibleValue.class);
    }
}
