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
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
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
                .with(new CarriedPack(3, OptionalDouble.empty()))
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
                .isEqualTo(
                        "9.0 m/s, the airspeed asked for, is below the stall speed of 10.5 m/s: fly 12.6 m/s or more, 1.2"
                                + " times the stall speed (common practice).");
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
        assertThat(finding.message())
                .startsWith(
                        "In leg 2 (cruise), 2 h 41 min after take-off, the energy ends: the plan with its reserve takes");
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
        assertThat(finding.message())
                .startsWith("In leg 2 (climb), 60 s after take-off, the pack can no longer give the");
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
        assertThat(codes(result)).containsExactly("headwind-not-overcome");
        EnduranceResult steep = MAPPER.flying(new Leg.Climb(100, 20, ITS_OWN)).result();
        assertThat(codes(steep)).containsExactly("leg-not-flyable");
    }

    @Test
    void noReserveIsWorthAttention() {
        assertThat(finding(MAPPER.reserve(0).result(), "reserve-zero").severity())
                .isEqualTo(Severity.ATTENTION);
        assertThat(codes(MAPPER.reserve(0.1).result())).containsExactly("reserve-thin");
    }

    /** A climb after a long cruise: it is its sag that ends the flight, with energy left, and it is that leg. */
    @Test
    void aLateClimbThatSagsToTheCutoffIsNamedAsSuch() {
        Leg cruise = new Leg.Cruise(new Extent.Duration(10_000), 0, OptionalDouble.of(14));
        EnduranceResult result = MAPPER.with(new SaggingStore(0.35))
                .flying(cruise, new Leg.Climb(3000, 3, OptionalDouble.of(16)))
                .result();
        Shortfall shortfall = result.energy().shortfall().orElseThrow();
        assertThat(shortfall.legIndex()).isEqualTo(1);
        assertThat(shortfall.leftAtBestEnduranceJ())
                .isGreaterThan(0.03 * result.energy().availableJ());
        Finding finding = finding(result, "leg-sags-to-cutoff");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.subject().indices()).containsExactly(1);
        assertThat(finding.message())
                .contains("In leg 2 (climb), ", "the pack sags to its cutoff at 37.", "left for slow flight");
        assertThat(codes(result)).doesNotContain("leg-runs-out");
    }

    @Test
    void aPackWithoutAMassLimitHasNoOptimum() {
        assertThat(MAPPER.with(new CarriedPack(2.5, OptionalDouble.empty()))
                        .result()
                        .packOptimum())
                .isEmpty();
    }

    @Test
    void oneSlowAirspeedIsSaidOnceForAllItsLegs() {
        Leg slow = new Leg.Cruise(new Extent.Duration(60), 0, OptionalDouble.of(11.5));
        EnduranceResult result = MAPPER.at(11.5).flying(slow, slow, slow).result();
        assertThat(codes(result)).containsExactly("stall-margin-thin");
        assertThat(result.judgement().checks())
                .filteredOn(c -> c.code().equals("stall-margin"))
                .hasSize(4)
                .allMatch(c -> c.outcome() == Outcome.ATTENTION);
    }

    @Test
    void anEfficiencyAboveOneIsNoted() {
        PolarPower plain = (PolarPower) MAPPER.power();
        DragPolar published = DragPolar.of(0.03, 1.278, 10);
        EnduranceResult result =
                MAPPER.with(new PolarPower(published, plain.efficiency(), 12)).result();
        assertThat(finding(result, "oswald-efficiency-high").severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void theListOfChecksIsTheSameWhateverComesOut() {
        Leg leg = new Leg.Loiter(60, ITS_OWN);
        assertThat(checks(MAPPER.with(new SaggingStore(0.2)).flying(leg).result()))
                .isEqualTo(checks(MAPPER.with(new SaggingStore(6)).flying(leg).result()));
        PolarPower plain = (PolarPower) MAPPER.power();
        PropulsiveEfficiency dead = (v, thrustN) -> 0;
        assertThat(checks(MAPPER.with(new PolarPower(plain.polar(), dead, 12))
                        .flying(leg)
                        .result()))
                .isEqualTo(checks(MAPPER.flying(leg).result()));
    }

    private static List<String> checks(EnduranceResult result) {
        return result.judgement().checks().stream().map(Check::code).toList();
    }

    /** With systems power the longest flight wants more pack than two thirds. */
    @Test
    void theBestPackMovesUpWithSystemsPowerAndStopsAtTheMassLimit() {
        PackOptimum free = MAPPER.with(new CarriedPack(2.5, OptionalDouble.of(200)))
                .result()
                .packOptimum()
                .orElseThrow();
        assertThat(free.packMassKg() / free.takeoffMassKg()).isGreaterThan(2.0 / 3);
        PackOptimum limited = MAPPER.with(new CarriedPack(2.5, OptionalDouble.of(10)))
                .result()
                .packOptimum()
                .orElseThrow();
        assertThat(limited.atMassLimit()).isTrue();
        assertThat(limited.takeoffMassKg()).isCloseTo(10, within(1e-9));
        assertThat(limited.enduranceS()).isLessThan(free.enduranceS());
        assertThat(MAPPER.with(new CarriedPack(2.5, OptionalDouble.of(5)))
                        .result()
                        .packOptimum())
                .isEmpty();
    }

    /** At the mass that is flown now, the sizing gives the endurance that is flown now. */
    @Test
    void aMassLimitAtTheMassOfNowGivesTheEnduranceOfNow() {
        EnduranceResult result =
                MAPPER.with(new CarriedPack(2.5, OptionalDouble.of(8))).result();
        assertThat(result.packOptimum().orElseThrow().enduranceS())
                .isCloseTo(result.bestEndurance().orElseThrow().enduranceS(), withPercentage(1e-6));
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> new Airframe(0, 1, 3, 1.2)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() ->
                        MAPPER.with(new CarriedPack(8, OptionalDouble.empty())).result())
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new MeasuredPower(
                        List.of(new MeasuredPoint(12, 50), new MeasuredPoint(12, 60)), 8, 1.2, 0, 0.5))
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> PropulsiveEfficiency.constant(1.2, 1, 1)).isInstanceOf(ImpossibleValue.class);
    }
}
