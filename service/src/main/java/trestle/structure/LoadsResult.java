package trestle.structure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * What the structure is asked.
 *
 * @param stallMPerS stall speed, equivalent, m/s
 * @param manoeuvreMPerS above it a full pull passes the limit, m/s
 * @param limitLoadFactor multiples of g
 * @param limitFrom where that is from
 * @param envelope by speed
 * @param gust gusts
 * @param stations root outwards
 * @param joints in their order
 * @param weakest the part that gives first; empty where a spar is missing
 * @param tipOneGM deflection of the tip in level flight, m; absent where a spar is missing
 * @param proof a test
 * @param landing how it comes down
 * @param restraints in their order
 * @param surfaces in their order
 * @param loadsAtDesign every spar at every station at the design load
 * @param judgement what is to be said of it
 */
public record LoadsResult(
        double stallMPerS,
        double manoeuvreMPerS,
        double limitLoadFactor,
        LimitFrom limitFrom,
        List<EnvelopePoint> envelope,
        GustCase gust,
        List<StationLoad> stations,
        List<JointLoad> joints,
        Optional<Weakest> weakest,
        OptionalDouble tipOneGM,
        ProofTest proof,
        Optional<LandingLoad> landing,
        List<RestraintLoad> restraints,
        List<SurfaceLoad> surfaces,
        List<StationStress> loadsAtDesign,
        Judgement judgement) {
    /** Copies the lists. */
    public LoadsResult {
        envelope = List.copyOf(envelope);
        stations = List.copyOf(stations);
        joints = List.copyOf(joints);
        restraints = List.copyOf(restraints);
        surfaces = List.copyOf(surfaces);
        loadsAtDesign = List.copyOf(loadsAtDesign);
    }

    LoadsResult judged(Judgement by) {
        return new LoadsResult(
                stallMPerS,
                manoeuvreMPerS,
                limitLoadFactor,
                limitFrom,
                envelope,
                gust,
                stations,
                joints,
                weakest,
                tipOneGM,
                proof,
                landing,
                restraints,
                surfaces,
                loadsAtDesign,
                by);
    }
}
