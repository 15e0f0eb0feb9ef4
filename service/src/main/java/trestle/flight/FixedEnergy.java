package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A plain amount of usable energy, the same at every power, without a voltage.
 *
 * @param usableEnergyJ usable energy, J
 */
public record FixedEnergy(double usableEnergyJ) implements EnergyStore {
    /** Checks the physics. */
    public FixedEnergy {
        Guard.positive("usableEnergyJ", usableEnergyJ);
    }

    @Override
    public Draw constantPower(double powerW) {
        Guard.positive("powerW", powerW);
        return new Draw(
                usableEnergyJ / powerW, usableEnergyJ, OptionalDouble.empty(), OptionalDouble.empty(), StoreEnd.EMPTY);
    }

    @Override
    public Plan fly(List<Step> steps) {
        List<FlownStep> flown = new ArrayList<>();
        double startS = 0;
        double leftJ = usableEnergyJ;
        for (Step step : steps) {
            double wantedJ = step.powerW() * step.durationS();
            boolean enough = wantedJ <= leftJ;
            double givenJ = enough ? wantedJ : leftJ;
            double endS = startS + (enough ? step.durationS() : leftJ / step.powerW());
            flown.add(new FlownStep(startS, endS, givenJ, OptionalDouble.empty(), OptionalDouble.empty()));
            if (!enough) {
                return new Plan(flown, Optional.of(StoreEnd.EMPTY));
            }
            leftJ -= givenJ;
            startS = endS;
        }
        return new Plan(flown, Optional.empty());
    }

    @Override
    public OptionalDouble cutoffVoltageV() {
        return OptionalDouble.empty();
    }
}
