package trestle.propulsion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trestle.units.Length;

/**
 * A propeller that no constant of the model was fitted to, what is kept of its measurements, and how far the model
 * is off. See reference/uiuc-propellers/README.md.
 */
record HoldOut(
        String name, BladeType type, double diameterIn, double pitchIn, List<Point> atRest, List<Point> advancing) {
    private static final double DENSITY_KG_PER_M3 = 1.225;
    private static final double VISCOSITY_PA_S = 1.81e-5;

    /** In flight, relative errors are judged where thrust is above this share of static thrust. */
    private static final double USEFUL_THRUST_RATIO = 0.3;

    record Point(double rpm, double advanceRatio, PropellerCoefficients measured) {}

    static List<HoldOut> all() {
        Map<String, HoldOut> byName = new LinkedHashMap<>();
        for (String[] row : ReferenceRows.of("/reference/uiuc-propellers/static.csv")) {
            byName.computeIfAbsent(
                            row[0],
                            name -> new HoldOut(
                                    name,
                                    BladeType.valueOf(row[1]),
                                    Double.parseDouble(row[2]),
                                    Double.parseDouble(row[3]),
                                    new ArrayList<>(),
                                    new ArrayList<>()))
                    .atRest()
                    .add(point(row[4], "0", row[5], row[6]));
        }
        for (String[] row : ReferenceRows.of("/reference/uiuc-propellers/advance.csv")) {
            byName.get(row[0]).advancing().add(point(row[1], row[2], row[3], row[4]));
        }
        return List.copyOf(byName.values());
    }

    private static Point point(String rpm, String advance, String thrust, String power) {
        return new Point(
                Double.parseDouble(rpm),
                Double.parseDouble(advance),
                new PropellerCoefficients(Double.parseDouble(thrust), Double.parseDouble(power)));
    }

    PropellerCoefficients modelled(double rpm, double advanceRatio) {
        double diameterM = Length.mFromIn(diameterIn);
        return new BladeElementModel(diameterM, Length.mFromIn(pitchIn), 2, type)
                .at(advanceRatio, DENSITY_KG_PER_M3 * rpm / 60 * diameterM * diameterM / VISCOSITY_PA_S);
    }

    double staticThrustErrorPercent() {
        return 100
                * atRest.stream().mapToDouble(p -> thrustRatio(p) - 1).average().orElseThrow();
    }

    double staticPowerErrorPercent() {
        return 100
                * atRest.stream().mapToDouble(p -> powerRatio(p) - 1).average().orElseThrow();
    }

    double meanAbsoluteThrustErrorInFlightPercent() {
        return 100
                * useful().stream()
                        .mapToDouble(p -> Math.abs(thrustRatio(p) - 1))
                        .average()
                        .orElseThrow();
    }

    double meanAbsolutePowerErrorInFlightPercent() {
        return 100
                * useful().stream()
                        .mapToDouble(p -> Math.abs(powerRatio(p) - 1))
                        .average()
                        .orElseThrow();
    }

    double meanAbsoluteEfficiencyError() {
        return useful().stream()
                .mapToDouble(p -> Math.abs(
                        modelled(p).efficiency(p.advanceRatio()) - p.measured().efficiency(p.advanceRatio())))
                .average()
                .orElseThrow();
    }

    double peakEfficiencyError() {
        double rpm = advancing.get(advancing.size() / 2).rpm();
        double modelled = 0;
        for (double advanceRatio = 0.05; advanceRatio < 1.6; advanceRatio += 0.01) {
            modelled = Math.max(modelled, modelled(rpm, advanceRatio).efficiency(advanceRatio));
        }
        double measured = advancing.stream()
                .mapToDouble(p -> p.measured().efficiency(p.advanceRatio()))
                .max()
                .orElseThrow();
        return modelled - measured;
    }

    private List<Point> useful() {
        double staticThrust = atRest.stream()
                .mapToDouble(p -> p.measured().thrust())
                .average()
                .orElseThrow();
        return advancing.stream()
                .filter(p -> p.measured().thrust() > USEFUL_THRUST_RATIO * staticThrust)
                .toList();
    }

    private PropellerCoefficients modelled(Point point) {
        return modelled(point.rpm(), point.advanceRatio());
    }

    private double thrustRatio(Point point) {
        return modelled(point).thrust() / point.measured().thrust();
    }

    private double powerRatio(Point point) {
        return modelled(point).power() / point.measured().power();
    }

    @Override
    public String toString() {
        return name;
    }
}
