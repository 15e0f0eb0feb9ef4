package trestle.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Logs that were made from known numbers give those numbers back. */
class FlightLogClosedFormTest {
    private static final Flown FLOWN = new Flown(
            OptionalDouble.of(SyntheticFlight.MASS_KG), SyntheticFlight.SYSTEMS_W, SyntheticFlight.DENSITY, 0.5);

    private static FlightLog read(Telemetry log) {
        return FlightLog.of(log, FLOWN).orElseThrow();
    }

    @Test
    void aNoisyFlightGivesItsDragItsWindAndItsPackBack() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.gapFromS = 600;
        flight.gapToS = 608;
        FlightLog log = read(flight.made());

        PowerFit fit = log.curve().fit().orElseThrow();
        assertThat(fit.parasiteAreaM2())
                .isCloseTo(SyntheticFlight.PARASITE_M2, within(0.05 * SyntheticFlight.PARASITE_M2));
        assertThat(fit.inducedFactorPerS4())
                .isCloseTo(SyntheticFlight.INDUCED_PER_S4, within(0.05 * SyntheticFlight.INDUCED_PER_S4));
        Wind wind = log.wind().flatMap(WindFit::wind).orElseThrow();
        assertThat(wind.speedMPerS()).isCloseTo(SyntheticFlight.WIND_M_PER_S, within(0.5));
        assertThat(Math.toDegrees(wind.fromRad())).isCloseTo(SyntheticFlight.WIND_FROM_DEG, within(10.0));
        assertThat(log.resistance().orElseThrow().resistanceOhm())
                .isCloseTo(SyntheticFlight.RESISTANCE_OHM, within(0.05 * SyntheticFlight.RESISTANCE_OHM));
        assertThat(log.screened().gaps()).hasSize(1);
        assertThat(log.screened().gapS()).isCloseTo(8, within(0.3));
    }

    @Test
    void whatTheFitSaysOfItselfHoldsTheTruth() {
        PowerFit fit = read(new SyntheticFlight().made()).curve().fit().orElseThrow();
        for (double v = 13; v <= 21; v++) {
            double off = Math.abs(fit.powerW(v, SyntheticFlight.DENSITY) - SyntheticFlight.powerW(v));
            assertThat(off).isLessThan(0.03 * SyntheticFlight.powerW(v));
            assertThat(fit.deviationW(v, SyntheticFlight.DENSITY)).isLessThan(0.03 * SyntheticFlight.powerW(v));
        }
        assertThat(fit.correlation()).isNegative();
    }

    @Test
    void withoutNoiseEnergyIsThatOfTheMaker() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.noise = 0;
        FlightLog log = read(flight.made());
        assertThat(log.totals().energyJ()).isCloseTo(flight.trueEnergyJ, within(1e-3 * flight.trueEnergyJ));
        assertThat(log.totals().coveredS()).isCloseTo(1799.9, within(1e-6));
        assertThat(log.totals().jumpCount()).isZero();
    }

    @Test
    void windWithoutAirspeedIsTheCentreOfTheCircle() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.airspeeds = new double[] {16};
        Wind wind = read(flight.made(Channel.AIRSPEED))
                .wind()
                .flatMap(WindFit::wind)
                .orElseThrow();
        assertThat(wind.byAirspeed()).isFalse();
        assertThat(wind.speedMPerS()).isCloseTo(SyntheticFlight.WIND_M_PER_S, within(0.5));
        assertThat(Math.toDegrees(wind.fromRad())).isCloseTo(SyntheticFlight.WIND_FROM_DEG, within(10.0));
    }

    @Test
    void aWindSeenFromOneSideIsNotClaimed() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.turnsEveryS = 1e9;
        WindFit fit = read(flight.made()).wind().orElseThrow();
        assertThat(fit.wind()).isEmpty();
        assertThat(fit.coverageRad()).isLessThan(WindFit.LEAST_COVERAGE_RAD);
    }

    @Test
    void noiseAboutOneVelocityIsNoCircle() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.turnsEveryS = 1e9;
        assertThat(read(flight.made(Channel.AIRSPEED)).wind().orElseThrow().wind())
                .isEmpty();
    }

    @Test
    void manyAirspeedsAreNoCircleEither() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.airspeeds = new double[] {8, 20, 9, 21, 12, 18};
        assertThat(read(flight.made(Channel.AIRSPEED)).wind().orElseThrow().wind())
                .isEmpty();
    }

    @Test
    void oneSpeedGivesItsMeanPowerAndNoCurve() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.airspeeds = new double[] {16};
        PowerCurve curve = read(flight.made()).curve();
        assertThat(curve.fit()).isEmpty();
        assertThat(curve.why()).isEqualTo(PowerCurve.Reason.ONE_SPEED);
        assertThat(curve.mean().orElseThrow().powerW())
                .isCloseTo(SyntheticFlight.powerW(16), within(0.02 * SyntheticFlight.powerW(16)));
    }

    @Test
    void rowsOutOfOrderTwiceAndAfterARestartAreLeftOutAndCounted() {
        double[] time = new double[103];
        for (int i = 0; i < time.length; i++) {
            time[i] = i < 60 ? i : i - 60;
        }
        time[10] = 9;
        time[20] = 3;
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        columns.put(Channel.VOLTAGE, constant(24, time.length));
        columns.put(Channel.CURRENT, constant(10, time.length));
        Screened screened = read(Telemetry.of(time, columns)).screened();
        assertThat(screened.duplicateCount()).isEqualTo(1);
        assertThat(screened.outOfOrderCount()).isEqualTo(1);
        assertThat(screened.restartCount()).isEqualTo(1);
        assertThat(screened.otherStretchCount()).isEqualTo(43);
        assertThat(screened.rows().count()).isEqualTo(58);
    }

    @Test
    void aSensorThatStandsStillWhileOthersMoveIsFound() {
        Telemetry made = new SyntheticFlight().made();
        double[] time = new double[made.count()];
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        for (Channel channel : made.channels()) {
            columns.put(channel, new double[made.count()]);
        }
        for (int i = 0; i < time.length; i++) {
            time[i] = made.timeS(i);
            for (Channel channel : made.channels()) {
                columns.get(channel)[i] = made.at(channel, i);
            }
            if (time[i] > 300 && time[i] < 360) {
                columns.get(Channel.AIRSPEED)[i] = 15.5;
            }
        }
        assertThat(read(Telemetry.of(time, columns)).screened().frozen())
                .singleElement()
                .satisfies(frozen -> {
                    assertThat(frozen.channel()).isEqualTo(Channel.AIRSPEED);
                    assertThat(frozen.startS()).isCloseTo(300, within(0.2));
                });
    }

    @Test
    void nothingIsAddedUpAcrossAGap() {
        SyntheticFlight flight = new SyntheticFlight();
        flight.noise = 0;
        flight.gapFromS = 600;
        flight.gapToS = 700;
        assertThat(read(flight.made()).totals().coveredS()).isCloseTo(1799.9 - 100, within(0.3));
    }

    @Test
    void oneRowIsNoFlight() {
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        columns.put(Channel.VOLTAGE, constant(24, 1));
        columns.put(Channel.CURRENT, constant(10, 1));
        assertThat(FlightLog.of(Telemetry.of(new double[] {0}, columns), FLOWN)).isEmpty();
    }

    private static double[] constant(double value, int count) {
        double[] values = new double[count];
        java.util.Arrays.fill(values, value);
        return values;
    }
}
