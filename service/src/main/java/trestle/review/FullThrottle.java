package trestle.review;

import java.util.List;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.Load;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.joint.PackStore;

/**
 * The packs at full throttle, from take-off.
 *
 * @param powerW power asked for, W
 * @param currentA greatest current, A; 0 where the packs cannot give the power at all
 * @param lowestVoltageV lowest voltage, V
 * @param held whether the packs hold it for as long as is asked
 */
public record FullThrottle(double powerW, double currentA, double lowestVoltageV, boolean held) {

    /**
     * Draws a power from rested packs for a time.
     *
     * @param store the packs
     * @param powerW power, W, above 0
     * @param durationS how long, s, above 0
     * @return how the packs take it
     */
    static FullThrottle from(PackStore store, double powerW, double durationS) {
        Discharge run = Discharge.of(
                PackState.of(store.pack(), store.surroundings()),
                new Load.Profile(List.of(new PowerStep(powerW, durationS))),
                store.cutoff());
        boolean any = run.durationS() > 0;
        return new FullThrottle(
                powerW,
                any ? run.highestCurrentA() : 0,
                run.lowestVoltageV(),
                run.ending() == DischargeEnd.PROFILE_END);
    }
}
