package trestle.battery;

import java.util.List;
import trestle.numeric.ImpossibleValue;
import trestle.numeric.PolyLine;

/**
 * The measured open-circuit curve of one cell, or none. What follows from it is worked out once, since a
 * search starts a pack hundreds of times. Immutable.
 */
public final class OpenCircuitCurve {
    /** No curve: the chemistry's own counts. */
    public static final OpenCircuitCurve NONE = new OpenCircuitCurve(List.of());

    private static final double MUST_START_BELOW = 0.1;
    private static final double MUST_END_ABOVE = 0.9;
    private static final int SLICES = 100;

    private final List<OpenCircuitPoint> points;
    private final PolyLine line;
    private final double meanV;

    /** The electrodes of the chemistry, moved to this curve; worked out at the first use, the same each time. */
    private volatile Moved moved;

    private record Moved(Electrodes from, Electrodes to) {}

    private OpenCircuitCurve(List<OpenCircuitPoint> points) {
        this.points = List.copyOf(points);
        if (points.isEmpty()) {
            line = null;
            meanV = 0;
            return;
        }
        check(points);
        line = new PolyLine(
                points.stream()
                        .mapToDouble(OpenCircuitPoint::stateOfChargeFraction)
                        .toArray(),
                points.stream().mapToDouble(OpenCircuitPoint::voltageV).toArray());
        double sumV = 0;
        for (int i = 0; i < SLICES; i++) {
            sumV += line.at((i + 0.5) / SLICES);
        }
        meanV = sumV / SLICES;
    }

    /**
     * A curve through measured points.
     *
     * @param points in rising order of charge; none: no curve
     * @return the curve
     */
    public static OpenCircuitCurve of(List<OpenCircuitPoint> points) {
        return points.isEmpty() ? NONE : new OpenCircuitCurve(points);
    }

    /**
     * Whether there is none.
     *
     * @return whether the chemistry's own counts
     */
    public boolean isEmpty() {
        return points.isEmpty();
    }

    /** Voltage at a state of charge, 0 to 1, V. */
    double at(double fraction) {
        return line.at(fraction);
    }

    /** Mean voltage from empty to full, V. */
    double meanV() {
        return meanV;
    }

    /** Electrodes that show this curve. */
    Electrodes move(Electrodes from) {
        Moved known = moved;
        if (known == null || known.from() != from) {
            known = new Moved(from, from.withOpenCircuit(line));
            moved = known;
        }
        return known.to();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OpenCircuitCurve curve && points.equals(curve.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    @Override
    public String toString() {
        return "OpenCircuitCurve" + points;
    }

    /** Refuses a curve that is not rising or leaves an end of the charge out. */
    private static void check(List<OpenCircuitPoint> curve) {
        for (int i = 1; i < curve.size(); i++) {
            OpenCircuitPoint before = curve.get(i - 1);
            OpenCircuitPoint here = curve.get(i);
            if (here.stateOfChargeFraction() <= before.stateOfChargeFraction() || here.voltageV() < before.voltageV()) {
                throw new ImpossibleValue(
                        "openCircuitCurve",
                        "the open-circuit curve must rise: its point "
                                + (i + 1)
                                + " does not lie above the point before it");
            }
        }
        if (curve.size() < 3
                || curve.get(0).stateOfChargeFraction() > MUST_START_BELOW
                || curve.get(curve.size() - 1).stateOfChargeFraction() < MUST_END_ABOVE) {
            throw new ImpossibleValue(
                    "openCircuitCurve",
                    "the open-circuit curve needs three points or more, from 10 % or less to 90 %"
                            + " or more of the charge");
        }
    }
}
