package trestle.review;

import java.util.List;
import trestle.finding.Basis;
import trestle.numeric.Guard;

/**
 * The compass and what passes it.
 *
 * @param leads the runs that pass it, at least one
 * @param earthHorizontalT horizontal part of the earth's field, T, above 0
 * @param allowedHeadingErrorRad greatest heading error, rad, above 0
 * @param allowedBasis where that is from
 */
public record CompassPlan(
        List<CompassLead> leads, double earthHorizontalT, double allowedHeadingErrorRad, Basis allowedBasis) {
    /** Copies the list and checks the physics. */
    public CompassPlan {
        leads = List.copyOf(leads);
        Guard.positive("earthHorizontalT", earthHorizontalT);
        Guard.positive("allowedHeadingErrorRad", allowedHeadingErrorRad);
    }
}
