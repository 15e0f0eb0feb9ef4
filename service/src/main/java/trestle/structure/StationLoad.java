package trestle.structure;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Loads at a station at the design load.
 *
 * @param lateralM from the plane of symmetry, m
 * @param chordM m
 * @param liftNPerM lift there, N/m
 * @param shearN N
 * @param bendingNm N m
 * @param torsionNm nose up, N m
 * @param stress of the spar that is nearest to giving way; empty where no spar stands
 * @param deflectionM upwards, m; absent where a spar is missing below
 */
public record StationLoad(
        double lateralM,
        double chordM,
        double liftNPerM,
        double shearN,
        double bendingNm,
        double torsionNm,
        Optional<Stress> stress,
        OptionalDouble deflectionM) {}
