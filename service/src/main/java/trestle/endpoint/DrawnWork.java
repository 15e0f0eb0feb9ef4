package trestle.endpoint;

import java.util.List;
import trestle.estimate.Draw;

/** One request, worked at a draw of all that is not known: for whoever draws by himself. */
public final class DrawnWork {
    private DrawnWork() {}

    /**
     * Completes, reads and works a request at a draw.
     *
     * @param calculation what is computed
     * @param request validated against its constraints
     * @param draw a deviate for each unknown
     * @param <Q> generated request model
     * @param <R> what is read of a request
     * @param <W> what is worked out of it
     * @return the request with its work
     */
    public static <Q, R, W> Done<Q, R, W> of(Calculation<Q, R, W, ?> calculation, Q request, Draw draw) {
        Estimating estimating = new Estimating(draw, true);
        Q whole = calculation.complete(request, estimating);
        estimating.refuseMissing();
        Reading reading = new Reading();
        R read = calculation.read(whole, reading);
        return new Done<>(whole, read, calculation.work(read), Premises.of(reading.assumptions()));
    }

    /**
     * What a calculation does not know of a request.
     *
     * @param calculation what is computed
     * @param request validated against its constraints
     * @param <Q> generated request model
     * @return names of the unknowns, which are pointers into the request
     */
    public static <Q> List<String> unknowns(Calculation<Q, ?, ?, ?> calculation, Q request) {
        Estimating estimating = new Estimating(Draw.MEDIANS, true);
        calculation.complete(request, estimating);
        return estimating.unknowns().stream().map(Unknown::at).toList();
    }
}
