package trestle.review;

import java.util.Optional;
import trestle.atmosphere.AirState;
import trestle.flight.SpeedPoint;
import trestle.wiring.CurrentPeak;
import trestle.wiring.Flight;
import trestle.wiring.Surroundings;
import trestle.wiring.WireRun;
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
 * @param air the air
 * @param altitudeM geopotential altitude, m
 */
record RunCurrents(
        Optional<SpeedPoint> cruise,
        Optional<FullThrottle> fullThrottle,
        double fullThrottleDurationS,
        double massKg,
        double packVoltageV,
        AirState air,
        double altitudeM) {

    RunReview review(InstalledRun run) {
        boolean pack = run.current() == InstalledRun.RunCurrent.PACK;
        WireTask task = task(run, pack);
        return new RunReview(pack, task, WireSizing.of(task));
    }

    private WireTask task(InstalledRun installed, boolean pack) {
        WireTask task = installed.task();
        WireRun run = task.run();
        double currentA = pack ? cruiseCurrentA() : run.currentA();
        return new WireTask(
                new WireRun(
                        run.name(),
                        currentA,
                        run.lengthM(),
                        installed.voltageGiven() ? run.supplyVoltageV() : packVoltageV,
                        pack ? peak(currentA) : run.peak(),
                        run.strandsInParallel(),
                        run.connectors(),
                        pack),
                task.insulation(),
                task.wallM(),
                here(task.surroundings()),
                task.maxDropFraction(),
                task.system(),
                task.checked(),
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

    private Surroundings here(Surroundings given) {
        return new Surroundings(
                given.enclosure(),
                air.temperatureK(),
                given.bayTemperatureK(),
                altitudeM,
                given.bundledConductors(),
                given.foamWallM());
    }

    private Optional<Flight> flight() {
        return cruise.filter(point -> point.enduranceS() > 0)
                .map(point -> new Flight(point.enduranceS(), point.powerW() / massKg));
    }
}
