package trestle.endpoint.common;

import trestle.api.model.ApiPropeller;
import trestle.endpoint.Estimating;

/** Reads the size that is printed on a blade, {@code 15x8}. */
final class PropellerSize {
    private PropellerSize() {}

    /**
     * The propeller with diameter and pitch in fields of their own.
     *
     * @param given of the request
     * @param at its JSON Pointer
     * @param estimating notes what is missing, or given twice
     * @return the propeller
     */
    static ApiPropeller spelledOut(ApiPropeller given, String at, Estimating estimating) {
        if (given.size() == null) {
            if (given.diameterIn() == null) {
                estimating.missing(ApiPropeller.DIAMETER_IN.at(at), "diameter_in (or size, like 15x8)");
            }
            return given;
        }
        if (given.diameterIn() != null || given.pitchIn() != null) {
            estimating.contradiction(
                    ApiPropeller.SIZE.at(at), "size says diameter and pitch: give it, or diameter_in and pitch_in");
            return given;
        }
        String[] inches = given.size().split("x");
        return given.toBuilder()
                .diameterIn(Double.valueOf(inches[0]))
                .pitchIn(Double.valueOf(inches[1]))
                .size(null)
                .build();
    }
}
