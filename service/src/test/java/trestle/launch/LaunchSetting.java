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
        double headwindMPerS,
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
                0,
                new Launch.Hand(9.5, 0, 1.8),
                0,
                Turn.ofBankRad(Math.toRadians(45)));
    }

    LaunchStallTask task() {
        return new LaunchStallTask(
                airframe, polar, thrust, air, headwindMPerS, launch, motorDelayS, turn, OptionalDouble.empty());
    }

    LaunchStallResult result() {
        return LaunchStall.of(task());
    }

    double stallMPerS() {
        return airframe.stallSpeedMPerS(air.densityKgPerM3());
    }

    LaunchSetting with(DragPolar other) {
        return new LaunchSetting(airframe, other, thrust, air, headwindMPerS, launch, motorDelayS, turn);
    }

    LaunchSetting with(Thrust other) {
        return new LaunchSetting(airframe, polar, other, air, headwindMPerS, launch, motorDelayS, turn);
    }

    LaunchSetting with(Launch other) {
        return new LaunchSetting(airframe, polar, thrust, air, headwindMPerS, other, motorDelayS, turn);
    }

    LaunchSetting with(Airframe other) {
        return new LaunchSetting(other, polar, thrust, air, headwindMPerS, launch, motorDelayS, turn);
    }

    LaunchSetting in(AirState other) {
        return new LaunchSetting(airframe, polar, thrust, other, headwindMPerS, launch, motorDelayS, turn);
    }

    LaunchSetting headwind(double other) {
        return new LaunchSetting(airframe, polar, thrust, air, other, launch, motorDelayS, turn);
    }

    LaunchSetting motorDelay(double other) {
        return new LaunchSetting(airframe, polar, thrust, air, headwindMPerS, launch, other, turn);
    }
}
