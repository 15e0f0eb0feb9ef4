package trestle.endpoint;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import trestle.estimate.Draw;
import trestle.estimate.Propagation;
import trestle.estimate.Sampled;
import trestle.estimate.Uncertainty;
import trestle.numeric.ImpossibleValue;

/**
 * Does one request: once at the middle of all that is not known, which is the answer, and at many draws, for how sure it
 * is.
 *
 * @param calculation what is computed
 * @param request validated against its constraints
 * @param certainty whether to estimate, and how thoroughly to seek bands
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 */
record Doing<Q, R, W>(Calculation<Q, R, W, ?> calculation, Q request, Certainty certainty) {

    /** The request with what it left open, at the middle of what is not known. */
    Q whole(Estimating middle) {
        Q whole = calculation.complete(request, middle);
        middle.refuseMissing();
        return whole;
    }

    Done<Q, R, W> done() {
        Estimating middle = new Estimating(Draw.MEDIANS, certainty.estimates());
        Q whole = whole(middle);
        Reading reading = new Reading();
        R read = calculation.read(whole, reading);
        W work = calculation.work(read);
        List<Unknown> unknowns = middle.unknowns();
        Uncertainty uncertainty = certainty
                .bands()
                .depth()
                .filter(depth -> !unknowns.isEmpty())
                .map(depth -> Propagation.of(
                        unknowns.stream().map(Unknown::at).toList(),
                        Stream.of(MainFigure.values()).map(MainFigure::field).toList(),
                        MainFigure.signed(),
                        draw -> at(draw, work),
                        depth))
                .orElse(Uncertainty.NONE);
        Premises premises = PremisesWriting.of(
                reading.assumptions(), unknowns, uncertainty, certainty.bands().depth(), calculation.stops(work));
        return new Done<>(whole, read, work, premises);
    }

    /** A draw that contradicts itself has no solution: it counts, and ends nothing. */
    private Sampled at(Draw draw, W middle) {
        try {
            Q whole = calculation.complete(request, new Estimating(draw, certainty.estimates()));
            W work = calculation.workAgain(calculation.read(whole, new Reading()), middle);
            Map<MainFigure, Double> figures = new EnumMap<>(MainFigure.class);
            calculation.figures(work, figures);
            Map<String, Double> named = new LinkedHashMap<>();
            figures.forEach((figure, value) -> {
                if (value != null && Double.isFinite(value)) {
                    named.put(figure.field(), value);
                }
            });
            return new Sampled(named, calculation.stops(work));
        } catch (ImpossibleRequest | ImpossibleValue none) {
            return Sampled.NONE;
        }
    }
}
