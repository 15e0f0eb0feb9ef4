package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A speed controller: at part throttle an averaging stage that passes a share of the voltage on.
 *
 * <p>Own form; no measured map of a large controller was at hand. Published tests find 0.90 to 0.98
 * at a fair load and down to 0.65 at worst (R. Brown, thesis, University of Maryland 2019, hdl
 * 1903/25410, abstract).
 *
 * @param maxCurrentA its continuous rating, A, above 0; empty where none is stated
 * @param maxVoltageV highest supply voltage that it stands, V, above 0; empty where none is stated
 * @param resistanceOhm resistance of its switches in the motor's current, Ω, 0 or more
 */
public record Controller(OptionalDouble maxCurrentA, OptionalDouble maxVoltageV, double resistanceOhm) {
    /**
     * Share of {@code supply voltage · motor current} lost in switching. Placeholder, no source.
     */
    static final double SWITCHING_LOSS_FRACTION = 0.01;

    /** What its own electronics draw, W, at the voltage of rest. Placeholder, no source. */
    static final double IDLE_POWER_W = 0.5;

    /** Over the last part of the throttle, switching stops; a step there would have no root. */
    static final double SWITCHING_FADES_OVER = 0.05;

    /** Checks the physics. */
    public Controller {
        maxCurrentA.ifPresent(a -> Guard.positive("maxCurrentA", a));
        maxVoltageV.ifPresent(v -> Guard.positive("maxVoltageV", v));
        Guard.notNegative("resistanceOhm", resistanceOhm);
    }

    /**
     * A controller whose ratings are known.
     *
     * @param maxCurrentA its continuous rating, A, above 0
     * @param maxVoltageV highest supply voltage that it stands, V, above 0
     * @param resistanceOhm resistance of its switches in the motor's current, Ω, 0 or more
     */
    public Controller(double maxCurrentA, double maxVoltageV, double resistanceOhm) {
        this(OptionalDouble.of(maxCurrentA), OptionalDouble.of(maxVoltageV), resistanceOhm);
    }

    /**
     * Current from the supply besides what the motor takes: {@code P0 / V0 + k I}, the second term
     * only while it switches, that is below full throttle.
     *
     * @param restVoltageV supply voltage without load V0, V
     * @param motorCurrentA motor current I, A
     * @param throttleFraction share of the voltage passed on, 0 to 1
     * @return current, A
     */
    static double lossCurrentA(double restVoltageV, double motorCurrentA, double throttleFraction) {
        double switching = Math.max(0, Math.min(1, (1 - throttleFraction) / SWITCHING_FADES_OVER));
        return IDLE_POWER_W / restVoltageV + SWITCHING_LOSS_FRACTION * switching * motorCurrentA;
    }
}
