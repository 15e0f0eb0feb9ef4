package trestle.endpoint.massbalance;

import java.util.Optional;
import trestle.api.model.ApiFuselage;
import trestle.api.model.ApiMassBalanceRequest;
import trestle.api.model.ApiTail;
import trestle.api.model.ApiWing;
import trestle.api.model.ApiWingPanel;
import trestle.endpoint.Reading;
import trestle.massbalance.Fuselage;
import trestle.massbalance.Panel;
import trestle.massbalance.Tail;
import trestle.massbalance.TailArrangement;
import trestle.massbalance.Tailless;
import trestle.massbalance.Wing;
import trestle.units.Angle;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Share;

/** Reads wing and tail, which several requests share. */
public final class AirframeReading {
    private static final String BECAUSE_NOT_GIVEN = "the request gives none; common practice, no source";

    private AirframeReading() {}

    public static Wing wing(ApiWing wing) {
        return new Wing(
                wing.panels().stream().map(AirframeReading::panel).toList(),
                Length.mFromMm(wing.rootLeadingEdgeArmMm()),
                Reading.optional(wing.rootVerticalMm(), Length::mFromMm));
    }

    private static Panel panel(ApiWingPanel panel) {
        return new Panel(
                Length.mFromMm(panel.rootChordMm()),
                Length.mFromMm(panel.tipChordMm()),
                Length.mFromMm(panel.spanMm()),
                Length.mFromMm(Reading.or(panel.sweepMm(), ApiWingPanel.SWEEP_MM)),
                Angle.radFromDeg(Reading.or(panel.dihedralDeg(), ApiWingPanel.DIHEDRAL_DEG)));
    }

    /** The shape of a fuselage. */
    public static Fuselage fuselage(ApiFuselage fuselage) {
        return new Fuselage(
                Length.mFromMm(fuselage.lengthMm()),
                Length.mFromMm(fuselage.widthMm()),
                Length.mFromMm(fuselage.noseArmMm()));
    }

    /**
     * The tail, or that there is none.
     *
     * @param tail of the request, or null
     * @param tailless whether the request says that there is none
     * @param shiftPercentMac fuselage shift of the request, or null
     * @param at JSON Pointer of what holds these fields
     * @param reading notes the defaults
     * @return the arrangement; empty where the request says neither
     */
    public static Optional<TailArrangement> tail(
            ApiTail tail, boolean tailless, Double shiftPercentMac, String at, Reading reading) {
        if (tail == null && !tailless) {
            return Optional.empty();
        }
        double shift = Share.fractionFromPercent(reading.orDefault(
                shiftPercentMac, ApiMassBalanceRequest.FUSELAGE_SHIFT_PERCENT_MAC, at, BECAUSE_NOT_GIVEN));
        if (tail == null) {
            return Optional.of(new Tailless(shift));
        }
        double efficiency = reading.orDefault(
                tail.efficiency(), ApiTail.EFFICIENCY, ApiMassBalanceRequest.TAIL.at(at), BECAUSE_NOT_GIVEN);
        return Optional.of(new Tail(
                Area.m2FromDm2(tail.areaDm2()),
                Length.mFromMm(tail.spanMm()),
                Length.mFromMm(tail.quarterChordArmMm()),
                Reading.optional(tail.verticalMm(), Length::mFromMm),
                Reading.optional(tail.dihedralDeg(), Angle::radFromDeg),
                efficiency,
                shift));
    }

    /** Notes a tail beside a flying wing, and a static margin that has neither to rest on. */
    public static void marginNeedsTail(
            Double marginPercent, ApiTail tail, boolean tailless, String at, Reading reading) {
        if (tail != null && tailless) {
            reading.fault(
                    ApiMassBalanceRequest.TAILLESS.at(at), "contradiction", "tailless is true, but a tail is given");
        }
        if (marginPercent != null && tail == null && !tailless) {
            reading.fault(
                    ApiMassBalanceRequest.TAIL.at(at),
                    "missing",
                    "target_static_margin_percent needs the tail, or tailless");
        }
    }
}
