package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.api.model.ApiBand;
import trestle.api.model.ApiBands;
import trestle.api.model.ApiKeyFigures;
import trestle.figure.Numbers;
import trestle.sheet.KeyNumber;

/** The key figures as a builder reads them; what is absent in the answer is left out. */
public final class ReviewKeyNumbers {
    private ReviewKeyNumbers() {}

    static List<KeyNumber> of(ApiKeyFigures key, ApiBands bands) {
        ApiBands sure = bands == null ? ApiBands.builder().build() : bands;
        return Stream.of(
                        number("Take-off mass", key.totalMassG(), 0, "g", sure.totalMassG()),
                        number("CG, aft of the datum", key.cgArmMm(), 1, "mm", sure.cgArmMm()),
                        number("Static margin", key.staticMarginPercent(), 1, "% MAC", sure.staticMarginPercent()),
                        number("Wing loading", key.wingLoadingGPerDm2(), 1, "g/dm²"),
                        number("Stall speed", key.stallSpeedMPerS(), 1, "m/s", sure.stallSpeedMPerS()),
                        number(
                                "Launch margin over the stall",
                                key.launchMarginPercent(),
                                0,
                                "%",
                                sure.launchMarginPercent()),
                        number("Usable energy", key.usableEnergyWh(), 0, "Wh", sure.usableEnergyWh()),
                        number("Cruise airspeed", key.cruiseAirspeedMPerS(), 1, "m/s"),
                        number("Cruise power", key.cruisePowerW(), 0, "W", sure.cruisePowerW()),
                        number("Cruise current", key.cruiseCurrentA(), 1, "A"),
                        number("Cruise throttle", key.cruiseThrottlePercent(), 0, "%"),
                        number("Drive efficiency", key.driveEfficiency(), 2, ""),
                        number("Systems power", key.systemsPowerW(), 1, "W"),
                        number("Full-throttle current", key.fullThrottleCurrentA(), 1, "A"),
                        number("Static thrust", key.staticThrustN(), 1, "N", sure.staticThrustN()),
                        middle("Endurance in cruise", sure.enduranceH(), 2, "h"),
                        middle("Ground range in cruise", sure.groundRangeKm(), 1, "km"),
                        middle("Rate of climb", sure.climbRateMPerS(), 1, "m/s"),
                        number("Best endurance", key.bestEnduranceH(), 2, "h"),
                        number("Best ground range", key.bestGroundRangeKm(), 1, "km"),
                        number("Radius of action", key.radiusOfActionKm(), 1, "km"))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<KeyNumber> number(String label, Double value, int places, String unit) {
        return number(label, value, places, unit, null);
    }

    private static Optional<KeyNumber> number(String label, Double value, int places, String unit, ApiBand band) {
        return Optional.ofNullable(value)
                .map(v -> new KeyNumber(label, Numbers.fixed(v, places), unit, said(band, places)));
    }

    /** A figure that has no other place than its band: the middle of that. */
    private static Optional<KeyNumber> middle(String label, ApiBand band, int places, String unit) {
        return Optional.ofNullable(band).flatMap(b -> number(label, b.p50(), places, unit, b));
    }

    private static String said(ApiBand band, int places) {
        return band == null ? "" : Numbers.fixed(band.p10(), places) + " to " + Numbers.fixed(band.p90(), places);
    }
}
