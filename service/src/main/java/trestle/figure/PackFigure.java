package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trestle.battery.CurvePoint;
import trestle.battery.Cutoff;
import trestle.battery.DischargeEnd;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.units.Energy;
import trestle.units.Share;

/** Voltage, power and energy of a discharge over time, with the cutoff and what it leaves below it. */
public final class PackFigure {
    private static final String TITLE = "Discharge of the pack";
    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;

    /** The voltage axis goes this share of its span under what is drawn. */
    private static final double ROOM = 0.15;

    private final PackTask task;
    private final PackEnergy result;
    private final Clock clock;

    private PackFigure(PackTask task, PackEnergy result) {
        this.task = task;
        this.result = result;
        this.clock = Clock.forTimesUpTo(result.budget().durationS());
    }

    /**
     * Draws a discharge.
     *
     * @param task pack and load
     * @param result what the pack gives
     * @param theme colours
     * @return an SVG document
     */
    public static String of(PackTask task, PackEnergy result, Theme theme) {
        return new PackFigure(task, result).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        if (!runs()) {
            return page.finished(theme, TITLE + ". " + summary());
        }
        Axis x = Axis.between(0, clock.count(result.budget().durationS()), TICKS_ALONG);
        Panels.draw(page, x, "Time, " + clock.unit(), flags(), List.of(voltage(), power(), energy()));
        return page.finished(theme, TITLE + ". " + summary());
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        double endS = result.budget().durationS();
        Style style = result.discharge().ending() == DischargeEnd.PROFILE_END ? Style.INK : Style.LIMIT_TEXT;
        flags.add(new Flag(clock.count(endS), style, ending() + " " + Words.time(endS)));
        double reserveS = result.budget().durationToReserveS();
        if (task.reserveFraction() > 0 && reserveS < endS) {
            flags.add(new Flag(clock.count(reserveS), Style.ATTENTION_TEXT, "reserve from " + Words.time(reserveS)));
        }
        return flags;
    }

    private String ending() {
        return switch (result.discharge().ending()) {
            case CUTOFF -> watchesCells() ? "weakest cell at the cutoff" : "cutoff";
            case OVER_DISCHARGE -> "a cell is empty";
            case POWER_LIMIT -> "power limit";
            case PROFILE_END -> "end of the profile";
        };
    }

    private Panel voltage() {
        double cutoffV = result.cutoffVoltageV();
        double greatest = Math.max(cutoffV, most(CurvePoint::voltageV));
        double least = Math.min(
                cutoffV,
                result.curve().stream().mapToDouble(CurvePoint::voltageV).min().orElse(cutoffV));
        double room = ROOM * Math.max(greatest - least, 0.05 * greatest);
        return new Panel(
                "Voltage, V",
                List.of(new KeyEntry(
                        KeyEntry.Sign.BAND,
                        Style.LIMIT_BAND,
                        "below the cutoff, "
                                + Numbers.significant(cutoffV, 3)
                                + " V"
                                + (watchesCells() ? ", cells alike" : ""))),
                Panel.TALL,
                Axis.between(Math.max(0, least - room), greatest + room, TICKS_UP),
                plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, 0, cutoffV);
                    plot.across(Style.LIMIT_LINE, cutoffV);
                    curve(plot, Style.FIRST_LINE, CurvePoint::voltageV);
                });
    }

    private boolean watchesCells() {
        return task.cutoff() instanceof Cutoff.CellVoltage || task.cutoff() instanceof Cutoff.CellMinimum;
    }

    private Panel power() {
        return new Panel(
                "Power, W",
                List.of(),
                Panel.LOW,
                Axis.fromZero(most(CurvePoint::powerW), 3),
                plot -> curve(plot, Style.SECOND_LINE, CurvePoint::powerW));
    }

    private Panel energy() {
        double usableWh = Energy.whFromJ(result.budget().usableEnergyJ());
        double belowWh = Energy.whFromJ(result.budget().energyBelowCutoffJ());
        double reserveWh = Energy.whFromJ(result.budget().reserveEnergyJ());
        List<KeyEntry> keys = new ArrayList<>();
        if (reserveWh > 0) {
            keys.add(KeyEntry.band(Style.ATTENTION_BAND, "reserve " + number(reserveWh)));
        }
        keys.add(KeyEntry.band(Style.LIMIT_BAND, "below cutoff " + number(belowWh)));
        return new Panel(
                "Energy, Wh",
                keys,
                Panel.TALL,
                Axis.between(0, 1.03 * Math.max(usableWh + belowWh, 1e-3), TICKS_UP),
                plot -> {
                    plot.bandAcross(Style.ATTENTION_BAND, usableWh - reserveWh, usableWh);
                    plot.bandAcross(Style.LIMIT_BAND, usableWh, usableWh + belowWh);
                    plot.across(Style.LIMIT_LINE, usableWh);
                    curve(plot, Style.THIRD_LINE, p -> Energy.whFromJ(p.energyJ()));
                });
    }

    private void curve(Plot plot, Style style, ToDoubleFunction<CurvePoint> value) {
        plot.curve(
                style,
                result.curve().stream()
                        .map(p -> new Point(clock.count(p.timeS()), value.applyAsDouble(p)))
                        .toList());
    }

    private boolean runs() {
        return result.budget().durationS() > 0 && result.curve().size() > 1;
    }

    private double most(ToDoubleFunction<CurvePoint> value) {
        return result.curve().stream().mapToDouble(value).max().orElse(0);
    }

    private String summary() {
        if (!runs()) {
            return "The pack cannot feed this load.";
        }
        double usableWh = Energy.whFromJ(result.budget().usableEnergyJ());
        return wh(usableWh)
                + " usable down to the cutoff, "
                + Numbers.significant(Share.percentFromFraction(result.budget().fractionBelowCutoff()), 2)
                + " % unused below it. Duration "
                + Words.time(result.budget().durationS())
                + ".";
    }

    private static String number(double energyWh) {
        return Numbers.significant(energyWh, 3);
    }

    private static String wh(double energyWh) {
        return number(energyWh) + " Wh";
    }
}
