package trestle.endpoint.reference;

import java.util.Arrays;
import java.util.List;
import trestle.api.model.ApiServoRow;
import trestle.endpoint.ReferenceTable;
import trestle.estimate.RailLoads;

/** The table {@code servos}. */
public final class ServosTable implements ReferenceTable {
    @Override
    public String name() {
        return "servos";
    }

    @Override
    public String summary() {
        return "Servos and other loads of the rails with the power that they take and its 10 and 90 % points; one published"
                + " measurement of four servos, else usual practice";
    }

    @Override
    public List<ApiServoRow> rows() {
        return Arrays.stream(RailLoads.values())
                .map(load -> ApiServoRow.builder()
                        .load(load.named())
                        .powerLowW(load.powerW().low())
                        .powerW(load.powerW().median())
                        .powerHighW(load.powerW().high())
                        .source(load.source())
                        .build())
                .toList();
    }
}
