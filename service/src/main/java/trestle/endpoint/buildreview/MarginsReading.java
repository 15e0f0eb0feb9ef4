package trestle.endpoint.buildreview;

import java.util.Optional;
import trestle.api.model.ApiAirframe;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiGoAround;
import trestle.api.model.ApiTailFin;
import trestle.endpoint.Reading;
import trestle.motorout.Fin;
import trestle.review.GoAroundPlan;
import trestle.units.Angle;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Share;

/**
 * Reads what an aircraft is to have in hand: a go-around at the end of its flight, and fins for the motor that stops.
 *
 * @param request the document
 * @param reading notes defaults and contradictions
 */
record MarginsReading(ApiBuildReviewRequest request, Reading reading) {
    private static final String USUAL = "the document gives none; common practice, no source";

    /** Fins and rudders; empty where they are not described. */
    Optional<Fin> fin() {
        ApiAirframe airframe = request.airframe();
        String at = ApiAirframe.TAIL_FIN.at("/airframe");
        return Optional.ofNullable(airframe.tailFin())
                .map(fin -> new Fin(
                        Area.m2FromDm2(fin.areaDm2()),
                        Length.mFromMm(fin.heightMm()),
                        Length.mFromMm(fin.quarterChordArmMm()),
                        Reading.or(fin.count(), ApiTailFin.COUNT),
                        reading.orDefault(fin.efficiency(), ApiTailFin.EFFICIENCY, at, USUAL),
                        Reading.optional(fin.rudderChordPercent(), Share::fractionFromPercent),
                        Angle.radFromDeg(
                                fin.rudderChordPercent() == null
                                        ? Reading.or(fin.rudderDeflectionDeg(), ApiTailFin.RUDDER_DEFLECTION_DEG)
                                        : reading.orDefault(
                                                fin.rudderDeflectionDeg(),
                                                ApiTailFin.RUDDER_DEFLECTION_DEG,
                                                at,
                                                USUAL))));
    }

    /** The go-around, with its defaults where none is described. */
    GoAroundPlan goAround() {
        ApiGoAround asked = Optional.ofNullable(request.goAround())
                .orElseGet(() -> ApiGoAround.builder().build());
        return new GoAroundPlan(
                Reading.optional(asked.stateOfChargePercent(), Share::fractionFromPercent),
                Reading.optional(asked.powerW()),
                Reading.or(asked.holdS(), ApiGoAround.HOLD_S),
                Reading.or(asked.heightM(), ApiGoAround.HEIGHT_M),
                request.goAround() != null);
    }
}
