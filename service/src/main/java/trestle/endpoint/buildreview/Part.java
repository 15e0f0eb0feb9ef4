package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import trestle.api.model.ApiJudgement;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Premises;
import trestle.figure.Theme;
import trestle.finding.Judgement;
import trestle.finding.Working;

/**
 * One calculation within a review: everything of it that is asked for by name. Nothing of it is worked out before.
 *
 * @param calculation name of the calculation
 * @param run name of the run of wire; empty for what an aircraft has one of
 * @param at where its answer stands in the review's answer, a JSON Pointer
 * @param step its place in the order of computation
 * @param judgement what it thinks of its numbers, with its places in the document
 * @param answer writes it, given that judgement
 * @param figure draws it
 * @param workings how its numbers were reached
 * @param figures its numbers that carry a band
 * @param judged what it thinks of its numbers, in its own words
 * @param <A> generated answer model
 */
record Part<A>(
        String calculation,
        String run,
        String at,
        int step,
        Function<Premises, ApiJudgement> judgement,
        Function<ApiJudgement, A> answer,
        Function<Theme, String> figure,
        Supplier<List<Working>> workings,
        Consumer<Map<MainFigure, Double>> figures,
        Supplier<Judgement> judged) {

    /** The calculation, with the run's name behind it. */
    String named() {
        return run.isEmpty() ? calculation : calculation + ", " + run;
    }
}
