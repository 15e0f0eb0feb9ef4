package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A level turn, [1] section 6.17.
 *
 * @param loadFactor lift over weight, 1 or more: {@code 1 / cos φ}
 */
public record Turn(double loadFactor) {
    /** Checks the physics. */
    public Turn {
        Guard.within("loadFactor", loadFactor, 1, 20);
    }

    /**
     * The turn at a bank.
     *
     * @param bankRad bank, rad, from 0 to 85°
     * @return the turn
     */
    public static Turn ofBankRad(double bankRad) {
        Guard.within("bankRad", bankRad, 0, Math.toRadians(85));
        return new Turn(1 / Math.cos(bankRad));
    }

    /**
     * Bank of a level turn: {@code acos(1 / n)}.
     *
     * @return bank, rad
     */
    public double bankRad() {
        return Math.acos(1 / loadFactor);
    }

    /**
     * Stall speed in the turn: {@code V_s sqrt(n)}.
     *
     * @param levelStallSpeedMPerS stall speed in level flight, m/s
     * @return stall speed, m/s
     */
    public double stallSpeedMPerS(double levelStallSpeedMPerS) {
        return levelStallSpeedMPerS * Math.sqrt(loadFactor);
    }

    /**
     * Radius: {@code V² / (g tan φ)}, and {@code tan φ = sqrt(n² − 1)}.
     *
     * @param airspeedMPerS airspeed, m/s
     * @return radius, m; empty without bank
     */
    public OptionalDouble radiusM(double airspeedMPerS) {
        double tangent = Math.sqrt(loadFactor * loadFactor - 1);
        return tangent > 0
                ? OptionalDouble.of(airspeedMPerS * airspeedMPerS / (GRAVITY_M_PER_S2 * tangent))
                : OptionalDouble.empty();
    }
}
