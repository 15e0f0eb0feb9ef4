package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trestle.charging.ChargePoint;
import trestle.charging.ChargeTask;
import trestle.charging.PackCharge;
import trestle.units.Share;

/** Current, cell voltage and charge of a pack over the time of its charge. */
public final class ChargeFigure {
    private static final String TITLE = "Charge of the pack";
    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;
    private static final double FIELD_DAY_PERCENT = 80;

    private final PackCharge charge;
    private final double holdV;
    private final Clock clock;

    private ChargeFigure(ChargeTask task, PackCharge charge) {
        this.charge = charge;
        holdV = task.holdV()
                .orElse(task.pack().segments().stream()
                        .mapToDouble(segment -> segment.cell().fullVoltageV())
                        .max()
                        .orElseThrow());
        clock = Clock.forTimesUpTo(endS());
    }

    /**
     * Draws a charge.
     *
     * @param task the question
     * @param charge the answer
     * @param theme colours
     * @return an SVG document
     */
    public static String of(ChargeTask task, PackCharge charge, Theme theme) {
        return new ChargeFigure(task, charge).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), charge.judgement().findings());
        if (!charge.runs()) {
            return page.finished(theme, TITLE + ". " + summary());
        }
        Axis x = Axis.between(0, clock.count(endS()), TICKS_ALONG);
        Panels.draw(page, x, "Time, " + clock.unit(), flags(), List.of(current(), voltage(), state()));
        return page.finished(theme, TITLE + ". " + summary());
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        charge.timeTo80S().stream()
                .filter(s -> s > 0 && s < endS())
                .forEach(s -> flags.add(new Flag(clock.count(s), Style.INK, "80 % " + Words.time(s))));
        charge.timeToTargetS()
                .ifPresent(s -> flags.add(new Flag(clock.count(endS()), Style.INK, "done " + Words.time(s))));
        return flags;
    }

    private Panel current() {
        return new Panel(
                "Current, A",
                List.of(),
                Panel.LOW,
                Axis.fromZero(most(ChargePoint::currentA), 3),
                plot -> curve(plot, Style.FIRST_LINE, ChargePoint::currentA));
    }

    private Panel voltage() {
        double greatest = Math.max(holdV, most(ChargePoint::cellV));
        double least =
                charge.curve().stream().mapToDouble(ChargePoint::cellV).min().orElse(holdV);
        double room = 0.15 * Math.max(greatest - least, 0.1);
        return new Panel(
                "Highest cell, V",
                List.of(KeyEntry.band(Style.LIMIT_BAND, "above the hold, " + Numbers.significant(holdV, 3) + " V")),
                Panel.TALL,
                Axis.between(Math.max(0, least - room), greatest + room, TICKS_UP),
                plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, holdV, 2 * greatest);
                    plot.across(Style.LIMIT_LINE, holdV);
                    curve(plot, Style.SECOND_LINE, ChargePoint::cellV);
                });
    }

    private Panel state() {
        return new Panel(
                "Charge, %",
                List.of(),
                Panel.TALL,
                Axis.between(0, Math.max(100, 100 * most(ChargePoint::fraction)), TICKS_UP),
                plot -> {
                    plot.across(Style.GRID, FIELD_DAY_PERCENT);
                    curve(plot, Style.THIRD_LINE, point -> Share.percentFromFraction(point.fraction()));
                });
    }

    private void curve(Plot plot, Style style, ToDoubleFunction<ChargePoint> value) {
        plot.curve(
                style,
                charge.curve().stream()
                        .map(p -> new Point(clock.count(p.timeS()), value.applyAsDouble(p)))
                        .toList());
    }

    private double endS() {
        return charge.curve().isEmpty()
                ? 0
                : charge.curve().get(charge.curve().size() - 1).timeS();
    }

    private double most(ToDoubleFunction<ChargePoint> value) {
        return charge.curve().stream().mapToDouble(value).max().orElse(0);
    }

    private String summary() {
        if (!charge.runs()) {
            return "Nothing is charged.";
        }
        String to80 = charge.timeTo80S().isPresent()
                ? "80 % after " + Words.time(charge.timeTo80S().getAsDouble())
                : "80 % is not reached";
        String done = charge.timeToTargetS().isPresent()
                ? "done after " + Words.time(charge.timeToTargetS().getAsDouble())
                : "not done";
        return to80 + ", " + done + ".";
    }
}
