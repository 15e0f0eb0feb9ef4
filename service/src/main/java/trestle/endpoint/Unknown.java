package trestle.endpoint;

import trestle.api.model.ApiEstimate;
import trestle.estimate.Spread;

/**
 * A number that is not known for sure, where it stands in the request.
 *
 * @param at JSON Pointer of its field
 * @param spread the number at each draw, in the unit of the field
 * @param from what it was taken from
 * @param source where the rule is from
 * @param given whether the request has the number, with a tolerance
 */
record Unknown(String at, Spread spread, String from, String source, boolean given) {

    ApiEstimate.Builder written() {
        double low = spread.low();
        double high = spread.high();
        String unit = FieldUnit.of(at);
        return ApiEstimate.builder()
                .at(at)
                .median(spread.median())
                .low(Math.min(low, high))
                .high(Math.max(low, high))
                .unit(unit.isEmpty() ? null : unit)
                .from(from)
                .source(source);
    }
}
