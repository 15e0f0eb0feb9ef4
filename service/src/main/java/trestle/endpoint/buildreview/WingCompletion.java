package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiAircraftWing;
import trestle.api.model.ApiWing;
import trestle.api.model.ApiWingPanel;
import trestle.endpoint.Estimating;
import trestle.units.Area;
import trestle.units.Length;

/**
 * Spells out a wing of which only span and chord are known.
 *
 * @param wing of the document
 * @param at its JSON Pointer
 * @param estimating notes what is missing, or said twice
 */
record WingCompletion(ApiAircraftWing wing, String at, Estimating estimating) {

    /**
     * The wing by its panels.
     *
     * @param balanced whether masses are placed beside it, so that it needs a place too
     * @return the wing; empty where something is missing, which is noted
     */
    Optional<ApiAircraftWing> complete(boolean balanced) {
        return wing.panels() == null ? ofSpan(balanced) : ofPanels(balanced);
    }

    private Optional<ApiAircraftWing> ofPanels(boolean balanced) {
        if (wing.spanMm() != null || wing.meanChordMm() != null || wing.areaDm2() != null) {
            estimating.contradiction(
                    ApiAircraftWing.PANELS.at(at),
                    "panels tell span and area: leave span_mm, mean_chord_mm and area_dm2 out");
            return Optional.empty();
        }
        if (balanced && wing.rootLeadingEdgeArmMm() == null) {
            missing(ApiAircraftWing.ROOT_LEADING_EDGE_ARM_MM.name());
            return Optional.empty();
        }
        return Optional.of(wing);
    }

    private Optional<ApiAircraftWing> ofSpan(boolean balanced) {
        if (balanced || wing.spanMm() == null) {
            missing(
                    balanced ? "panels, which items are balanced against," : "panels (or span_mm with mean_chord_mm)",
                    ApiAircraftWing.PANELS.at(at));
            return Optional.empty();
        }
        if (wing.meanChordMm() != null && wing.areaDm2() != null) {
            estimating.contradiction(
                    ApiAircraftWing.AREA_DM2.at(at), "with span_mm, mean_chord_mm and area_dm2 say the same: give one");
            return Optional.empty();
        }
        if (wing.meanChordMm() == null && wing.areaDm2() == null) {
            missing("mean_chord_mm (or area_dm2)", ApiAircraftWing.MEAN_CHORD_MM.at(at));
            return Optional.empty();
        }
        double chordMm = wing.meanChordMm() != null ? wing.meanChordMm() : chordMm(wing.areaDm2());
        ApiWingPanel half = ApiWingPanel.builder()
                .rootChordMm(chordMm)
                .tipChordMm(chordMm)
                .spanMm(wing.spanMm() / 2)
                .build();
        return Optional.of(ApiAircraftWing.builder().panels(List.of(half)).build());
    }

    private double chordMm(double areaDm2) {
        return Length.mmFromM(Area.m2FromDm2(areaDm2) / Length.mFromMm(wing.spanMm()));
    }

    private void missing(String name) {
        missing(name, at + "/" + name);
    }

    private void missing(String name, String place) {
        estimating.missing(place, name);
    }

    /**
     * The wing as the balance reads it; one without a place stands at the datum.
     *
     * @param wing by its panels
     * @return the wing
     */
    static ApiWing of(ApiAircraftWing wing) {
        return ApiWing.builder()
                .panels(wing.panels())
                .rootLeadingEdgeArmMm(
                        Optional.ofNullable(wing.rootLeadingEdgeArmMm()).orElse(0.0))
                .rootVerticalMm(wing.rootVerticalMm())
                .build();
    }
}
