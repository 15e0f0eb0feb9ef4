package trestle.wiring;

import java.util.OptionalDouble;

/**
 * A controller that is plugged in through a precharge resistor, the given one or the one to take.
 *
 * @param capacitanceF its capacitance, F
 * @param voltageV voltage at the supply, V
 * @param resistanceOhm the resistor, Ω
 * @param precharged whether there is one
 * @param energyRatingJ what it stands, J; empty where not known
 */
public record Plugging(
        double capacitanceF, double voltageV, double resistanceOhm, boolean precharged, OptionalDouble energyRatingJ) {
    /**
     * How a run is plugged in.
     *
     * @param task the run, with a known capacitance at its end
     * @return how
     */
    public static Plugging of(WireTask task) {
        PlugEnd plug = task.plug();
        double voltageV = plug.fullVoltageV().orElse(task.run().supplyVoltageV());
        Precharge chosen =
                plug.precharge().orElseGet(() -> new Precharge(OptionalDouble.empty(), OptionalDouble.empty()));
        return new Plugging(
                plug.capacitanceF().orElseThrow(),
                voltageV,
                chosen.resistanceAt(voltageV),
                plug.precharge().isPresent(),
                chosen.energyRatingJ());
    }

    /**
     * Energy that goes into the capacitors, and as much into the resistor.
     *
     * @return energy, J
     */
    public double energyJ() {
        return capacitanceF * voltageV * voltageV / 2;
    }

    /**
     * How long the resistor has to touch.
     *
     * @return time, s: five time constants
     */
    public double waitS() {
        return Precharge.TIME_CONSTANTS * resistanceOhm * capacitanceF;
    }

    /**
     * Power in the resistor at first.
     *
     * @return power, W
     */
    public double peakPowerW() {
        return voltageV * voltageV / resistanceOhm;
    }

    /**
     * What the plug has to close after the wait.
     *
     * @return voltage, V
     */
    public double leftVoltageV() {
        return voltageV * Math.exp(-Precharge.TIME_CONSTANTS);
    }

    /**
     * The spark that is left then.
     *
     * @return energy, J
     */
    public double leftEnergyJ() {
        return capacitanceF * leftVoltageV() * leftVoltageV() / 2;
    }

    /**
     * What rushes in without a resistor.
     *
     * @param task the run
     * @param wire the wire that it is built with
     * @return the inrush; without its current where the resistance of the source is not known
     */
    public Inrush inrush(WireTask task, Wire wire) {
        if (task.plug().sourceResistanceOhm().isEmpty()) {
            return Inrush.ofUnknownSource(capacitanceF, voltageV);
        }
        WireRun run = task.run();
        double loopOhm = task.plug().sourceResistanceOhm().getAsDouble()
                + run.wireResistanceOhm(wire, task.surroundings().ambientTemperatureK())
                + run.connectorResistanceOhm();
        return Inrush.of(capacitanceF, voltageV, loopOhm, RunChecks.PAIR_INDUCTANCE_H_PER_M * run.lengthM());
    }
}
