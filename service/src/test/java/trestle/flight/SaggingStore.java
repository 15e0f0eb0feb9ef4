package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pack of twelve in series for tests: open-circuit voltage linear in charge, one resistance, a
 * cutoff under load. It counts how often it is asked. Not a model of the service.
 */
final class SaggingStore implements EnergyStore {
    private static final double CAPACITY_AS = 16 * 3600;
    private static final double STEP_AS = CAPACITY_AS / 4000;
    private static final double CUTOFF_V = 37;

    private final double resistanceOhm;
    private int asked;

    SaggingStore(double resistanceOhm) {
        this.resistanceOhm = resistanceOhm;
    }

    int asked() {
        return asked;
    }

    @Override
    public Draw constantPower(double powerW) {
        asked++;
        Plan plan = draw(List.of(new Step(powerW, 1e9)));
        FlownStep step = plan.steps().get(0);
        return new Draw(
                step.endS(),
                step.energyJ(),
                step.meanCurrentA(),
                step.meanCurrentA(),
                plan.end().orElse(StoreEnd.EMPTY));
    }

    @Override
    public OptionalDouble cutoffVoltageV() {
        return OptionalDouble.of(CUTOFF_V);
    }

    @Override
    public Plan fly(List<Step> steps) {
        asked++;
        return draw(steps);
    }

    private Plan draw(List<Step> steps) {
        List<FlownStep> flown = new ArrayList<>();
        double usedAs = 0;
        double timeS = 0;
        for (Step step : steps) {
            double startS = timeS;
            double startAs = usedAs;
            double lowestV = Double.POSITIVE_INFINITY;
            Optional<StoreEnd> end = Optional.empty();
            while (timeS < startS + step.durationS()) {
                double openV = 12 * (4.15 - 0.85 * usedAs / CAPACITY_AS);
                double root = openV * openV - 4 * resistanceOhm * step.powerW();
                if (root <= 0) {
                    end = Optional.of(StoreEnd.POWER_LIMIT);
                    break;
                }
                double voltageV = (openV + Math.sqrt(root)) / 2;
                if (voltageV < CUTOFF_V || usedAs >= CAPACITY_AS) {
                    end = Optional.of(StoreEnd.CUTOFF);
                    break;
                }
                lowestV = Math.min(lowestV, voltageV);
                double currentA = step.powerW() / voltageV;
                double stepS = Math.min(STEP_AS / currentA, startS + step.durationS() - timeS + 1e-9);
                timeS += stepS;
                usedAs += currentA * stepS;
            }
            double tookS = timeS - startS;
            flown.add(new FlownStep(
                    startS,
                    timeS,
                    tookS * step.powerW(),
                    tookS > 0 ? OptionalDouble.of(lowestV) : OptionalDouble.empty(),
                    tookS > 0 ? OptionalDouble.of((usedAs - startAs) / tookS) : OptionalDouble.empty()));
            if (end.isPresent()) {
                return new Plan(flown, end);
            }
        }
        return new Plan(flown, Optional.empty());
    }
}
