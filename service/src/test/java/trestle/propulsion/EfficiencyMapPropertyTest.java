package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The map says what the drive itself says. */
class EfficiencyMapPropertyTest {
    private static final double MOST_OFF_PERCENT = 0.25;

    /** Near full throttle switching stops, which bends the power within one step of the map. */
    private static final double NEAR_FULL_THROTTLE = 0.8;

    private static final double MOST_OFF_NEAR_FULL_THROTTLE_PERCENT = 0.7;

    @Property(tries = 150)
    void mapAndDriveAgreeWhereverTheDriveReaches(
            @ForAll @DoubleRange(min = 11, max = 19) double diameterIn,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double pitchRatio,
            @ForAll @DoubleRange(min = 0.15, max = 0.95) double airspeedShare,
            @ForAll @DoubleRange(min = 0.03, max = 0.99) double thrustShare) {
        PowerTrain train = train(diameterIn, pitchRatio);
        double airspeed = airspeedShare * FlightSpeeds.zeroThrustMPerS(train, 1).orElseThrow();
        double thrustN = thrustShare * train.thrustN(airspeed).orElseThrow();
        assertThat(EfficiencyMap.of(train).total(airspeed, thrustN))
                .isCloseTo(
                        train.efficiency(airspeed, thrustN).orElseThrow().total(),
                        withinPercentage(
                                thrustShare < NEAR_FULL_THROTTLE
                                        ? MOST_OFF_PERCENT
                                        : MOST_OFF_NEAR_FULL_THROTTLE_PERCENT));
    }

    @Property(tries = 100)
    void moreThrustThanTheDriveHasGetsNothing(
            @ForAll @DoubleRange(min = 11, max = 19) double diameterIn,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double airspeedShare) {
        PowerTrain train = train(diameterIn, 0.6);
        double airspeed = airspeedShare * FlightSpeeds.zeroThrustMPerS(train, 1).orElseThrow();
        double mostN = Math.max(0, train.thrustN(airspeed).orElse(0));
        assertThat(EfficiencyMap.of(train).total(airspeed, 1.005 * mostN + 0.01))
                .isZero();
    }

    private static PowerTrain train(double diameterIn, double pitchRatio) {
        return PowerTrain.of(Drives.with(Drives.propeller(diameterIn, pitchRatio * diameterIn)), Drives.AIR);
    }
}
