package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.api.model.ApiKeyFigures;
import trestle.figure.Numbers;
import trestle.sheet.KeyNumber;

/** The key figures as a builder reads them; what is absent in the answer is left out. */
public final class ReviewKeyNumbers {
    private ReviewKeyNumbers() {}

    static List<KeyNumber> of(ApiKeyFigures key) {
        return Stream.of(
                        number("Take-off mass", key.totalMassG(), 0, "g"),
                        number("CG, aft of the datum", key.cgArmMm(), 1, "mm"),
                        number("Static margin", key.staticMarginPercent(), 1, "% MAC"),
                        number("Wing loading", key.wingLoadingGPerDm2(), 1, "g/dm²"),
                        number("Stall speed", key.stallSpeedMPerS(), 1, "m/s"),
                        number("Launch margin over the stall", key.launchMarginPercent(), 0, "%"),
                        number("Usable energy", key.usableEnergyWh(), 0, "Wh"),
                        number("Cruise airspeed", key.cruiseAirspeedMPerS(), 1, "m/s"),
                        number("Cruise power", key.cruisePowerW(), 0, "W"),
                        number("Cruise current", key.cruiseCurrentA(), 1, "A"),
                        number("Cruise throttle", key.cruiseThrottlePercent(), 0, "%"),
                        number("Drive efficiency", key.driveEfficiency(), 2, ""),
                        number("Systems power", key.systemsPowerW(), 1, "W"),
                        number("Full-throttle current", key.fullThrottleCurrentA(), 1, "A"),
                        number("Static thrust", key.staticThrustN(), 1, "N"),
                        number("Best endurance", key.bestEnduranceH(), 2, "h"),
                        number("Best ground range", key.bestGroundRangeKm(), 1, "km"),
                        number("Radius of action", key.radiusOfActionKm(), 1, "km"))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<KeyNumber> number(String label, Double value, int places, String unit) {
        return Optional.ofNullable(value).map(v -> new KeyNumber(label, Numbers.fixed(v, places), unit));
    }
}
