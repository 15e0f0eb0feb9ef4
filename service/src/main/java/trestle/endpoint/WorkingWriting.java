package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiWorking;
import trestle.finding.Working;

/** Writes workings into their generated model. */
public final class WorkingWriting {
    private WorkingWriting() {}

    public static List<ApiWorking> write(List<Working> workings) {
        return workings.stream().map(WorkingWriting::line).toList();
    }

    private static ApiWorking line(Working working) {
        return new ApiWorking(
                working.symbol(),
                working.meaning(),
                working.expression(),
                working.value(),
                working.unit(),
                working.source());
    }
}
