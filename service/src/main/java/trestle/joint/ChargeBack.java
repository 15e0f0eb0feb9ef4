package trestle.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import trestle.battery.PackEnergy;
import trestle.battery.PackState;
import trestle.battery.PackTask;
import trestle.battery.Segment;
import trestle.charging.ChargePlan;
import trestle.charging.ChargeTarget;
import trestle.charging.Charger;
import trestle.charging.Connection;
import trestle.charging.PackCharge;
import trestle.units.Time;

/**
 * How long a pack takes to be charged back to where its run began: rested, in the same air, at the most that its cells
 * may take, as one string with a balancer.
 */
public final class ChargeBack {
    /** The current at which a charge ends, over the capacity, 1/h: 5 %, as chargers do. */
    private static final double END_RATE_PER_H = 0.05;

    /** From here on a pack began full. */
    private static final double FULL_FRACTION = 0.995;

    private static final double ANY_BALANCER_A = 1;

    private ChargeBack() {}

    /**
     * The time.
     *
     * @param task what was asked of the pack
     * @param energy what came of it
     * @return time, s; empty where the cells are too cold or too hot, or it takes more than a day
     */
    public static OptionalDouble timeS(PackTask task, PackEnergy energy) {
        PackState start = PackState.of(task.pack(), task.surroundings());
        List<Segment> after = new ArrayList<>();
        double target = 1;
        for (int k = 0; k < task.pack().segments().size(); k++) {
            Segment segment = task.pack().segments().get(k);
            double left = energy.discharge().segments().get(k).stateOfChargeFraction() / start.stateOfChargeFraction(k);
            after.add(segment.atCharge(segment.stateOfChargeFraction() * Math.max(0, Math.min(1, left))));
            target = Math.min(target, start.stateOfChargeFraction(k));
        }
        boolean full = task.pack().segments().stream().allMatch(it -> it.stateOfChargeFraction() >= FULL_FRACTION);
        double ambientK = task.surroundings().ambientK();
        ChargePlan plan = new ChargePlan(
                0,
                ambientK,
                ambientK,
                0,
                Connection.IN_SERIES,
                new Charger(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        1,
                        1,
                        true,
                        ANY_BALANCER_A),
                OptionalDouble.empty(),
                full ? ChargeTarget.FULL : new ChargeTarget(ChargeTarget.Kind.STATE_OF_CHARGE, target),
                OptionalDouble.empty(),
                END_RATE_PER_H / Time.sFromH(1),
                0,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return PackCharge.timeToTargetS(plan.of(after, task.surroundings().covering()));
    }
}
