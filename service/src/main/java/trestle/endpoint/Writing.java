package trestle.endpoint;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Optional numbers on their way into an answer, where null is what is left out. */
public final class Writing {
    private Writing() {}

    /** An optional number; null where there is none. */
    public static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    /** An optional number in the unit of the answer; null where there is none. */
    public static Double in(OptionalDouble value, DoubleUnaryOperator conversion) {
        return value.isPresent() ? conversion.applyAsDouble(value.getAsDouble()) : null;
    }
}
