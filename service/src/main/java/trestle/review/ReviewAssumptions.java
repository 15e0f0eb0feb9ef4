package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Assumption;
import trestle.finding.Subject;
import trestle.flight.SpeedPoint;

/** Choices of the review that touched a number. */
final class ReviewAssumptions {
    private ReviewAssumptions() {}

    static List<Assumption> of(Aircraft aircraft, Optional<SpeedPoint> cruise, Optional<FullThrottle> fullThrottle) {
        List<Assumption> all = new ArrayList<>();
        if (cruise.isPresent() && aircraft.mission().cruiseAirspeedMPerS().isEmpty()) {
            all.add(assumption(
                    ReviewPart.CRUISE_AIRSPEED,
                    String.format(
                            Locale.ROOT,
                            "%.1f m/s, the airspeed of best range",
                            cruise.get().airspeedMPerS()),
                    "the mission gives no cruising airspeed"));
        }
        if (fullThrottle.isEmpty()) {
            all.add(assumption(
                    ReviewPart.FULL_THROTTLE,
                    "no peak on packs and main wires",
                    "the power at full throttle is not given"));
        } else {
            all.add(assumption(
                    ReviewPart.FULL_THROTTLE,
                    String.format(
                            Locale.ROOT,
                            "full throttle from packs as at take-off, %.0f s in one go",
                            aircraft.propulsion().fullThrottleDurationS()),
                    "that is when it is used longest"));
        }
        if (aircraft.mission().packTemperatureK().isEmpty()) {
            all.add(assumption(
                    ReviewPart.PACK_TEMPERATURE,
                    "cells at take-off as warm as the air",
                    "the mission gives no temperature for them"));
        }
        return all;
    }

    private static Assumption assumption(ReviewPart part, String assumed, String because) {
        return new Assumption(Subject.of(part), assumed, because);
    }
}
