package trestle.flight;

import static trestle.finding.Severity.STOP;

import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Time;

/**
 * The checks of the legs of a flight and of the energy they take.
 *
 * @param task what was asked
 * @param flight the aircraft in its air
 * @param energy what came of it; without legs where nothing flies
 * @param judge hears of it
 */
record LegChecks(EnduranceTask task, SteadyFlight flight, EnergyBudget energy, Judge judge) {
    /** With more than this of the energy left at best-endurance power it was sag that ended the flight. */
    private static final double SAG_ABOVE_FRACTION = 0.03;

    void all(AirspeedChecks airspeeds) {
        for (int i = 0; i < task.legs().size(); i++) {
            leg(i, airspeeds);
        }
        judge.check(
                "energy-of-legs", "energy for all legs above the reserve", Subject.of(FlightPart.ENERGY), this::plan);
    }

    private void leg(int index, AirspeedChecks airspeeds) {
        Subject subject = Subject.of(FlightPart.LEG, index);
        Optional<LegResult> flown = energy.legs().isEmpty()
                ? Optional.empty()
                : Optional.of(energy.legs().get(index));
        String leg = name(index);
        String what = "the airspeed of " + leg;
        flown.ifPresentOrElse(
                it -> airspeeds.judge(it.airspeedMPerS(), subject, what), () -> airspeeds.notJudged(subject, what));
        if (task.legs().get(index) instanceof Leg.Cruise cruise) {
            judge.check(
                    "leg-headwind",
                    what + " over its headwind",
                    subject,
                    trial -> flown.ifPresentOrElse(
                            it -> headwind(trial, leg, it.airspeedMPerS(), cruise.headwindMPerS()), trial::notJudged));
        }
        judge.essential(
                "leg-flyable",
                leg + " as asked",
                subject,
                trial -> flown.ifPresentOrElse(it -> flyable(trial, leg, it), trial::notJudged));
    }

    private String name(int index) {
        return Judge.text("leg %d (%s)", index + 1, task.legs().get(index).name());
    }

    private void headwind(Trial trial, String leg, double airspeed, double headwind) {
        boolean asAsked = headwind == task.headwindMPerS()
                && task.airspeedMPerS().isPresent()
                && task.airspeedMPerS().getAsDouble() == airspeed;
        trial.of(airspeed, "m/s")
                .atLeast(headwind, Basis.REQUEST)
                .asSaid(asAsked && airspeed <= headwind, STOP)
                .stopIf(
                        airspeed <= headwind,
                        "headwind-not-overcome",
                        "%.1f m/s, the airspeed of %s, does not exceed its headwind of %.1f m/s: fly faster, or wait for"
                                + " less wind.",
                        airspeed,
                        leg,
                        headwind);
    }

    private void flyable(Trial trial, String leg, LegResult flown) {
        double airspeed = flown.airspeedMPerS();
        boolean refused = flown.status() == LegStatus.NOT_FLYABLE;
        boolean slow = airspeed < flight.stallSpeedMPerS();
        boolean weak = Double.isInfinite(flight.powerW(airspeed));
        boolean windy = flown.leg() instanceof Leg.Cruise cruise && airspeed <= cruise.headwindMPerS();
        trial.asSaid(refused && (slow || weak || windy), STOP)
                .stopIf(
                        refused,
                        "leg-not-flyable",
                        "At %2$.1f m/s %1$s cannot be flown as asked: climb or descend more slowly, or take more thrust; the"
                                + " legs after it are left out.",
                        leg,
                        airspeed);
    }

    private void plan(Trial trial) {
        if (energy.legs().isEmpty()) {
            trial.notJudged(Subject.of(FlightPart.LEG));
            return;
        }
        Optional<Shortfall> shortfall = energy.shortfall();
        double plannedWh = Energy.whFromJ(energy.plannedJ());
        double spendableWh = Energy.whFromJ(energy.availableJ() - energy.reserveJ());
        boolean byEnergy = shortfall.filter(this::sagged).isEmpty();
        if (byEnergy) {
            trial.of(plannedWh, "Wh").atMost(spendableWh, Basis.COMPUTED);
        }
        shortfall.ifPresent(it -> shortfall(trial.at(Subject.of(FlightPart.LEG, it.legIndex())), it));
    }

    private boolean sagged(Shortfall shortfall) {
        return shortfall.end().equals(Optional.of(StoreEnd.POWER_LIMIT))
                || shortfall.end().isPresent()
                        && shortfall.leftAtBestEnduranceJ() > SAG_ABOVE_FRACTION * energy.availableJ();
    }

    private void shortfall(Trial trial, Shortfall shortfall) {
        String leg = name(shortfall.legIndex());
        String after = Time.said(shortfall.atS());
        double powerW = energy.legs().get(shortfall.legIndex()).powerW();
        String at = shortfall.voltageV().isPresent()
                ? Judge.text(" at %.1f V", shortfall.voltageV().getAsDouble())
                : "";
        double missingWh = Energy.whFromJ(shortfall.missingJ());
        trial.stopIf(
                        shortfall.end().equals(Optional.of(StoreEnd.POWER_LIMIT)),
                        "pack-power-limit",
                        "In %s, %s after take-off, the pack can no longer give the %.0f W that the leg takes: fly it more"
                                + " slowly, or take more pack.",
                        leg,
                        after,
                        powerW)
                .stopIf(
                        sagged(shortfall),
                        "leg-sags-to-cutoff",
                        "In %s, %s after take-off, the pack sags to its cutoff%s under %.0f W, with %.0f Wh left for slow"
                                + " flight: put this leg earlier, take less power, or take more pack.",
                        leg,
                        after,
                        at,
                        powerW,
                        Energy.whFromJ(shortfall.leftAtBestEnduranceJ()))
                .attentionIf(
                        shortfall.intoReserveOnly(),
                        "leg-uses-reserve",
                        "In %s, %s after take-off, the flight begins to use the reserve of %.0f %%: shorten the plan by %.0f Wh,"
                                + " or take that much more pack.",
                        leg,
                        after,
                        Share.percentFromFraction(task.reserveFraction()),
                        missingWh)
                .stopIf(
                        true,
                        "leg-runs-out",
                        "In %s, %s after take-off, the energy ends%s: the plan with its reserve takes %.0f Wh more than"
                                + " there is; shorten it by that, or take that much more pack.",
                        leg,
                        after,
                        at,
                        missingWh);
    }
}
