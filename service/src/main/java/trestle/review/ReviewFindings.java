package trestle.review;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.NOTE;
import static trestle.finding.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Pack;
import trestle.battery.PackRatings;
import trestle.battery.Segment;
import trestle.finding.Finding;
import trestle.finding.Subject;
import trestle.flight.SpeedPoint;
import trestle.units.Share;

/** What only shows when the parts are seen together. */
final class ReviewFindings {
    private ReviewFindings() {}

    static List<Finding> of(
            Aircraft aircraft,
            Optional<SpeedPoint> cruise,
            Optional<FullThrottle> fullThrottle,
            Pack pack,
            List<RunReview> runs) {
        List<Finding> findings = new ArrayList<>();
        if (cruise.isEmpty()) {
            findings.add(Finding.of(
                    STOP,
                    "no-cruise",
                    Subject.of(ReviewPart.CRUISE_AIRSPEED),
                    "No airspeed can be flown, so packs and wires are judged without a" + " cruise current."));
        }
        fullThrottle.ifPresent(full -> throttle(findings, full, pack));
        for (int i = 0; i < runs.size(); i++) {
            if (aircraft.runs().get(i).armM().isEmpty()) {
                findings.add(Finding.of(
                        NOTE,
                        "wire-not-weighed",
                        Subject.of(ReviewPart.RUN_ARM, i),
                        text(
                                "The wire of %s has no arm, so its mass is left out of the" + " balance.",
                                runs.get(i).task().run().name())));
            }
        }
        return findings;
    }

    private static void throttle(List<Finding> findings, FullThrottle full, Pack pack) {
        Subject subject = Subject.of(ReviewPart.FULL_THROTTLE);
        if (!full.held()) {
            findings.add(Finding.of(
                    STOP,
                    "full-throttle-not-held",
                    subject,
                    text(
                            "The packs, %s, do not hold %.0f W at full throttle for as long as asked.",
                            charge(pack), full.powerW())));
        }
        OptionalDouble rated = PackRatings.of(pack).maxContinuousCurrentA();
        if (rated.isPresent() && full.currentA() > rated.getAsDouble()) {
            findings.add(Finding.of(
                    ATTENTION,
                    "full-throttle-above-cell-rating",
                    Subject.of(ReviewPart.FULL_THROTTLE),
                    full.currentA(),
                    rated.getAsDouble(),
                    text(
                            "Full throttle draws %.1f A; the cells are rated for %.1f A continuously, so keep it short"
                                    + " and watch their temperature.",
                            full.currentA(), rated.getAsDouble())));
        }
    }

    private static String charge(Pack pack) {
        double least = pack.segments().stream()
                .mapToDouble(Segment::stateOfChargeFraction)
                .min()
                .orElse(1);
        return least < 1 ? text("at %.0f %% charge", Share.percentFromFraction(least)) : "full";
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
