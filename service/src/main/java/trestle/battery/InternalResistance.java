package trestle.battery;

import trestle.numeric.Guard;

/** What is known of one cell's resistance, new, at 25 °C. */
public sealed interface InternalResistance {
    /** Typical of the chemistry: its set scaled by capacity. */
    record Typical() implements InternalResistance {}

    /**
     * Fall of voltage over current, 10 s into a 1C pulse at half charge.
     *
     * @param resistanceOhm direct-current resistance of one cell, Ω, above 0
     */
    record Dc(double resistanceOhm) implements InternalResistance {
        /** Checks the physics. */
        public Dc {
            Guard.positive("resistanceOhm", resistanceOhm);
        }
    }

    /**
     * Impedance at 1 kHz, as most meters and labels give it: it misses charge transfer and
     * diffusion.
     *
     * @param resistanceOhm alternating-current resistance of one cell, Ω, above 0
     */
    record Ac(double resistanceOhm) implements InternalResistance {
        /** Middle of 0.4 to 0.7, the usual share of the direct-current resistance; from memory. */
        public static final double SHARE_OF_DC = 0.55;

        /** Checks the physics. */
        public Ac {
            Guard.positive("resistanceOhm", resistanceOhm);
        }
    }
}
