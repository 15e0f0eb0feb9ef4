package trestle.endpoint.reference;

import java.util.Arrays;
import java.util.List;
import trestle.api.model.ApiAirframeKind;
import trestle.api.model.ApiAirframeRow;
import trestle.endpoint.ReferenceTable;
import trestle.estimate.AirframeKind;
import trestle.estimate.Spread;

/** The table {@code airframes}. */
public final class AirframesTable implements ReferenceTable {
    private static final double REYNOLDS = 3e5;

    @Override
    public String name() {
        return "airframes";
    }

    @Override
    public String summary() {
        return "Kinds of airframe with skin friction, wetted area and drag at no lift and their 10 and 90 % points, at a Reynolds"
                + " number of 300,000; judgement on five published aircraft";
    }

    @Override
    public List<ApiAirframeRow> rows() {
        return Arrays.stream(ApiAirframeKind.values()).map(AirframesTable::row).toList();
    }

    private static ApiAirframeRow row(ApiAirframeKind kind) {
        AirframeKind rules = AirframeKind.valueOf(kind.name());
        Spread friction = rules.frictionCoefficient();
        Spread drag = rules.zeroLiftDrag(REYNOLDS);
        return ApiAirframeRow.builder()
                .kind(kind)
                .frictionCoefficientLow(friction.low())
                .frictionCoefficient(friction.median())
                .frictionCoefficientHigh(friction.high())
                .wettedOverWingArea(rules.wettedOverWingArea().median())
                .zeroLiftCoefficientLow(drag.low())
                .zeroLiftCoefficient(drag.median())
                .zeroLiftCoefficientHigh(drag.high())
                .build();
    }
}
