package trestle.massbalance;

import trestle.numeric.Guard;

/** How the mass of a long thing is spread about its own CG; what has none is a point. */
public sealed interface Spread permits Spread.OverWing, Spread.OverTail, Spread.Rod, Spread.Block {
    /** How a wing or tail is built: how its mass follows its chord. */
    enum Build {
        /** Mass as the square of the chord, at 42 % of it: a core of foam. */
        SOLID(2),
        /** Mass as the chord, swept as the leading edge: ribs and film. */
        SKIN(1);

        private final int chordPower;

        Build(int chordPower) {
            this.chordPower = chordPower;
        }

        int chordPower() {
            return chordPower;
        }
    }

    /** Along which axis a rod lies. */
    enum Axis {
        /** Along the fuselage. */
        LONGITUDINAL,
        /** Along the wing. */
        LATERAL,
        /** Upright. */
        VERTICAL
    }

    /**
     * Over the panels of the wing.
     *
     * @param build how it is built
     */
    record OverWing(Build build) implements Spread {}

    /**
     * Over the span of the tail.
     *
     * @param build how it is built
     */
    record OverTail(Build build) implements Spread {}

    /**
     * Evenly along one axis: a boom, a spar, a fuselage.
     *
     * @param axis along which it lies
     * @param lengthM length, m, above 0
     * @param diameterM diameter of a tube, m; 0 for a thin rod
     */
    record Rod(Axis axis, double lengthM, double diameterM) implements Spread {
        /** Checks the physics. */
        public Rod {
            Guard.positive("lengthM", lengthM);
            Guard.notNegative("diameterM", diameterM);
        }
    }

    /**
     * Evenly over three lengths: a pack.
     *
     * @param lengthM along the fuselage, m, above 0
     * @param widthM across it, m, 0 or more
     * @param heightM upright, m, 0 or more
     */
    record Block(double lengthM, double widthM, double heightM) implements Spread {
        /** Checks the physics. */
        public Block {
            Guard.positive("lengthM", lengthM);
            Guard.notNegative("widthM", widthM);
            Guard.notNegative("heightM", heightM);
        }
    }
}
