package trestle.flight;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Subject;
import trestle.units.Energy;
import trestle.units.Time;

/** What there is to say about the legs of a flight and the energy they take. */
final class LegFindings {
    private LegFindings() {}

    static List<Finding> of(SteadyFlight flight, EnergyBudget energy) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < energy.legs().size(); i++) {
            findings.addAll(leg(flight, i, energy.legs().get(i)));
        }
        energy.shortfall().ifPresent(shortfall -> findings.add(shortfall(shortfall, energy)));
        return findings;
    }

    private static List<Finding> leg(SteadyFlight flight, int index, LegResult leg) {
        int number = index + 1;
        double airspeed = leg.airspeedMPerS();
        Subject subject = Subject.of(FlightPart.LEG, index);
        List<Finding> findings =
                new AirspeedFindings(flight).about(airspeed, subject, text("the airspeed of leg %d", number));
        if (leg.leg() instanceof Leg.Cruise cruise && airspeed <= cruise.headwindMPerS()) {
            findings.add(Finding.of(
                    STOP,
                    "headwind-not-overcome",
                    subject,
                    airspeed,
                    cruise.headwindMPerS(),
                    text(
                            "Leg %d: %.1f m/s does not beat its headwind of %.1f m/s.",
                            number, airspeed, cruise.headwindMPerS())));
        }
        if (leg.status() == LegStatus.NOT_FLYABLE) {
            findings.add(Finding.of(
                    STOP,
                    "leg-not-flyable",
                    subject,
                    text(
                            "Leg %d cannot be flown as asked at %.1f m/s; the legs after" + " it are left out.",
                            number, airspeed)));
        }
        return findings;
    }

    private static Finding shortfall(Shortfall shortfall, EnergyBudget energy) {
        if (shortfall.end().equals(Optional.of(StoreEnd.POWER_LIMIT))) {
            return powerLimit(energy);
        }
        double plannedWh = Energy.whFromJ(energy.plannedJ());
        double spendableWh = Energy.whFromJ(energy.availableJ() - energy.reserveJ());
        String message = shortfall.intoReserveOnly()
                ? "Leg %d runs into the reserve %.1f min after the start: the plan takes"
                        + " %.0f Wh more than the reserve leaves."
                : "The energy does not last through the plan: in leg %d, %.1f min after the"
                        + " start, the reserve is reached, and %.0f Wh are missing.";
        return Finding.of(
                shortfall.intoReserveOnly() ? ATTENTION : STOP,
                shortfall.intoReserveOnly() ? "leg-uses-reserve" : "leg-runs-out",
                Subject.of(FlightPart.LEG, shortfall.legIndex()),
                plannedWh,
                spendableWh,
                text(
                        message,
                        shortfall.legIndex() + 1,
                        Time.minFromS(shortfall.atS()),
                        Energy.whFromJ(shortfall.missingJ())));
    }

    /** The leg that the pack could not feed, whatever it had left. */
    private static Finding powerLimit(EnergyBudget energy) {
        int index = 0;
        while (energy.legs().get(index).status() != LegStatus.RAN_OUT) {
            index++;
        }
        LegResult leg = energy.legs().get(index);
        return Finding.of(
                STOP,
                "pack-power-limit",
                Subject.of(FlightPart.LEG, index),
                text(
                        "In leg %d, %.1f min after the start, the pack can no longer give the"
                                + " %.0f W that the leg takes.",
                        index + 1, Time.minFromS(leg.endS()), leg.powerW()));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
