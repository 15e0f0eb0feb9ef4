package trestle.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.stream.Collectors;
import trestle.api.model.ApiFault;

/**
 * Faults as the value of a cell. A spreadsheet shows nothing of an answer but a good one, so a
 * caller may ask to have the fault itself as the value.
 */
final class InlineError {
    /** A cell is no page: the rest are counted. */
    private static final int MOST = 5;

    private InlineError() {}

    /** Answers with the value instead of a problem where the request asks for that. */
    static Handler around(Handler handler) {
        return context -> {
            try {
                handler.handle(context);
            } catch (RuntimeException failure) {
                Problem problem = Problem.behind(failure)
                        .filter(p -> QueryOptions.inlineErrors(Query.of(context.queryString())))
                        .orElseThrow(() -> failure);
                write(context, problem);
            }
        };
    }

    private static void write(Context context, Problem problem) {
        context.status(200)
                .header("Cache-Control", "no-store")
                .contentType("text/plain;charset=utf-8")
                .result("#ERR " + text(problem));
    }

    /** A status and the faults in one line. */
    static String text(Problem problem) {
        List<ApiFault> faults = problem.faults();
        String general = problem.detail() == null ? problem.kind().title() : problem.detail();
        String said = faults.isEmpty()
                ? general
                : faults.stream()
                        .limit(MOST)
                        .map(f -> f.at() + ": " + f.message())
                        .collect(Collectors.joining("; "));
        String rest = faults.size() > MOST ? "; and " + (faults.size() - MOST) + " more" : "";
        String line = problem.kind().status() + " " + said + rest;
        return line.replaceAll("\\p{Cntrl}+", " ");
    }
}
