package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;

/** Launch, glide and turn against closed forms of mechanics; nothing published. */
class LaunchClosedFormTest {
    private static final LaunchSetting THROWN = LaunchSetting.thrown();
    private static final double MASS_KG = 5;

    /** No drag, thrust constant: v = v0 + (T / m) t. */
    @Test
    void constantThrustWithoutDragGainsSpeedEvenly() {
        double release = 1.1 * THROWN.stallMPerS();
        LaunchFlight launch = THROWN.with(LaunchSetting.NO_DRAG)
                .with((Thrust) v -> 12)
                .with(new Launch.Hand(release, 0, 2))
                .result()
                .launch();
        assertThat(launch.timeToClimbSpeedS().orElseThrow())
                .isCloseTo(0.2 * THROWN.stallMPerS() / (12 / MASS_KG), within(1e-6));
        assertThat(launch.heightLostM()).isCloseTo(0, within(1e-9));
    }

    /** The motor delay passes at constant speed without drag. */
    @Test
    void aMotorDelayIsAddedToTheTime() {
        LaunchSetting setting = THROWN.with(LaunchSetting.NO_DRAG)
                .with((Thrust) v -> 12)
                .with(new Launch.Hand(1.1 * THROWN.stallMPerS(), 0, 2));
        double at = setting.result().launch().timeToClimbSpeedS().orElseThrow();
        double later =
                setting.motorDelay(0.8).result().launch().timeToClimbSpeedS().orElseThrow();
        assertThat(later - at).isCloseTo(0.8, within(0.002));
    }

    /** Half a unit of the last digit; see reference/launch-closed-forms/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/launch-closed-forms/wind_over_height.csv", numLinesToSkip = 1)
    void windOverHeightByTheLogarithmicLaw(String terrain, double heightM, double referenceM, double share) {
        double roughnessM = Terrain.valueOf(terrain.toUpperCase(Locale.ROOT)).roughnessM();
        assertThat(WindProfile.logarithmicShare(heightM, referenceM, roughnessM))
                .isCloseTo(share, within(0.00005));
    }

    /** By hand: 1 / ln(1.8 / 0.03), 24 % over grass. */
    @Test
    void turbulenceOverGrass() {
        assertThat(WindProfile.turbulenceIntensity(1.8, 0.03)).isCloseTo(0.2442, within(0.00005));
    }

    /** Half a unit of the last digit; see reference/launch-closed-forms/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/launch-closed-forms/cord.csv", numLinesToSkip = 1)
    void aCordWithoutDragOrFriction(
            double stiffness, double stretchM, double speed, double forceN, double loadFactor, double energyJ) {
        LaunchFlight launch = cord(stiffness, stretchM).result().launch();
        double half = speed > 50 ? 0.005 : 0.0005;
        assertThat(launch.releaseAirspeedMPerS()).isCloseTo(speed, within(half));
        assertThat(launch.loads().hookForceN().orElseThrow()).isCloseTo(forceN, within(1e-9));
        assertThat(launch.loads().peakLoadFactor()).isCloseTo(loadFactor, within(loadFactor > 10 ? 0.005 : 0.0005));
        assertThat(launch.loads().cordEnergyJ().orElseThrow()).isCloseTo(energyJ, within(1e-9));
    }

    /** By hand: x = 13.8 sqrt(7.1 / (0.8 · 14)), for a stall at 13.8 / 1.1. */
    @Test
    void theStretchThatIsNeeded() {
        LaunchSetting cord = cord(14, 9);
        Needed needed = Needed.of(cord.task(), 13.8 / 1.1);
        assertThat(needed.stretchM().orElseThrow()).isCloseTo(10.988, within(0.0005));
    }

    private static LaunchSetting cord(double stiffness, double stretchM) {
        return THROWN.with(LaunchSetting.NO_DRAG)
                .with(THROWN.airframe().withMassKg(6.9))
                .with(new Launch.Bungee(stiffness, stretchM, 0.6, 0.8, 0, 0, 0.5));
    }

    /** By hand: 45² / (2 · 2 · 9.80665); the rail for 5 g at its peak, 45² · 1.5 / (2 · 5 · 9.80665). */
    @Test
    void aCatapultPullsByItsRail() {
        LaunchAndClimbResult result =
                THROWN.with(new Launch.Catapult(45, 2, 0, 1)).result();
        assertThat(result.launch().loads().meanLoadFactor()).isCloseTo(51.62, within(0.005));
        assertThat(result.judgement().findings())
                .filteredOn(f -> f.code().equals("launch-acceleration-high"))
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .endsWith("above 5.0 g (common practice): take 31.0 m of rail, or release at 11.4 m/s."));
    }

    /** Constant force T − μ m g: s = m' v² / (2 F), t = m' v / F. */
    @Test
    void groundRunUnderConstantForce() {
        double v = 1.3 * THROWN.stallMPerS();
        double movingKg = MASS_KG + 1.5;
        double forceN = 20 - 0.05 * movingKg * GRAVITY_M_PER_S2;
        LaunchFlight launch = THROWN.with(LaunchSetting.NO_DRAG)
                .with((Thrust) airspeed -> 20)
                .with(new Launch.Dolly(new LiftOff.Airspeed(v), 0.05, 0, 1.5, 0.3))
                .result()
                .launch();
        assertThat(launch.groundRunM().orElseThrow()).isCloseTo(movingKg * v * v / (2 * forceN), withPercentage(1e-4));
        assertThat(launch.runTimeS()).isCloseTo(movingKg * v / forceN, withPercentage(1e-4));
        assertThat(launch.meanAccelerationMPerS2().orElseThrow()).isCloseTo(forceN / movingKg, withPercentage(1e-4));
        assertThat(launch.outcome()).isEqualTo(LaunchOutcome.CLIMB_SPEED_REACHED);
    }

    /** Headwind w leaves v − w to be gained: s shrinks by ((v − w) / v)². */
    @Test
    void headwindShortensTheGroundRunByTheSquare() {
        LaunchSetting still = THROWN.with(LaunchSetting.NO_DRAG)
                .with((Thrust) airspeed -> 20)
                .with(new Launch.Dolly(new LiftOff.Airspeed(14), 0.05, 0, 0, 0.3));
        double run = still.result().launch().groundRunM().orElseThrow();
        double against = still.headwind(5).result().launch().groundRunM().orElseThrow();
        assertThat(against / run).isCloseTo(Math.pow(9.0 / 14, 2), within(1e-6));
    }

    /**
     * Energy of the cord less height and friction is kinetic energy of aircraft and a third of the
     * cord; then no drag and no motor, so energy holds.
     */
    @Test
    void bungeeGivesTheEnergyOfTheCord() {
        double k = 60;
        double stretch = 6;
        double slope = Math.toRadians(10);
        LaunchFlight launch = THROWN.with(LaunchSetting.NO_DRAG)
                .with(new Launch.Bungee(k, stretch, 0.9, 0.85, 0.1, slope, 1.5))
                .result()
                .launch();
        double energyJ = 0.85 * 0.5 * k * stretch * stretch
                - MASS_KG * GRAVITY_M_PER_S2 * stretch * (Math.sin(slope) + 0.1 * Math.cos(slope));
        assertThat(launch.releaseAirspeedMPerS())
                .isCloseTo(Math.sqrt(2 * energyJ / (MASS_KG + 0.3)), withPercentage(1e-4));
        assertThat(launch.groundRunM().orElseThrow()).isCloseTo(stretch, within(1e-6));
    }

    /** Without friction the pull is a quarter of an oscillation: t = (π / 2) sqrt(m / k). */
    @Test
    void bungeeTakesAQuarterOfAnOscillation() {
        LaunchFlight launch = THROWN.with(LaunchSetting.NO_DRAG)
                .with(new Launch.Bungee(60, 6, 0, 1, 0, 0, 1.5))
                .result()
                .launch();
        assertThat(launch.runTimeS()).isCloseTo(Math.PI / 2 * Math.sqrt(MASS_KG / 60), withPercentage(1e-4));
    }

    @Test
    void catapultAccelerationIsThatOfItsRail() {
        LaunchFlight launch = THROWN.with(new Launch.Catapult(15, 3, Math.toRadians(8), 1))
                .result()
                .launch();
        assertThat(launch.meanAccelerationMPerS2().orElseThrow()).isCloseTo(15.0 * 15 / (2 * 3), within(1e-9));
    }

    /**
     * Along the path the energy changes by thrust less drag only: d(V²/2 + g h)/dt = (T − D) V / m.
     */
    @Test
    void liftDoesNoWork() {
        LaunchSetting still = THROWN.with(LaunchSetting.NO_DRAG).with((Thrust) v -> 0);
        FlightPath path = new FlightPath(still.task(), 15);
        double[][] states = {{5, 9, -2}, {5, 14, 3}, {5, 3, -6}, {5, 20, -0.5}};
        for (double[] state : states) {
            double[] rate = path.computeDerivatives(1, state);
            double work = state[1] * rate[1] + state[2] * rate[2] + GRAVITY_M_PER_S2 * rate[0];
            assertThat(work).isCloseTo(0, within(1e-8));
        }
        // An aircraft without airspeed falls freely.
        assertThat(path.computeDerivatives(1, new double[] {5, 0, 0})[2]).isCloseTo(-GRAVITY_M_PER_S2, within(1e-5));
    }

    /**
     * A fall from rest without lift takes sqrt(2 h / g); with a wing it does not take less, and it
     * ends in the ground.
     */
    @Test
    void anAircraftLetGoWithoutSpeedFalls() {
        LaunchFlight launch = THROWN.with((Thrust) v -> 0)
                .with(new Launch.Hand(0, 0, 1.8))
                .result()
                .launch();
        assertThat(launch.outcome()).isEqualTo(LaunchOutcome.GROUND);
        assertThat(launch.heightLostM()).isEqualTo(1.8);
        assertThat(launch.marginFraction()).isEqualTo(-1);
    }

    /** Least sink of a plain polar that the wing reaches: C_L sqrt(3 C_D0 / K), 3^(−1/4) slower. */
    @Test
    void leastSinkIsAtTheClosedForm() {
        Airframe airframe = new Airframe(5, 0.6, 2.4, 3);
        Glide glide = Glide.of(airframe, DragPolar.of(0.02, 0.8, 9.6), 1.225);
        assertThat(glide.leastSinkAirspeedMPerS() / glide.bestRatioAirspeedMPerS())
                .isCloseTo(Math.pow(3, -0.25), within(1e-9));
        assertThat(glide.leastSinkMPerS() / (glide.bestRatioAirspeedMPerS() / glide.bestRatio()))
                .isCloseTo(0.8774, within(5e-5));
    }
}
