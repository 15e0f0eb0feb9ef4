package trestle.review;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * The go-around that an aircraft is to have left in its packs.
 *
 * @param chargeFraction state of charge that it begins at, 0 to 1; empty for what the flight leaves
 * @param powerW power of the motors, W; empty for full throttle
 * @param holdS how long it is held, s
 * @param heightM height that it has to gain, m
 * @param asked whether the document says anything of it
 */
public record GoAroundPlan(
        OptionalDouble chargeFraction, OptionalDouble powerW, double holdS, double heightM, boolean asked) {
    /** Checks the physics. */
    public GoAroundPlan {
        chargeFraction.ifPresent(share -> Guard.within("chargeFraction", share, 0, 1));
        powerW.ifPresent(power -> Guard.positive("powerW", power));
        Guard.positive("holdS", holdS);
        Guard.notNegative("heightM", heightM);
    }
}
