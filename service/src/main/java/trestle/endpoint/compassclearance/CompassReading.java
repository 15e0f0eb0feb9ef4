package trestle.endpoint.compassclearance;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiCompassClearanceRequest;
import trestle.api.model.ApiCompassRun;
import trestle.api.model.ApiEarthField;
import trestle.endpoint.Reading;
import trestle.finding.Basis;
import trestle.magnetics.CompassTask;
import trestle.magnetics.LeadRun;
import trestle.numeric.ImpossibleValue;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;

/** Reads the compass and the power leads that pass it. */
public final class CompassReading {
    private CompassReading() {}

    /**
     * The leads.
     *
     * @param runs of the request
     * @param at JSON Pointer of the list
     * @param reading notes contradictions
     * @return the leads; empty where a contradiction was noted
     */
    static Optional<List<LeadRun>> runs(List<ApiCompassRun> runs, String at, Reading reading) {
        return Reading.each(runs, at, (run, place) -> run(run, place, reading));
    }

    private static Optional<LeadRun> run(ApiCompassRun run, String at, Reading reading) {
        if (!reading.notBelow(at, "peak_current_a", run.peakCurrentA(), "current_a", run.currentA())) {
            return Optional.empty();
        }
        try {
            return Optional.of(new LeadRun(
                    run.name(),
                    run.currentA(),
                    Reading.optional(run.peakCurrentA()),
                    Length.mFromMm(run.separationMm()),
                    Reading.or(run.twisted(), ApiCompassRun.TWISTED),
                    Length.mFromMm(run.distanceMm()),
                    Reading.optional(run.lengthMm(), Length::mFromMm)));
        } catch (ImpossibleValue onALead) {
            reading.fault(ApiCompassRun.DISTANCE_MM.at(at), "contradiction", onALead.getMessage());
            return Optional.empty();
        }
    }

    /**
     * The task on leads that were read.
     *
     * @param runs the leads
     * @param earth of the request, or null
     * @param allowedErrorDeg of the request, or null
     * @param at JSON Pointer of what holds these fields
     * @param reading notes defaults
     * @return the task
     */
    public static CompassTask task(
            List<LeadRun> runs, ApiEarthField earth, Double allowedErrorDeg, String at, Reading reading) {
        double horizontalUt = reading.orDefault(
                earth == null ? null : earth.horizontalUt(),
                FluxDensity.utFromT(CompassTask.USUAL_EARTH_HORIZONTAL_T),
                ApiEarthField.HORIZONTAL_UT.at(ApiCompassClearanceRequest.EARTH_FIELD.at(at)),
                "the request gives none; usual in mid latitudes");
        double allowedDeg = reading.orDefault(
                allowedErrorDeg,
                ApiCompassClearanceRequest.ALLOWED_HEADING_ERROR_DEG,
                at,
                "the request gives none; common practice, no source");
        return new CompassTask(
                runs,
                FluxDensity.tFromUt(horizontalUt),
                Angle.radFromDeg(allowedDeg),
                allowedErrorDeg == null ? Basis.COMMON_PRACTICE : Basis.REQUEST);
    }
}
