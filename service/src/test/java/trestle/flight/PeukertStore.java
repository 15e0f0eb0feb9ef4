package trestle.flight;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A battery after Peukert's law at constant voltage, for checks against examples that use it:
 * {@code t = Rt^(1−n) (V C / P)^n}, Rt 1 h. Not a model of the service.
 */
record PeukertStore(double voltageV, double capacityAh, double exponent) implements EnergyStore {
    @Override
    public Draw constantPower(double powerW) {
        double durationS = 3600 * Math.pow(voltageV * capacityAh / powerW, exponent);
        OptionalDouble current = OptionalDouble.of(powerW / voltageV);
        return new Draw(durationS, durationS * powerW, current, current, StoreEnd.EMPTY);
    }

    @Override
    public OptionalDouble cutoffVoltageV() {
        return OptionalDouble.empty();
    }

    @Override
    public Plan fly(List<Step> steps) {
        return new FixedEnergy(constantPower(steps.get(0).powerW()).energyJ()).fly(steps);
    }
}
