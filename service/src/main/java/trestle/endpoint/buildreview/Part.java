package trestle.endpoint.buildreview;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import trestle.api.model.ApiJudgement;
import trestle.figure.Theme;
import trestle.finding.Working;

/**
 * One calculation within a review: everything of it that the review needs by name.
 *
 * @param calculation name of the calculation; of a run of wire, with the run's name behind it
 * @param at where its answer stands in the review's answer, a JSON Pointer
 * @param step its place in the order of computation
 * @param judgement what it thinks of its numbers, with its places in the document
 * @param figure draws it
 * @param workings how its numbers were reached
 */
record Part(
        String calculation,
        String at,
        int step,
        Supplier<ApiJudgement> judgement,
        Function<Theme, String> figure,
        Supplier<List<Working>> workings) {}
