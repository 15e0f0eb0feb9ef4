package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trestle.atmosphere.StandardAtmosphere;

class LaunchAndClimbPropertyTest {
    private static final int TRIES = 100;

    private static LaunchSetting hand(double massKg, double throwMPerS, double thrustToWeight) {
        LaunchSetting thrown = LaunchSetting.thrown();
        return thrown.with(thrown.airframe().withMassKg(massKg))
                .with(new LinearThrust(thrustToWeight * massKg * 9.8, 30))
                .with(new Launch.Hand(throwMPerS, 0, 1.8));
    }

    @Property(tries = TRIES)
    void aFasterThrowNeverLosesMoreHeight(
            @ForAll @DoubleRange(min = 2, max = 12) double massKg,
            @ForAll @DoubleRange(min = 3, max = 15) double throwMPerS,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        double slow = hand(massKg, throwMPerS, 0.6).result().launch().heightLostM();
        double fast = hand(massKg, throwMPerS + more, 0.6).result().launch().heightLostM();
        assertThat(fast).isLessThanOrEqualTo(slow + 1e-6);
    }

    @Property(tries = TRIES)
    void headwindActsLikeAFasterThrow(
            @ForAll @DoubleRange(min = 2, max = 12) double massKg,
            @ForAll @DoubleRange(min = 3, max = 12) double throwMPerS,
            @ForAll @DoubleRange(min = 0, max = 6) double wind) {
        LaunchFlight windy =
                hand(massKg, throwMPerS, 0.6).headwind(wind).result().launch();
        LaunchFlight fast = hand(massKg, throwMPerS + wind, 0.6).result().launch();
        assertThat(windy.heightLostM()).isEqualTo(fast.heightLostM());
        assertThat(windy.timeToClimbSpeedS()).isEqualTo(fast.timeToClimbSpeedS());
    }

    @Property(tries = TRIES)
    void moreThrustNeverLosesMoreHeight(
            @ForAll @DoubleRange(min = 2, max = 12) double massKg,
            @ForAll @DoubleRange(min = 0.2, max = 1) double thrustToWeight,
            @ForAll @DoubleRange(min = 0, max = 0.5) double more) {
        double weak = hand(massKg, 8, thrustToWeight).result().launch().heightLostM();
        double strong = hand(massKg, 8, thrustToWeight + more).result().launch().heightLostM();
        assertThat(strong).isLessThanOrEqualTo(weak + 1e-6);
    }

    @Property(tries = TRIES)
    void aLaunchAlwaysEndsWithFiniteNumbers(
            @ForAll @DoubleRange(min = 0.5, max = 40) double massKg,
            @ForAll @DoubleRange(min = 0, max = 60) double speed,
            @ForAll @DoubleRange(min = 0, max = 1) double angleRad,
            @ForAll @DoubleRange(min = -30, max = 30) double headwind,
            @ForAll @DoubleRange(min = 0, max = 3) double thrustToWeight,
            @ForAll @DoubleRange(min = 0, max = 5000) double altitudeM) {
        LaunchAndClimbResult result = hand(massKg, 8, thrustToWeight)
                .with(new Launch.Hand(speed, angleRad, 1.5))
                .headwind(headwind)
                .in(StandardAtmosphere.at(altitudeM))
                .result();
        LaunchFlight launch = result.launch();
        assertThat(launch.heightLostM()).isBetween(0.0, 1.5);
        assertThat(launch.releaseAirspeedMPerS()).isFinite().isNotNegative();
        assertThat(launch.marginFraction()).isFinite();
        launch.timeToClimbSpeedS().ifPresent(s -> assertThat(s).isBetween(0.0, 10.0));
        assertThat(launch.timeToClimbSpeedS().isPresent())
                .isEqualTo(launch.outcome() == LaunchOutcome.CLIMB_SPEED_REACHED);
        assertThat(result.climb().rateMPerS()).isFinite();
    }

    @Property(tries = TRIES)
    void aHeavierDollyNeverShortensTheRun(
            @ForAll @DoubleRange(min = 3, max = 20) double massKg,
            @ForAll @DoubleRange(min = 0, max = 3) double dollyKg,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double rolling) {
        LaunchSetting setting = LaunchSetting.thrown()
                .with(LaunchSetting.thrown().airframe().withMassKg(massKg))
                .with(new LinearThrust(0.8 * massKg * 9.8, 40));
        double v = 1.2 * setting.stallMPerS();
        double light = setting.with(new Launch.Dolly(new LiftOff.Airspeed(v), rolling, 0.3, 0, 0.3))
                .result()
                .launch()
                .groundRunM()
                .orElseThrow();
        double heavy = setting.with(new Launch.Dolly(new LiftOff.Airspeed(v), rolling, 0.3, dollyKg, 0.3))
                .result()
                .launch()
                .groundRunM()
                .orElseThrow();
        assertThat(heavy).isGreaterThanOrEqualTo(light - 1e-9);
    }

    @Property(tries = TRIES)
    void aLullIsNeverAboveTheMeanNorTheMeanAboveTheWindHigherUp(
            @ForAll @DoubleRange(min = -20, max = 20) double speed,
            @ForAll @DoubleRange(min = 5, max = 150) double heightM,
            @ForAll @DoubleRange(min = 0.1, max = 5) double releaseM,
            @ForAll Terrain terrain) {
        LaunchWind wind = new LaunchWind(speed, heightM, terrain, OptionalDouble.empty(), false);
        double mean = wind.meanMPerS(releaseM);
        assertThat(wind.lullMPerS(releaseM)).isLessThanOrEqualTo(mean);
        assertThat(mean).isLessThanOrEqualTo(Math.max(0, speed));
        assertThat(Math.abs(mean)).isLessThanOrEqualTo(Math.abs(speed) + 1e-12);
    }
}
