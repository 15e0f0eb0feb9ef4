package trestle.survey;

import java.util.List;

/**
 * A line of photos, flown one way.
 *
 * @param fromM where it begins, x east and y north of the block's middle, m
 * @param toM where it ends, m
 * @param strip which strip it lies in, from 0
 * @param photos photos on it, those beyond its ends too
 */
public record Line(List<Double> fromM, List<Double> toM, int strip, int photos) {
    double lengthM() {
        return Math.hypot(toM.get(0) - fromM.get(0), toM.get(1) - fromM.get(1));
    }
}
