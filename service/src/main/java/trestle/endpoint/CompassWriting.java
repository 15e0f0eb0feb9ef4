package trestle.endpoint;

import java.util.List;
import java.util.stream.IntStream;
import trestle.api.model.CompassClearanceAnswer;
import trestle.api.model.Judgement;
import trestle.api.model.RunDisturbance;
import trestle.magnetics.Clearance;
import trestle.magnetics.Disturbance;
import trestle.magnetics.LeadRun;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;
import trestle.units.Share;

/** Writes the clearance of a compass into its answer. */
final class CompassWriting {
    private CompassWriting() {}

    static CompassClearanceAnswer write(List<LeadRun> runs, Clearance clearance, Judgement judgement) {
        return CompassClearanceAnswer.builder()
                .judgement(judgement)
                .runs(IntStream.range(0, runs.size())
                        .mapToObj(i -> run(runs.get(i), clearance.runs().get(i)))
                        .toList())
                .worstCase(all(clearance.worst()))
                .likely(all(clearance.likely()))
                .build();
    }

    private static RunDisturbance run(LeadRun run, Disturbance alone) {
        trestle.api.model.Disturbance written = all(alone);
        return RunDisturbance.builder()
                .name(run.name())
                .fieldUt(written.fieldUt())
                .fieldPercentOfEarth(written.fieldPercentOfEarth())
                .headingErrorDeg(written.headingErrorDeg())
                .leastDistanceMm(written.leastDistanceMm())
                .build();
    }

    private static trestle.api.model.Disturbance all(Disturbance disturbance) {
        return trestle.api.model.Disturbance.builder()
                .fieldUt(FluxDensity.utFromT(disturbance.fieldT()))
                .fieldPercentOfEarth(Share.percentFromFraction(disturbance.fieldFractionOfEarth()))
                .headingErrorDeg(Angle.degFromRad(disturbance.headingErrorRad()))
                .leastDistanceMm(Length.mmFromM(disturbance.leastDistanceM()))
                .build();
    }
}
