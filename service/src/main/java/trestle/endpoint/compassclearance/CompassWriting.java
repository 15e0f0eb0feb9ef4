package trestle.endpoint.compassclearance;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiDisturbance;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiRunDisturbance;
import trestle.endpoint.Writing;
import trestle.magnetics.Clearance;
import trestle.magnetics.Disturbance;
import trestle.magnetics.LeadFields;
import trestle.magnetics.LeadRun;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;
import trestle.units.Share;

/** Writes the clearance of a compass into its answer. */
public final class CompassWriting {
    private CompassWriting() {}

    public static ApiCompassClearanceAnswer write(List<LeadRun> runs, Clearance clearance, ApiJudgement judgement) {
        LeadFields cruise = clearance.cruise();
        Optional<LeadFields> full = clearance.fullThrottle();
        return ApiCompassClearanceAnswer.builder()
                .judgement(judgement)
                .runs(IntStream.range(0, runs.size())
                        .mapToObj(i -> run(
                                runs.get(i),
                                cruise.runs().get(i),
                                full.map(f -> f.runs().get(i))))
                        .toList())
                .worstCase(all(cruise.worst()))
                .likely(all(cruise.likely()))
                .worstCaseAtPeak(
                        full.map(LeadFields::worst).map(CompassWriting::all).orElse(null))
                .likelyAtPeak(
                        full.map(LeadFields::likely).map(CompassWriting::all).orElse(null))
                .build();
    }

    private static ApiRunDisturbance run(LeadRun run, Disturbance cruise, Optional<Disturbance> full) {
        ApiDisturbance written = all(cruise);
        return ApiRunDisturbance.builder()
                .name(run.name())
                .fieldUt(written.fieldUt())
                .fieldPercentOfEarth(written.fieldPercentOfEarth())
                .headingErrorDeg(written.headingErrorDeg())
                .leastDistanceMm(written.leastDistanceMm())
                .atPeak(full.map(CompassWriting::all).orElse(null))
                .build();
    }

    private static ApiDisturbance all(Disturbance disturbance) {
        return ApiDisturbance.builder()
                .fieldUt(FluxDensity.utFromT(disturbance.fieldT()))
                .fieldPercentOfEarth(Share.percentFromFraction(disturbance.fieldFractionOfEarth()))
                .headingErrorDeg(Writing.in(disturbance.headingErrorRad(), Angle::degFromRad))
                .leastDistanceMm(Length.mmFromM(disturbance.leastDistanceM()))
                .build();
    }
}
