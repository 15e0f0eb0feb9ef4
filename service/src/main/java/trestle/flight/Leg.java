package trestle.flight;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/** A part of a flight, flown at constant airspeed and power. */
public sealed interface Leg {
    /**
     * The airspeed asked for.
     *
     * @return airspeed, m/s; empty for the one that suits the kind of leg
     */
    OptionalDouble airspeedMPerS();

    /**
     * What a leg of this kind is called.
     *
     * @return its name
     */
    String name();

    /**
     * A steady climb: level power and the lifting of the weight. Without an airspeed: that of least
     * power, at least 1.3 times the stall speed.
     *
     * @param heightM height gained, m
     * @param climbRateMPerS rate of climb, m/s
     * @param airspeedMPerS airspeed, m/s
     */
    record Climb(double heightM, double climbRateMPerS, OptionalDouble airspeedMPerS) implements Leg {
        /** Checks the physics. */
        public Climb {
            Guard.positive("heightM", heightM);
            Guard.positive("climbRateMPerS", climbRateMPerS);
            airspeedMPerS.ifPresent(v -> Guard.positive("airspeedMPerS", v));
        }

        @Override
        public String name() {
            return "climb";
        }
    }

    /**
     * Level flight along a line. Without an airspeed: that of best range in the headwind.
     *
     * @param extent how far over the ground or how long
     * @param headwindMPerS wind against the flight, m/s; below 0 for a tailwind
     * @param airspeedMPerS airspeed, m/s
     */
    record Cruise(Extent extent, double headwindMPerS, OptionalDouble airspeedMPerS) implements Leg {
        /** Checks the physics. */
        public Cruise {
            Guard.present("extent", extent);
            Guard.within("headwindMPerS", headwindMPerS, -100, 100);
            airspeedMPerS.ifPresent(v -> Guard.positive("airspeedMPerS", v));
        }

        @Override
        public String name() {
            return "cruise";
        }
    }

    /**
     * Level flight over one place. Without an airspeed: that of least power.
     *
     * @param durationS how long, s
     * @param airspeedMPerS airspeed, m/s
     */
    record Loiter(double durationS, OptionalDouble airspeedMPerS) implements Leg {
        /** Checks the physics. */
        public Loiter {
            Guard.positive("durationS", durationS);
            airspeedMPerS.ifPresent(v -> Guard.positive("airspeedMPerS", v));
        }

        @Override
        public String name() {
            return "loiter";
        }
    }

    /**
     * A descent on part of the power. Without an airspeed: that of best range.
     *
     * @param heightM height lost, m
     * @param sinkRateMPerS rate of sink, m/s
     * @param powerFraction share of the thrust part of level power, 0 to 1; systems run on in full
     * @param airspeedMPerS airspeed, m/s
     */
    record Descent(double heightM, double sinkRateMPerS, double powerFraction, OptionalDouble airspeedMPerS)
            implements Leg {
        /** Checks the physics. */
        public Descent {
            Guard.positive("heightM", heightM);
            Guard.positive("sinkRateMPerS", sinkRateMPerS);
            Guard.within("powerFraction", powerFraction, 0, 1);
            airspeedMPerS.ifPresent(v -> Guard.positive("airspeedMPerS", v));
        }

        @Override
        public String name() {
            return "descent";
        }
    }
}
