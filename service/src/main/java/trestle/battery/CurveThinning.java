package trestle.battery;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeSet;

/**
 * Leaves out points of a curve that lie nearly on a straight line between others: the stretch with
 * the worst point is split there, again and again (Douglas and Peucker 1973), until enough are
 * kept. Ends and knees stay.
 */
final class CurveThinning {
    private CurveThinning() {}

    /**
     * At most so many points of a curve.
     *
     * @param curve points in order of time
     * @param most how many to keep, 2 or more
     * @return the points kept, in order
     */
    static List<CurvePoint> thin(List<CurvePoint> curve, int most) {
        if (curve.size() <= most) {
            return List.copyOf(curve);
        }
        TreeSet<Integer> kept = new TreeSet<>(List.of(0, curve.size() - 1));
        PriorityQueue<Stretch> worstFirst = new PriorityQueue<>(
                Comparator.comparingDouble(Stretch::deviationV).reversed());
        worstFirst.add(stretch(curve, 0, curve.size() - 1));
        while (kept.size() < most && worstFirst.peek().deviationV > 0) {
            Stretch split = worstFirst.remove();
            kept.add(split.worst);
            worstFirst.add(stretch(curve, split.from, split.worst));
            worstFirst.add(stretch(curve, split.worst, split.to));
        }
        return kept.stream().map(curve::get).toList();
    }

    private static Stretch stretch(List<CurvePoint> curve, int from, int to) {
        CurvePoint first = curve.get(from);
        CurvePoint last = curve.get(to);
        double spanS = last.timeS() - first.timeS();
        double slope = spanS > 0 ? (last.voltageV() - first.voltageV()) / spanS : 0;
        int worst = from;
        double deviationV = 0;
        for (int i = from + 1; i < to; i++) {
            CurvePoint here = curve.get(i);
            double lineV = first.voltageV() + slope * (here.timeS() - first.timeS());
            double awayV = Math.abs(here.voltageV() - lineV);
            if (awayV > deviationV) {
                deviationV = awayV;
                worst = i;
            }
        }
        return new Stretch(from, to, worst, deviationV);
    }

    private record Stretch(int from, int to, int worst, double deviationV) {}
}
