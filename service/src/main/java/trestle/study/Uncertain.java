package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import trestle.api.model.ApiDistribution;
import trestle.api.model.ApiUncertainNumber;
import trestle.binding.FieldPath;
import trestle.endpoint.Reading;

/**
 * A number that is not known for sure.
 *
 * @param path where it stands in the request
 * @param given its distribution
 */
record Uncertain(FieldPath path, ApiUncertainNumber given) {

    JsonPointer pointer() {
        return JsonPointer.compile(path.pointer());
    }

    /** The value that a share of all lie below. */
    double at(double share) {
        return switch (given.distribution()) {
            case NORMAL -> quantile(new NormalDistribution(given.mean(), given.standardDeviation()), share);
            case LOGNORMAL ->
                given.median() * Math.exp(Math.log(given.factor()) * quantile(new NormalDistribution(), share));
            case UNIFORM -> quantile(new UniformRealDistribution(given.low(), given.high()), share);
            case TRIANGULAR -> quantile(new TriangularDistribution(given.low(), given.mode(), given.high()), share);
        };
    }

    private static double quantile(RealDistribution distribution, double share) {
        return distribution.inverseCumulativeProbability(share);
    }

    /**
     * Holds a distribution against what its kind takes.
     *
     * @param given of the request
     * @param at its JSON Pointer
     * @param reading notes contradictions
     */
    static void check(ApiUncertainNumber given, String at, Reading reading) {
        String what = "a " + given.distribution() + " distribution";
        switch (given.distribution()) {
            case NORMAL -> {
                reading.needs(what, at, "mean", given.mean());
                reading.needs(what, at, "standard_deviation", given.standardDeviation());
                takesNo(what, at, reading, "median", given.median(), "factor", given.factor());
                takesNo(what, at, reading, "low", given.low(), "high", given.high());
            }
            case LOGNORMAL -> {
                reading.needs(what, at, "median", given.median());
                reading.needs(what, at, "factor", given.factor());
                takesNo(what, at, reading, "mean", given.mean(), "standard_deviation", given.standardDeviation());
                takesNo(what, at, reading, "low", given.low(), "high", given.high());
            }
            case UNIFORM, TRIANGULAR -> bounded(given, what, at, reading);
        }
        if (given.distribution() != ApiDistribution.TRIANGULAR) {
            reading.takesNo(what, at, "mode", given.mode());
        }
    }

    private static void bounded(ApiUncertainNumber given, String what, String at, Reading reading) {
        boolean ends = reading.needs(what, at, "low", given.low()) & reading.needs(what, at, "high", given.high());
        takesNo(what, at, reading, "mean", given.mean(), "standard_deviation", given.standardDeviation());
        takesNo(what, at, reading, "median", given.median(), "factor", given.factor());
        if (ends && given.low() >= given.high()) {
            reading.fault(
                    ApiUncertainNumber.HIGH.at(at),
                    "contradiction",
                    "high must be above low: a distribution has a width");
            return;
        }
        boolean triangular = given.distribution() == ApiDistribution.TRIANGULAR;
        if (triangular && reading.needs(what, at, "mode", given.mode()) && ends) {
            if (given.mode() < given.low() || given.mode() > given.high()) {
                reading.fault(ApiUncertainNumber.MODE.at(at), "contradiction", "mode must lie between low and high");
            }
        }
    }

    private static void takesNo(
            String what, String at, Reading reading, String one, Object first, String other, Object second) {
        reading.takesNo(what, at, one, first);
        reading.takesNo(what, at, other, second);
    }
}
