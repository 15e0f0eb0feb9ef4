package trestle.launch;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;

/** A 5 kg aircraft of 2.4 m span, thrown with a head start, to vary in tests. */
record LaunchSetting(
        Airframe airframe,
        DragPolar polar,
        Thrust thrust,
        AirState air,
        LaunchWind wind,
        LaunchLimits limits,
        Launch launch,
        double motorDelayS,
        Turn turn) {

    /** No drag to speak of, for closed forms. */
    static final DragPolar NO_DRAG = new DragPolar(1e-12, 1e-12, 0);

    static LaunchSetting thrown() {
        Airframe airframe = new Airframe(5, 0.6, 2.4, 1.3);
        return new LaunchSetting(
                airframe,
                DragPolar.of(0.035, 0.8, airframe.aspectRatio()),
                new LinearThrust(30, 28),
                StandardAtmosphere.at(0),
                LaunchWind.STILL,
                LaunchLimits.NONE,
                new Launch.Hand(9.5, 0, 1.8),
                0,
                Turn.ofBankRad(Math.toRadians(45)));
    }

    LaunchAndClimbTask task() {
        return new LaunchAndClimbTask(
                airframe, polar, thrust, air, wind, launch, limits, motorDelayS, turn, OptionalDouble.empty());
    }

    LaunchAndClimbResult result() {
        return LaunchAndClimb.of(task());
    }

    double stallMPerS() {
        return airframe.stallSpeedMPerS(air.densityKgPerM3());
    }

    LaunchSetting with(DragPolar other) {
        return new LaunchSetting(airframe, other, thrust, air, wind, limits, launch, motorDelayS, turn);
    }

    LaunchSetting with(Thrust other) {
        return new LaunchSetting(airframe, polar, other, air, wind, limits, launch, motorDelayS, turn);
    }

    LaunchSetting with(Launch other) {
        return new LaunchSetting(airframe, polar, thrust, air, wind, limits, other, motorDelayS, turn);
    }

    LaunchSetting with(Airframe other) {
        return new LaunchSetting(other, polar, thrust, air, wind, limits, launch, motorDelayS, turn);
    }

    LaunchSetting in(AirState other) {
        return new LaunchSetting(airframe, polar, thrust, other, wind, limits, launch, motorDelayS, turn);
    }

    /** Steady wind at the height of release: neither profile nor lull. */
    LaunchSetting headwind(double speedMPerS) {
        return with(new LaunchWind(speedMPerS, launch.releaseHeightM(), Terrain.OPEN, OptionalDouble.of(0), false));
    }

    LaunchSetting with(LaunchWind other) {
        return new LaunchSetting(airframe, polar, thrust, air, other, limits, launch, motorDelayS, turn);
    }

    LaunchSetting with(LaunchLimits other) {
        return new LaunchSetting(airframe, polar, thrust, air, wind, other, launch, motorDelayS, turn);
    }

    LaunchSetting motorDelay(double other) {
        return new LaunchSetting(airframe, polar, thrust, air, wind, limits, launch, other, turn);
    }
}
