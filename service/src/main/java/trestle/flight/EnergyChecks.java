package trestle.flight;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.STOP;

import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Share;

/** The checks of reserve, voltage and energy of a flight. */
final class EnergyChecks {
    /** Less reserve than this is thin: common practice, no source. */
    private static final double USUAL_RESERVE_FRACTION = 0.2;

    /** A voltage this near above the cutoff may dip under it in a gust: common practice, no source. */
    private static final double NEAR_CUTOFF_RATIO = 1.03;

    /** Wh/kg of pack that no cell sold today gives, and that none will: common practice, no source. */
    private static final double HIGH_WH_PER_KG = 300;

    private static final double IMPOSSIBLE_WH_PER_KG = 600;

    private final EnduranceTask task;
    private final EnduranceResult result;

    private EnergyChecks(EnduranceTask task, EnduranceResult result) {
        this.task = task;
        this.result = result;
    }

    static void judge(EnduranceTask task, EnduranceResult result, Judge judge) {
        EnergyChecks checks = new EnergyChecks(task, result);
        Subject energy = Subject.of(FlightPart.ENERGY);
        judge.essential("reserve", "energy kept in reserve", Subject.of(FlightPart.RESERVE), checks::reserve);
        judge.essential("pack-power", "power of the pack for level flight", energy, checks::power);
        judge.essential("sag-at-end", "lowest voltage of the flight over the cutoff", energy, checks::sag);
        if (task.store() instanceof FixedEnergy fixed) {
            judge.check("usable-energy", "usable energy against mass", energy, trial -> checks.plausible(trial, fixed));
        }
    }

    private void reserve(Trial trial) {
        double reserve = task.reserveFraction();
        double percent = Share.percentFromFraction(reserve);
        double usualPercent = Share.percentFromFraction(USUAL_RESERVE_FRACTION);
        trial.of(percent, "%")
                .atLeast(usualPercent, Basis.COMMON_PRACTICE)
                .attentionIf(
                        reserve == 0,
                        "reserve-zero",
                        "The reserve is %.0f %%: the times run until the pack is empty and the motor stops; keep about"
                                + " %.0f %% (common practice).",
                        percent,
                        usualPercent)
                .noteIf(
                        reserve < USUAL_RESERVE_FRACTION,
                        "reserve-thin",
                        "A reserve of %.3g %% is less than the %.0f %% that is usual (common practice): keep more until the"
                                + " first flights have shown what it takes.",
                        percent,
                        usualPercent);
    }

    private void power(Trial trial) {
        if (result.bestEndurance().isEmpty()) {
            trial.notJudged();
            return;
        }
        SpeedPoint least = result.bestEndurance().get();
        SpeedPoint asked = result.atAirspeed().orElse(least);
        SpeedPoint weak = least.enduranceS() == 0 ? least : asked;
        trial.stopIf(
                weak.enduranceS() == 0,
                "pack-power-limit",
                "The pack cannot give the %.0f W that level flight at %.1f m/s takes: take a stronger or warmer pack.",
                weak.powerW(),
                weak.airspeedMPerS());
    }

    private void sag(Trial trial) {
        OptionalDouble cutoff = task.store().cutoffVoltageV();
        if (cutoff.isEmpty()) {
            trial.notJudged(Subject.of(FlightPart.PACK));
            return;
        }
        OptionalDouble lowest = result.lowestVoltageV();
        if (lowest.isEmpty()) {
            trial.asSaid(true, STOP);
            return;
        }
        boolean ended =
                result.energy().shortfall().filter(s -> !s.intoReserveOnly()).isPresent();
        double cutoffV = cutoff.getAsDouble();
        double nearV = NEAR_CUTOFF_RATIO * cutoffV;
        double lowestV = lowest.getAsDouble();
        trial.of(lowestV, "V")
                .atLeast(cutoffV, Basis.COMPUTED)
                .asSaid(ended, STOP)
                .atLeast(nearV, Basis.COMMON_PRACTICE)
                .asSaid(lowestV < nearV && result.energy().shortfall().isPresent(), ATTENTION)
                .attention(
                        "leg-sags-to-cutoff",
                        "The pack sags to %.2f V in this flight, within 3 %% (common practice) of its cutoff at %.2f V: land"
                                + " with more left, climb more slowly, or take more pack.",
                        lowestV,
                        cutoffV);
    }

    private void plausible(Trial trial, FixedEnergy fixed) {
        double packKg =
                task.pack().map(CarriedPack::massKg).orElse(task.airframe().massKg());
        String of = task.pack().isPresent() ? "pack" : "aircraft";
        double energyWh = Energy.whFromJ(fixed.usableEnergyJ());
        double specific = energyWh / packKg;
        String sentence =
                "%.0f Wh is %.0f Wh a kg of %s, above the %.0f Wh/kg of cells (common practice): give watt-hours,"
                        + " not milliampere-hours, and the mass in grams.";
        trial.of(specific, "Wh/kg")
                .atMost(IMPOSSIBLE_WH_PER_KG, Basis.COMMON_PRACTICE)
                .stop("energy-implausible", sentence, energyWh, specific, of, IMPOSSIBLE_WH_PER_KG)
                .atMost(HIGH_WH_PER_KG, Basis.COMMON_PRACTICE)
                .attention("energy-implausible", sentence, energyWh, specific, of, HIGH_WH_PER_KG);
    }
}
