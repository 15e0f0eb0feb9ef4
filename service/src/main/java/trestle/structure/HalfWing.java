package trestle.structure;

import java.util.List;
import trestle.numeric.ImpossibleValue;

/**
 * One half of a symmetric wing.
 *
 * @param panels root outwards, at least one
 */
public record HalfWing(List<WingPanel> panels) {
    /** Lift slope of a real section over 2π; common practice, no source. */
    private static final double SECTION_SLOPE_RATIO = 0.95;

    /** Copies the list. */
    public HalfWing {
        panels = List.copyOf(panels);
        if (panels.isEmpty()) {
            throw new ImpossibleValue("panels", "a wing has at least one panel");
        }
    }

    /**
     * Half the span.
     *
     * @return m
     */
    public double halfSpanM() {
        return panels.stream().mapToDouble(WingPanel::spanM).sum();
    }

    /**
     * Area of both halves.
     *
     * @return m²
     */
    public double areaM2() {
        return 2 * panels.stream().mapToDouble(WingPanel::areaM2).sum();
    }

    /**
     * Mass of both halves.
     *
     * @return kg
     */
    public double massKg() {
        return 2 * panels.stream().mapToDouble(WingPanel::massKg).sum();
    }

    /**
     * The mean geometric chord {@code S / b}.
     *
     * @return m
     */
    public double meanChordM() {
        return areaM2() / (2 * halfSpanM());
    }

    /**
     * Chord at a station; at a step in the plan that of the outer panel.
     *
     * @param lateralM from the plane of symmetry, 0 to the half span, m
     * @return m
     */
    public double chordM(double lateralM) {
        double from = 0;
        for (WingPanel panel : panels) {
            if (lateralM < from + panel.spanM()) {
                return panel.chordM(lateralM - from);
            }
            from += panel.spanM();
        }
        return panels.get(panels.size() - 1).tipChordM();
    }

    /** Mass per length of one half, a panel's mass spread as its chord, kg/m. */
    double massPerLengthKgPerM(double lateralM) {
        double from = 0;
        for (WingPanel panel : panels) {
            if (lateralM < from + panel.spanM()) {
                return panel.massKg() * panel.chordM(lateralM - from) / panel.areaM2();
            }
            from += panel.spanM();
        }
        return 0;
    }

    /**
     * Lift slope (Helmbold): {@code a = 2π A / (2 + sqrt(4 + A² (1 + tan²Λ) / κ²))}, κ 0.95, Λ of the half chord.
     *
     * @return per rad
     */
    public double liftSlopePerRad() {
        double aspect = 4 * halfSpanM() * halfSpanM() / areaM2();
        double sweep = panels.stream()
                        .mapToDouble(p -> p.areaM2() * (p.sweepM() + (p.tipChordM() - p.rootChordM()) / 2) / p.spanM())
                        .sum()
                / (areaM2() / 2);
        double effective = aspect / SECTION_SLOPE_RATIO;
        return 2 * Math.PI * aspect / (2 + Math.sqrt(4 + effective * effective * (1 + sweep * sweep)));
    }
}
