package trestle.endpoint.compassclearance;

import java.util.List;
import java.util.stream.IntStream;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiDisturbance;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiRunDisturbance;
import trestle.magnetics.Clearance;
import trestle.magnetics.Disturbance;
import trestle.magnetics.LeadRun;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;
import trestle.units.Share;

/** Writes the clearance of a compass into its answer. */
public final class CompassWriting {
    private CompassWriting() {}

    public static ApiCompassClearanceAnswer write(List<LeadRun> runs, Clearance clearance, ApiJudgement judgement) {
        return ApiCompassClearanceAnswer.builder()
                .judgement(judgement)
                .runs(IntStream.range(0, runs.size())
                        .mapToObj(i -> run(runs.get(i), clearance.runs().get(i)))
                        .toList())
                .worstCase(all(clearance.worst()))
                .likely(all(clearance.likely()))
                .build();
    }

    private static ApiRunDisturbance run(LeadRun run, Disturbance alone) {
        ApiDisturbance written = all(alone);
        return ApiRunDisturbance.builder()
                .name(run.name())
                .fieldUt(written.fieldUt())
                .fieldPercentOfEarth(written.fieldPercentOfEarth())
                .headingErrorDeg(written.headingErrorDeg())
                .leastDistanceMm(written.leastDistanceMm())
                .build();
    }

    private static ApiDisturbance all(Disturbance disturbance) {
        return ApiDisturbance.builder()
                .fieldUt(FluxDensity.utFromT(disturbance.fieldT()))
                .fieldPercentOfEarth(Share.percentFromFraction(disturbance.fieldFractionOfEarth()))
                .headingErrorDeg(Angle.degFromRad(disturbance.headingErrorRad()))
                .leastDistanceMm(Length.mmFromM(disturbance.leastDistanceM()))
                .build();
    }
}
