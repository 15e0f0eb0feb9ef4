package trestle.joint;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trestle.battery.PowerStep;
import trestle.numeric.Guard;

/**
 * A climb at full power on what a flight has left in its pack.
 *
 * @param store the pack at take-off
 * @param plan what the flight takes before it, W and s; empty for a go-around right after take-off
 * @param cruiseW power of the pack at which charge is used up where another state of charge is looked at, W, above 0
 * @param chargeFraction state of charge to begin at, reached at that power; empty for that after the plan
 * @param power what the motors take at full power
 * @param systemsW power for everything else, W, not negative
 * @param thrustAtPowerN thrust, N, over the power of the motors, W, held whatever the voltage
 * @param climbing the aircraft at its safe climb speed
 * @param holdS how long it is held, s, above 0
 * @param heightM how much height it has to gain, m, not negative
 */
public record GoAroundTask(
        PackStore store,
        List<PowerStep> plan,
        double cruiseW,
        OptionalDouble chargeFraction,
        FullPower power,
        double systemsW,
        DoubleUnaryOperator thrustAtPowerN,
        Climbing climbing,
        double holdS,
        double heightM) {
    /** Checks the physics and copies the list. */
    public GoAroundTask {
        Guard.present("store", store);
        plan = List.copyOf(plan);
        Guard.positive("cruiseW", cruiseW);
        chargeFraction.ifPresent(share -> Guard.within("chargeFraction", share, 0, 1));
        Guard.present("power", power);
        Guard.notNegative("systemsW", systemsW);
        Guard.present("thrustAtPowerN", thrustAtPowerN);
        Guard.present("climbing", climbing);
        Guard.positive("holdS", holdS);
        Guard.notNegative("heightM", heightM);
    }

    /** The same from another pack: other cells, or as warm as another day. */
    GoAroundTask on(PackStore other) {
        return new GoAroundTask(
                other, plan, cruiseW, chargeFraction, power, systemsW, thrustAtPowerN, climbing, holdS, heightM);
    }
}
