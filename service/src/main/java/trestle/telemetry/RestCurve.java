package trestle.telemetry;

import java.util.List;
import java.util.OptionalDouble;
import trestle.numeric.ImpossibleValue;

/**
 * Rest voltage of a pack over the charge that is out of it.
 *
 * @param points from full to empty: charge rises, voltage does not
 * @param startUsedC charge that was out of it at take-off, C
 * @param seriesCount cells in series
 */
public record RestCurve(List<RestPoint> points, double startUsedC, int seriesCount) {
    /** How well a rest voltage is known, V a cell: rest of minutes rather than hours, meter. Common practice, no source. */
    public static final double CELL_DEVIATION_V = 0.02;

    /** Copies the points and checks them. */
    public RestCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new ImpossibleValue("points", "a rest voltage needs two points or more");
        }
    }

    /**
     * Charge from full to empty.
     *
     * @return capacity, C
     */
    public double capacityC() {
        return points.get(points.size() - 1).usedC();
    }

    /**
     * Rest voltage.
     *
     * @param usedC charge out of it, C
     * @return voltage, V; that of the nearer end beyond it
     */
    public double voltageV(double usedC) {
        for (int i = 1; i < points.size(); i++) {
            RestPoint a = points.get(i - 1);
            RestPoint b = points.get(i);
            if (usedC <= b.usedC()) {
                double share = Math.max(0, (usedC - a.usedC()) / (b.usedC() - a.usedC()));
                return a.voltageV() + share * (b.voltageV() - a.voltageV());
            }
        }
        return points.get(points.size() - 1).voltageV();
    }

    /**
     * Charge that is out of it at a rest voltage.
     *
     * @param voltageV voltage, V
     * @return charge, C; empty where no charge shows that voltage
     */
    public OptionalDouble usedC(double voltageV) {
        for (int i = 1; i < points.size(); i++) {
            RestPoint a = points.get(i - 1);
            RestPoint b = points.get(i);
            if (voltageV <= a.voltageV() && voltageV >= b.voltageV() && a.voltageV() > b.voltageV()) {
                double share = (a.voltageV() - voltageV) / (a.voltageV() - b.voltageV());
                return OptionalDouble.of(a.usedC() + share * (b.usedC() - a.usedC()));
            }
        }
        return OptionalDouble.empty();
    }

    /** How far that charge may be off by the voltage alone, standard deviation, C. */
    double usedDeviationC(double voltageV) {
        double off = seriesCount * CELL_DEVIATION_V;
        double more = usedC(voltageV - off).orElse(capacityC());
        double less = usedC(voltageV + off).orElse(0);
        return Math.abs(more - less) / 2;
    }
}
