package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.wiring.ContactMaterial;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeAnswer;
import trestle.wiring.GaugeSystem;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/** Temperature, drop and energy cost of a run over the gauges it can be made of. */
public final class WireFigure {
    private static final String TITLE = "Gauges for the run";
    private static final int TICKS_UP = 4;

    /** The axis of the drop ends here, in limits: what drops more is off the scale. */
    private static final double MOST_DROP_IN_LIMITS = 3;

    /** The axis of temperature ends this far above the rating, over its rise above the air. */
    private static final double ABOVE_RATING = 0.2;

    /** The axis of cost ends here, in least costs. */
    private static final double MOST_COST_IN_LEAST = 3;

    private final WireTask task;
    private final WireSizing result;
    private final List<GaugeAnswer> gauges;

    private WireFigure(WireTask task, WireSizing result) {
        this.task = task;
        this.result = result;
        List<GaugeAnswer> all = new ArrayList<>(result.candidates());
        result.checked()
                .filter(checked -> all.stream().noneMatch(a -> a.gauge().equals(checked.gauge())))
                .ifPresent(all::add);
        all.sort(Comparator.comparingDouble(answer -> answer.gauge().areaM2()));
        this.gauges = List.copyOf(all);
    }

    /**
     * Draws how each gauge does.
     *
     * @param task what the wire is for
     * @param result the choice
     * @param theme colours
     * @return an SVG document
     */
    public static String of(WireTask task, WireSizing result, Theme theme) {
        return new WireFigure(task, result).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        Axis x = Axis.ofNames(gauges.stream().map(a -> tickOf(a.gauge())).toList());
        List<Panel> panels = new ArrayList<>();
        panels.add(temperature());
        touched().ifPresent(material -> panels.add(surface(material)));
        panels.add(drop());
        if (task.flight().isPresent()) {
            panels.add(cost());
        }
        String title = task.system() == GaugeSystem.AWG ? "Gauge, AWG: thicker to the right" : "Copper area, mm²";
        Panels.draw(page, x, title, flags(), panels);
        return page.finished(theme, TITLE + ". " + summary());
    }

    private String tickOf(Gauge gauge) {
        return gauge.system() == task.system() ? gauge.designation() : "";
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        result.recommended().ifPresent(a -> flags.add(flag(a, Style.THIRD_FILL, "recommended")));
        result.checked().ifPresent(a -> flags.add(flag(a, a.meets() ? Style.INK : Style.LIMIT_TEXT, "checked")));
        result.lightest()
                .filter(a -> result.recommended().filter(a::equals).isEmpty())
                .ifPresent(a -> flags.add(flag(a, Style.MUTED, "lightest")));
        return flags;
    }

    private Flag flag(GaugeAnswer answer, Style style, String what) {
        return new Flag(index(answer), style, what + " " + answer.gauge().label());
    }

    private int index(GaugeAnswer answer) {
        for (int i = 0; i < gauges.size(); i++) {
            if (gauges.get(i).gauge().equals(answer.gauge())) {
                return i;
            }
        }
        return 0;
    }

    private Panel temperature() {
        double limitC = Temperature.cFromK(task.temperatureLimitK());
        double ratingC = Temperature.cFromK(task.insulation().ratingTemperatureK());
        double sinkC = Temperature.cFromK(task.effectiveSurroundings().sinkTemperatureK());
        double top = ratingC + ABOVE_RATING * Math.max(20, ratingC - sinkC);
        List<KeyEntry> keys = new ArrayList<>();
        keys.add(KeyEntry.band(Style.ATTENTION_BAND, "over " + whole(limitC)));
        keys.add(KeyEntry.band(Style.LIMIT_BAND, "over rated " + whole(ratingC)));
        keys.addAll(marks());
        boolean peak = task.run().peak().isPresent();
        if (peak) {
            keys.add(new KeyEntry(KeyEntry.Sign.RING, Style.SECOND_FILL, "after the peak"));
        }
        return new Panel(
                "Conductor, °C", keys, Panel.TALL, Axis.around(Math.min(sinkC, limitC), top, TICKS_UP), plot -> {
                    plot.bandAcross(Style.ATTENTION_BAND, limitC, ratingC);
                    plot.bandAcross(Style.LIMIT_BAND, ratingC, Double.MAX_VALUE);
                    plot.across(Style.LIMIT_LINE, limitC);
                    if (peak) {
                        peaks(plot);
                    }
                    marks(plot, a -> celsius(a.conductorTemperatureK()));
                });
    }

    /** The most delicate thing that the surface touches. */
    private Optional<ContactMaterial> touched() {
        return task.touches().orElse(List.of()).stream()
                .filter(material -> material.side() == ContactMaterial.Side.SURFACE)
                .min(Comparator.comparingDouble(ContactMaterial::limitK));
    }

    private Panel surface(ContactMaterial material) {
        double limitC = Temperature.cFromK(material.limitK());
        double sinkC = Temperature.cFromK(task.effectiveSurroundings().sinkTemperatureK());
        double top = limitC + Math.max(20, limitC - sinkC);
        return new Panel(
                "Surface, °C",
                List.of(KeyEntry.band(Style.LIMIT_BAND, "over " + whole(limitC) + ", " + material.words())),
                Panel.LOW,
                Axis.around(Math.min(sinkC, limitC), top, TICKS_UP),
                plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, limitC, Double.MAX_VALUE);
                    plot.across(Style.LIMIT_LINE, limitC);
                    marks(plot, a -> celsius(a.surfaceTemperatureK()));
                });
    }

    private void peaks(Plot plot) {
        for (int i = 0; i < gauges.size(); i++) {
            Optional<Double> peakC = celsius(gauges.get(i).peakTemperatureK());
            if (peakC.isPresent() && plot.holds(peakC.get())) {
                plot.ring(Style.SECOND_FILL, i, peakC.get());
            }
        }
    }

    private Panel drop() {
        double limit = Share.percentFromFraction(task.drops().continuousFraction());
        return new Panel(
                "Drop, % of the supply",
                List.of(KeyEntry.band(Style.LIMIT_BAND, "over " + Numbers.significant(limit, 2) + " %")),
                Panel.TALL,
                Axis.fromZero(MOST_DROP_IN_LIMITS * limit, TICKS_UP),
                plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, limit, Double.MAX_VALUE);
                    plot.across(Style.LIMIT_LINE, limit);
                    marks(plot, a -> Optional.of(Share.percentFromFraction(a.totalDropFraction())));
                });
    }

    private Panel cost() {
        double leastWh = gauges.stream()
                .flatMap(a -> costWh(a).stream())
                .min(Double::compare)
                .orElse(1.0);
        return new Panel(
                "Energy for loss and carriage, Wh",
                List.of(),
                Panel.LOW,
                Axis.fromZero(MOST_COST_IN_LEAST * leastWh, 3),
                plot -> marks(plot, WireFigure::costWh));
    }

    private List<KeyEntry> marks() {
        List<KeyEntry> keys = new ArrayList<>();
        if (gauges.stream().anyMatch(GaugeAnswer::meets)) {
            keys.add(KeyEntry.dot(Style.THIRD_FILL, "meets all"));
        }
        if (!gauges.stream().allMatch(GaugeAnswer::meets)) {
            keys.add(new KeyEntry(KeyEntry.Sign.CROSS, Style.LIMIT_CROSS, "fails"));
            keys.add(new KeyEntry(KeyEntry.Sign.ARROW, Style.LIMIT_FILL, "off the scale"));
        }
        return keys;
    }

    private void marks(Plot plot, Function<GaugeAnswer, Optional<Double>> value) {
        for (int i = 0; i < gauges.size(); i++) {
            boolean meets = gauges.get(i).meets();
            Optional<Double> at = value.apply(gauges.get(i));
            if (at.isEmpty() || !plot.holds(at.get())) {
                plot.offScale(meets ? Style.THIRD_FILL : Style.LIMIT_FILL, i);
            } else if (meets) {
                plot.dot(Style.THIRD_FILL, i, at.get());
            } else {
                plot.cross(Style.LIMIT_CROSS, i, at.get());
            }
        }
    }

    private static Optional<Double> costWh(GaugeAnswer answer) {
        return answer.energyCostJ().isPresent()
                ? Optional.of(Energy.whFromJ(answer.energyCostJ().getAsDouble()))
                : Optional.empty();
    }

    private static Optional<Double> celsius(OptionalDouble temperatureK) {
        return temperatureK.isPresent()
                ? Optional.of(Temperature.cFromK(temperatureK.getAsDouble()))
                : Optional.empty();
    }

    private static String whole(double value) {
        return Numbers.whole(value);
    }

    private String summary() {
        String run = Numbers.significant(task.run().currentA(), 3)
                + " A over "
                + Numbers.significant(1000 * task.run().lengthM(), 3)
                + " mm at "
                + Numbers.significant(task.run().supplyVoltageV(), 3)
                + " V. ";
        return run
                + result.recommended()
                        .map(a -> a.gauge().label() + " is recommended.")
                        .orElse("No gauge on offer meets the task.");
    }
}
