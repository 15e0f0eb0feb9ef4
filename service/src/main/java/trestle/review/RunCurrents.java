package trestle.review;

import java.util.Optional;
import trestle.atmosphere.AirState;
import trestle.flight.SpeedPoint;
import trestle.joint.PackSource;
import trestle.wiring.CurrentPeak;
import trestle.wiring.Flight;
import trestle.wiring.WireDuty;
import trestle.wiring.WirePlan;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/**
 * What this aircraft puts through its wires.
 *
 * @param cruise the flight that continuous currents are taken from; empty where none can be flown
 * @param fullThrottle where peak currents are taken from; empty where it is not known
 * @param fullThrottleDurationS how long full throttle is held, s
 * @param massKg take-off mass, kg
 * @param packVoltageV voltage at the supply end of runs that give none, V
 * @param source the packs as what a plug or a short meets
 * @param air the air
 * @param altitudeM geopotential altitude, m
 */
record RunCurrents(
        Optional<SpeedPoint> cruise,
        Optional<FullThrottle> fullThrottle,
        double fullThrottleDurationS,
        double massKg,
        double packVoltageV,
        PackSource source,
        AirState air,
        double altitudeM) {

    RunReview review(InstalledRun run) {
        WirePlan plan = run.currentA().isEmpty()
                ? run.plan().pluggedAs(run.plan().plug().behind(source.fullVoltageV(), source.resistanceOhm()))
                : run.plan();
        WireTask task = plan.task(duty(run), air.temperatureK(), altitudeM);
        return new RunReview(run.currentA().isEmpty(), task, WireSizing.of(task));
    }

    private WireDuty duty(InstalledRun run) {
        boolean pack = run.currentA().isEmpty();
        double currentA = run.currentA().orElseGet(this::cruiseCurrentA);
        return new WireDuty(
                currentA,
                pack ? peak(currentA) : run.peak(),
                run.supplyVoltageV().orElse(packVoltageV),
                pack,
                flight());
    }

    /**
     * Current of cruise; where the store has none, power over voltage; nothing where none flies.
     */
    private double cruiseCurrentA() {
        return cruise.map(point -> point.currentA().orElse(point.powerW() / packVoltageV))
                .orElse(0.0);
    }

    private Optional<CurrentPeak> peak(double currentA) {
        return fullThrottle
                .filter(full -> full.currentA() >= currentA)
                .map(full -> new CurrentPeak(full.currentA(), fullThrottleDurationS));
    }

    private Optional<Flight> flight() {
        return cruise.filter(point -> point.enduranceS() > 0)
                .map(point -> new Flight(point.enduranceS(), point.powerW() / massKg));
    }
}
