package trestle.endpoint;

import java.util.List;
import trestle.api.model.Working;

/** Writes workings into their generated model. */
final class WorkingWriting {
    private WorkingWriting() {}

    static List<Working> write(List<trestle.finding.Working> workings) {
        return workings.stream().map(WorkingWriting::line).toList();
    }

    private static Working line(trestle.finding.Working working) {
        return new Working(
                working.symbol(),
                working.meaning(),
                working.expression(),
                working.value(),
                working.unit(),
                working.source());
    }
}
