package trestle.structure;

import java.util.ArrayList;
import java.util.List;

/** Shear, bending and torsion of a half wing at a load factor. */
final class WingLoads {
    private WingLoads() {}

    /**
     * In flight: the whole lift on the wing, less what the wing weighs.
     *
     * @param task the aircraft
     * @param liftFactor lift of the aircraft over its weight
     * @param massFactor load factor of the masses
     * @return up positive
     */
    static Beam beam(LoadsTask task, double liftFactor, double massFactor) {
        double g = Flight.GRAVITY_M_PER_S2;
        double lift = liftFactor * task.weightN();
        List<PointLoad> items = task.items().stream()
                .map(i -> new PointLoad(i.lateralM(), -massFactor * g * i.massKg()))
                .toList();
        return Beam.of(
                Beam.stations(task.wing().halfSpanM(), places(task)),
                y -> lift * task.lift().perLength(task.wing(), y)
                        - massFactor * g * task.wing().massPerLengthKgPerM(y),
                items);
    }

    private static List<Double> places(LoadsTask task) {
        List<Double> places = new ArrayList<>();
        double at = 0;
        for (WingPanel panel : task.wing().panels()) {
            at += panel.spanM();
            places.add(at);
        }
        task.items().forEach(i -> places.add(i.lateralM()));
        task.joints().forEach(j -> places.add(j.lateralM()));
        task.spars().forEach(s -> {
            places.add(s.fromM());
            places.add(s.toM());
        });
        return places;
    }

    /** Torsion about the spar at each station of a beam, nose up positive, N m. */
    static List<Double> torsionNm(LoadsTask task, Beam beam, double loadFactor) {
        double g = Flight.GRAVITY_M_PER_S2;
        double fast = task.fastestMPerS();
        double q = Flight.SEA_LEVEL_KG_PER_M3 * fast * fast / 2;
        Beam twist = Beam.of(
                beam.stations().stream().mapToDouble(Double::doubleValue).toArray(),
                y -> task.moments()
                        .perLength(
                                task.wing(),
                                y,
                                q,
                                loadFactor * task.weightN() * task.lift().perLength(task.wing(), y),
                                loadFactor * g * task.wing().massPerLengthKgPerM(y)),
                List.of());
        return beam.stations().stream().map(twist::shearN).toList();
    }
}
