package trestle.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * A cantilever from the root out: shear and bending by adding up from its free end, deflection by integrating curvature
 * twice from the root. The load is taken at the middle of each interval, which is exact where it is constant.
 */
public final class Beam {
    /** Stations close together at the tip, where an ellipse is steep: error of a centroid under 1e-6. */
    private static final int INTERVALS = 800;

    private final double[] at;
    private final double[] shearN;
    private final double[] bendingNm;

    private Beam(double[] at, double[] shearN, double[] bendingNm) {
        this.at = at;
        this.shearN = shearN;
        this.bendingNm = bendingNm;
    }

    /** {@code y = L sin θ} with θ evenly spaced, and the places that must be among them. */
    static double[] stations(double lengthM, List<Double> among) {
        TreeSet<Double> all = new TreeSet<>();
        for (int i = 0; i <= INTERVALS; i++) {
            all.add(i == INTERVALS ? lengthM : lengthM * Math.sin(Math.PI / 2 * i / INTERVALS));
        }
        among.stream().filter(y -> y >= 0 && y <= lengthM).forEach(all::add);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * A beam under a load along its length and forces at stations.
     *
     * @param lengthM its length, m
     * @param loadNPerM load at a station, up positive, N/m
     * @param forces at stations, which become stations of the beam
     * @return shear and bending
     */
    public static Beam of(double lengthM, DoubleUnaryOperator loadNPerM, List<PointLoad> forces) {
        return of(stations(lengthM, forces.stream().map(PointLoad::lateralM).toList()), loadNPerM, forces);
    }

    static Beam of(double[] at, DoubleUnaryOperator loadNPerM, List<PointLoad> forces) {
        int n = at.length;
        double[] shear = new double[n];
        double[] bending = new double[n];
        for (int i = n - 2; i >= 0; i--) {
            double dy = at[i + 1] - at[i];
            double load = loadNPerM.applyAsDouble((at[i] + at[i + 1]) / 2);
            double outer = shear[i + 1] + forceAt(forces, at[i + 1]);
            shear[i] = outer + load * dy;
            bending[i] = bending[i + 1] + outer * dy + load * dy * dy / 2;
        }
        return new Beam(at, shear, bending);
    }

    private static double forceAt(List<PointLoad> forces, double y) {
        double sum = 0;
        for (PointLoad force : forces) {
            sum += force.lateralM() == y ? force.forceN() : 0;
        }
        return sum;
    }

    List<Double> stations() {
        List<Double> list = new ArrayList<>();
        for (double y : at) {
            list.add(y);
        }
        return list;
    }

    double stationM(int i) {
        return at[i];
    }

    int count() {
        return at.length;
    }

    /**
     * Shear just outboard of a station, between two linearly.
     *
     * @param lateralM m
     * @return N
     */
    public double shearN(double lateralM) {
        return between(shearN, lateralM);
    }

    /**
     * Bending at a station.
     *
     * @param lateralM m
     * @return N m
     */
    public double bendingNm(double lateralM) {
        return between(bendingNm, lateralM);
    }

    private double between(double[] of, double y) {
        int i = java.util.Arrays.binarySearch(at, y);
        if (i >= 0) {
            return of[i];
        }
        int upper = Math.min(at.length - 1, -i - 1);
        int lower = Math.max(0, upper - 1);
        double width = at[upper] - at[lower];
        return width == 0 ? of[lower] : of[lower] + (of[upper] - of[lower]) * (y - at[lower]) / width;
    }

    /**
     * Deflection under the bending: {@code w'' = M / (E I)}, w and w' 0 at the root.
     *
     * @param stiffnessNm2 E I at a station, N m², above 0
     * @return at each station, m
     */
    public List<Double> deflectionM(DoubleUnaryOperator stiffnessNm2) {
        List<Double> deflection = new ArrayList<>(at.length);
        double slope = 0;
        double sag = 0;
        deflection.add(0.0);
        for (int i = 0; i + 1 < at.length; i++) {
            double dy = at[i + 1] - at[i];
            double stiffness = stiffnessNm2.applyAsDouble((at[i] + at[i + 1]) / 2);
            double inner = bendingNm[i] / stiffness;
            double outer = bendingNm[i + 1] / stiffness;
            sag += slope * dy + (2 * inner + outer) * dy * dy / 6;
            slope += (inner + outer) * dy / 2;
            deflection.add(sag);
        }
        return deflection;
    }
}
