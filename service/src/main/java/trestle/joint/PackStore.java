package trestle.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Cutoff;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.battery.StepOutcome;
import trestle.battery.Surroundings;
import trestle.flight.Draw;
import trestle.flight.EnergyStore;
import trestle.flight.FlownStep;
import trestle.flight.Plan;
import trestle.flight.Step;
import trestle.flight.StoreEnd;

/**
 * A lithium pack as what feeds a flight: voltage sag, cutoff and temperature count.
 *
 * @param pack the pack
 * @param cutoff where it counts as empty
 * @param surroundings air and temperature at take-off
 */
public record PackStore(Pack pack, Cutoff cutoff, Surroundings surroundings) implements EnergyStore {

    @Override
    public Draw constantPower(double powerW) {
        Discharge run = Discharge.atConstantPower(pack, powerW, cutoff, surroundings);
        boolean ran = run.durationS() > 0;
        return new Draw(
                run.durationS(),
                run.energyJ(),
                ran ? OptionalDouble.of(powerW / run.startVoltageV()) : OptionalDouble.empty(),
                ran ? OptionalDouble.of(run.chargeC() / run.durationS()) : OptionalDouble.empty(),
                end(run.ending()));
    }

    @Override
    public Plan fly(List<Step> steps) {
        List<PowerStep> profile = steps.stream()
                .map(s -> new PowerStep(s.powerW(), s.durationS()))
                .toList();
        Discharge run = Discharge.of(PackState.of(pack, surroundings), new Load.Profile(profile), cutoff);
        List<FlownStep> flown = new ArrayList<>();
        for (StepOutcome step : run.steps()) {
            flown.add(flown(step));
        }
        return new Plan(
                flown, run.ending() == DischargeEnd.PROFILE_END ? Optional.empty() : Optional.of(end(run.ending())));
    }

    @Override
    public OptionalDouble cutoffVoltageV() {
        return OptionalDouble.of(cutoff.packVoltageV(pack));
    }

    private static FlownStep flown(StepOutcome step) {
        double durationS = step.endS() - step.startS();
        return new FlownStep(
                step.startS(),
                step.endS(),
                step.energyJ(),
                OptionalDouble.of(step.lowestVoltageV()),
                durationS > 0 ? OptionalDouble.of(step.chargeC() / durationS) : OptionalDouble.empty());
    }

    private static StoreEnd end(DischargeEnd ending) {
        return switch (ending) {
            case POWER_LIMIT -> StoreEnd.POWER_LIMIT;
            case CUTOFF, OVER_DISCHARGE, PROFILE_END -> StoreEnd.CUTOFF;
        };
    }
}
