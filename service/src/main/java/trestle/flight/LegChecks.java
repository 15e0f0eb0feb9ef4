package trestle.flight;

import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Time;

/**
 * The checks of the legs of a flight and of the energy they take.
 *
 * @param flight the aircraft in its air
 * @param legs what was asked for
 * @param energy what came of it; without legs where nothing flies
 * @param judge hears of it
 */
record LegChecks(SteadyFlight flight, List<Leg> legs, EnergyBudget energy, Judge judge) {

    void all() {
        for (int i = 0; i < legs.size(); i++) {
            leg(i);
        }
        judge.check("energy-of-legs", "energy for all legs", Subject.of(FlightPart.ENERGY), this::plan);
    }

    private void leg(int index) {
        int number = index + 1;
        Subject subject = Subject.of(FlightPart.LEG, index);
        Optional<LegResult> flown = energy.legs().isEmpty()
                ? Optional.empty()
                : Optional.of(energy.legs().get(index));
        AirspeedChecks airspeeds = new AirspeedChecks(flight, judge);
        String what = Judge.text("the airspeed of leg %d", number);
        flown.ifPresentOrElse(
                leg -> airspeeds.judge(leg.airspeedMPerS(), subject, what), () -> airspeeds.notJudged(subject, what));
        if (legs.get(index) instanceof Leg.Cruise cruise) {
            judge.check(
                    "leg-headwind",
                    what + " over its headwind",
                    subject,
                    trial -> flown.ifPresentOrElse(
                            leg -> headwind(trial, number, leg.airspeedMPerS(), cruise.headwindMPerS()),
                            trial::notJudged));
        }
        judge.essential(
                "leg-flyable",
                Judge.text("leg %d as asked", number),
                subject,
                trial -> flown.ifPresentOrElse(leg -> flyable(trial, number, leg), trial::notJudged));
    }

    private static void headwind(Trial trial, int number, double airspeed, double headwind) {
        trial.of(airspeed, "m/s")
                .atLeast(headwind, Basis.REQUEST)
                .stopIf(
                        airspeed <= headwind,
                        "headwind-not-overcome",
                        "Leg %d: %.1f m/s does not beat its headwind of %.1f m/s.",
                        number,
                        airspeed,
                        headwind);
    }

    private static void flyable(Trial trial, int number, LegResult leg) {
        trial.stopIf(
                leg.status() == LegStatus.NOT_FLYABLE,
                "leg-not-flyable",
                "Leg %d cannot be flown as asked at %.1f m/s; the legs after it are left out.",
                number,
                leg.airspeedMPerS());
    }

    private void plan(Trial trial) {
        if (energy.legs().isEmpty()) {
            trial.notJudged(Subject.of(FlightPart.LEG));
            return;
        }
        Optional<Shortfall> shortfall = energy.shortfall();
        if (shortfall.flatMap(Shortfall::end).equals(Optional.of(StoreEnd.POWER_LIMIT))) {
            powerLimit(trial);
            return;
        }
        double plannedWh = Energy.whFromJ(energy.plannedJ());
        double spendableWh = Energy.whFromJ(energy.availableJ() - energy.reserveJ());
        trial.of(plannedWh, "Wh").atMost(spendableWh, Basis.COMPUTED);
        shortfall.ifPresent(it -> shortfall(trial, it));
    }

    private static void shortfall(Trial trial, Shortfall shortfall) {
        int number = shortfall.legIndex() + 1;
        double afterMin = Time.minFromS(shortfall.atS());
        double missingWh = Energy.whFromJ(shortfall.missingJ());
        trial.at(Subject.of(FlightPart.LEG, shortfall.legIndex()))
                .attentionIf(
                        shortfall.intoReserveOnly(),
                        "leg-uses-reserve",
                        "Leg %d runs into the reserve %.1f min after the start: the plan takes"
                                + " %.0f Wh more than the reserve leaves.",
                        number,
                        afterMin,
                        missingWh)
                .stopIf(
                        true,
                        "leg-runs-out",
                        "The energy does not last through the plan: in leg %d, %.1f min after the"
                                + " start, the reserve is reached, and %.0f Wh are missing.",
                        number,
                        afterMin,
                        missingWh);
    }

    /** The leg that the pack could not feed, whatever it had left. */
    private void powerLimit(Trial trial) {
        int index = 0;
        while (energy.legs().get(index).status() != LegStatus.RAN_OUT) {
            index++;
        }
        LegResult leg = energy.legs().get(index);
        trial.at(Subject.of(FlightPart.LEG, index))
                .stopIf(
                        true,
                        "pack-power-limit",
                        "In leg %d, %.1f min after the start, the pack can no longer give the %.0f W that the leg takes.",
                        index + 1,
                        Time.minFromS(leg.endS()),
                        leg.powerW());
    }
}
