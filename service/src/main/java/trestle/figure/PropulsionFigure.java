package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.DragCurve;
import trestle.propulsion.DrivePerformance;
import trestle.propulsion.OperatingPoint;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.ThrottleLimit;

/** Thrust, current and efficiency at full throttle over airspeed, and what cruise takes. */
public final class PropulsionFigure {
    private static final String TITLE = "Drive at full throttle over airspeed";
    private static final String CRUISE = "in cruise";
    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;
    private static final int DRAG_POINTS = 200;

    private final PropulsionTask task;
    private final PropulsionMatch result;
    private final List<OperatingPoint> curve;

    private PropulsionFigure(PropulsionTask task, PropulsionMatch result) {
        this.task = task;
        this.result = result;
        this.curve = result.performance().curve().stream()
                .sorted(Comparator.comparingDouble(OperatingPoint::airspeedMPerS))
                .toList();
    }

    /**
     * Draws what a drive does.
     *
     * @param task the drive
     * @param result how it matches
     * @param theme colours
     * @return an SVG document
     */
    public static String of(PropulsionTask task, PropulsionMatch result, Theme theme) {
        return new PropulsionFigure(task, result).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        Axis x = Axis.between(0, fastestMPerS(), TICKS_ALONG);
        List<Panel> panels = new ArrayList<>();
        panels.add(thrust(x));
        if (!curve.isEmpty()) {
            panels.addAll(currents());
            panels.add(efficiency());
        }
        Panels.draw(page, x, "Airspeed, m/s", flags(), panels);
        return page.finished(theme, TITLE + ". " + summary());
    }

    private double fastestMPerS() {
        double fastest = most(OperatingPoint::airspeedMPerS);
        DrivePerformance performance = result.performance();
        fastest = Math.max(fastest, performance.topSpeedMPerS().orElse(0));
        fastest = Math.max(fastest, performance.zeroThrustSpeedMPerS().orElse(0));
        return Math.max(
                fastest, 1.1 * task.cruise().map(CruiseDemand::airspeedMPerS).orElse(0.0));
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        task.cruise()
                .ifPresent(cruise -> flags.add(new Flag(
                        cruise.airspeedMPerS(), Style.INK, "cruise " + Numbers.fixed(cruise.airspeedMPerS(), 1))));
        result.performance()
                .topSpeedMPerS()
                .ifPresent(top -> flags.add(new Flag(top, Style.INK, "top speed " + Numbers.fixed(top, 1))));
        return flags;
    }

    private Panel thrust(Axis x) {
        List<KeyEntry> keys = new ArrayList<>();
        keys.add(KeyEntry.line(Style.FIRST_LINE, "available"));
        task.cruise().ifPresent(cruise -> {
            keys.add(KeyEntry.line(Style.SECOND_DASHED, "required"));
            keys.add(KeyEntry.dot(Style.INK, CRUISE));
        });
        double greatest = Math.max(
                most(OperatingPoint::thrustN),
                task.cruise().map(cruise -> 1.2 * cruise.thrustN()).orElse(0.0));
        return new Panel("Thrust, N", keys, Panel.TALL, Axis.fromZero(greatest, TICKS_UP), plot -> {
            task.cruise().ifPresent(cruise -> plot.curve(Style.SECOND_DASHED, drag(cruise.drag(), x)));
            curve(plot, Style.FIRST_LINE, OperatingPoint::thrustN);
            task.cruise().ifPresent(cruise -> plot.dot(Style.INK, cruise.airspeedMPerS(), cruise.thrustN()));
        });
    }

    private static List<Point> drag(DragCurve drag, Axis x) {
        List<Point> points = new ArrayList<>();
        for (int i = 1; i <= DRAG_POINTS; i++) {
            double airspeed = x.to() * i / DRAG_POINTS;
            points.add(new Point(airspeed, drag.dragN(airspeed)));
        }
        return points;
    }

    private List<Panel> currents() {
        PropulsionSystem system = task.system();
        Rating controller = new Rating("controller", orNone(system.controller().maxCurrentA()));
        Rating motor = new Rating("motor", orNone(system.motor().maxCurrentA()));
        Rating pack = new Rating("pack", orNone(system.supply().maxCurrentA()));
        if (system.motorCount() == 1) {
            return List.of(current(
                    "Current, A",
                    OperatingPoint::motorCurrentA,
                    controller.orLower(motor).orLower(pack)));
        }
        return List.of(
                current("Each motor, A", OperatingPoint::motorCurrentA, controller.orLower(motor)),
                current("Pack current, A", OperatingPoint::supplyCurrentA, pack));
    }

    private static double orNone(OptionalDouble limit) {
        return limit.orElse(Double.POSITIVE_INFINITY);
    }

    /** Whose rating it is, and how much; infinite where there is none. */
    private record Rating(String whose, double currentA) {
        Rating orLower(Rating other) {
            return other.currentA < currentA ? other : this;
        }
    }

    private Panel current(String heading, ToDoubleFunction<OperatingPoint> value, Rating rating) {
        double drawnA = most(value);
        boolean shown = rating.currentA < 2 * drawnA;
        List<KeyEntry> keys = new ArrayList<>();
        if (shown) {
            keys.add(KeyEntry.band(Style.LIMIT_BAND, "over the " + rating.whose + "'s " + sig(rating.currentA) + " A"));
        }
        if (result.performance().cruise().isPresent()) {
            keys.add(KeyEntry.dot(Style.INK, CRUISE));
        }
        return new Panel(
                heading,
                keys,
                Panel.TALL,
                Axis.fromZero(Math.max(drawnA, shown ? 1.1 * rating.currentA : 0), TICKS_UP),
                plot -> {
                    if (shown) {
                        plot.bandAcross(Style.LIMIT_BAND, rating.currentA, Double.MAX_VALUE);
                        plot.across(Style.LIMIT_LINE, rating.currentA);
                    }
                    curve(plot, Style.FIRST_LINE, value);
                    cruiseDot(plot, value);
                });
    }

    private Panel efficiency() {
        List<KeyEntry> keys = new ArrayList<>();
        keys.add(KeyEntry.line(Style.FIRST_LINE, "propeller"));
        keys.add(KeyEntry.line(Style.SECOND_DASHED, "motor"));
        keys.add(KeyEntry.line(Style.THIRD_DOTTED, "drive"));
        if (result.performance().cruise().isPresent()) {
            keys.add(KeyEntry.dot(Style.INK, "drive " + CRUISE));
        }
        return new Panel("Efficiency", keys, Panel.TALL, Axis.between(0, 1, 5), plot -> {
            curve(plot, Style.SECOND_DASHED, point -> point.efficiency().motor());
            curve(plot, Style.FIRST_LINE, point -> point.efficiency().propeller());
            curve(plot, Style.THIRD_DOTTED, point -> point.efficiency().total());
            cruiseDot(plot, point -> point.efficiency().total());
        });
    }

    private void curve(Plot plot, Style style, ToDoubleFunction<OperatingPoint> value) {
        if (curve.isEmpty()) {
            plot.message("the supply cannot turn the propeller");
            return;
        }
        plot.curve(
                style,
                Smooth.through(curve.stream()
                        .map(p -> new Point(p.airspeedMPerS(), value.applyAsDouble(p)))
                        .toList()));
    }

    private void cruiseDot(Plot plot, ToDoubleFunction<OperatingPoint> value) {
        result.performance().cruise().ifPresent(p -> plot.dot(Style.INK, p.airspeedMPerS(), value.applyAsDouble(p)));
    }

    private double most(ToDoubleFunction<OperatingPoint> value) {
        return curve.stream().mapToDouble(value).max().orElse(0);
    }

    private String summary() {
        DrivePerformance performance = result.performance();
        StringBuilder summary = new StringBuilder();
        performance
                .atRest()
                .ifPresent(
                        p -> summary.append("At rest ").append(sig(p.thrustN())).append(" N. "));
        performance
                .cruise()
                .ifPresent(p -> summary.append("Cruise takes ")
                        .append(sig(p.electricalPowerW()))
                        .append(" W at ")
                        .append(Numbers.whole(100 * p.throttleFraction()))
                        .append(" % throttle. "));
        OptionalDouble top = performance.topSpeedMPerS();
        top.ifPresent(v -> summary.append("Top speed ").append(sig(v)).append(" m/s. "));
        result.throttleLimit()
                .filter(ThrottleLimit::limits)
                .ifPresent(limit -> summary.append("Ratings hold to ")
                        .append(Numbers.whole(Math.floor(100 * limit.throttleFraction())))
                        .append(" % throttle."));
        return summary.toString().strip();
    }

    private static String sig(double value) {
        return Numbers.significant(value, 3);
    }
}
