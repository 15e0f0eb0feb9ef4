package trestle.structure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A spar at a station under its share of the load.
 *
 * @param lateralM where, m
 * @param spar which
 * @param shearN its share, N
 * @param bendingNm its share, N m
 * @param stress how near it is to giving way
 */
public record StationStress(double lateralM, Spar spar, double shearN, double bendingNm, Stress stress) {
    /** Greatest tube that is offered over the one there. */
    private static final int MOST_STEPS = 200;

    private static final double STEP_M = 0.001;

    static StationStress worst(LoadsTask task, List<StationStress> all) {
        return all.stream()
                .min(Comparator.comparingDouble(s -> s.stress().reserve()))
                .orElseThrow();
    }

    /** The thin tube whose wall is nearest to buckling. */
    static Optional<StationStress> buckling(LoadsTask task, List<StationStress> all) {
        return all.stream()
                .filter(s -> s.spar().section().radiusOverWall() > Buckling.THIN_WALL)
                .map(s -> s.with(new Stress(
                        FailureMode.LOCAL_BUCKLING,
                        s.spar()
                                .section()
                                .bendingStressPa(
                                        Math.abs(s.bendingNm()) / s.spar().count()),
                        Buckling.bendingStressPa(
                                        s.spar().material(), s.spar().section().radiusOverWall())
                                / task.factorOfSafety())))
                .min(Comparator.comparingDouble(s -> s.stress().reserve()));
    }

    private StationStress with(Stress other) {
        return new StationStress(lateralM, spar, shearN, bendingNm, other);
    }

    /** Outside diameter of a tube of the same wall that would stand, in whole millimetres more, m. */
    OptionalDouble thickerTubeM(LoadsTask task) {
        Section section = spar.section();
        if (section.shape() != SparShape.TUBE) {
            return OptionalDouble.empty();
        }
        for (int i = 1; i <= MOST_STEPS; i++) {
            Section thicker = Section.round(section.heightM() + i * STEP_M, section.insideDiameterM() + i * STEP_M);
            Spar other = new Spar(spar.fromM(), spar.toM(), thicker, spar.count(), spar.material(), spar.onFoam());
            if (Stress.worst(other, shearN, bendingNm, task.factorOfSafety(), OptionalDouble.empty())
                            .reserve()
                    >= 1) {
                return OptionalDouble.of(thicker.heightM());
            }
        }
        return OptionalDouble.empty();
    }
}
