package trestle.endpoint;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import trestle.api.model.ApiWorking;
import trestle.estimate.Draw;
import trestle.figure.Theme;

/**
 * One calculation of the catalogue: a request is read once and worked once, and everything that can
 * be asked of it (the answer, its workings, its picture, its sheet) is drawn from that one work.
 *
 * @param <Q> generated request model
 * @param <R> what is read of a request, in our own records and SI
 * @param <W> what is worked out of it
 * @param <A> generated answer model
 */
public interface Calculation<Q, R, W, A> {
    /**
     * Name of the calculation: kebab-case, the last part of its path.
     *
     * @return the name
     */
    String name();

    /**
     * The generated model of its request.
     *
     * @return the class
     */
    Class<Q> requestType();

    /**
     * The generated model of its answer.
     *
     * @return the class
     */
    default Class<?> answerType() {
        for (var method : getClass().getMethods()) {
            if (method.getName().equals("answer") && !method.isBridge()) {
                return method.getReturnType();
            }
        }
        throw new IllegalStateException(name() + " answers nothing");
    }

    /**
     * Whether the answer is one of rows, which may be too many for one answer.
     *
     * @return whether {@link #table} has them
     */
    default boolean tabled() {
        return false;
    }

    /**
     * The answer as rows that may be too many for one answer.
     *
     * @param read what was read of the request
     * @return the rows; empty for a calculation that answers once
     */
    default Optional<Table> table(R read) {
        return Optional.empty();
    }

    /**
     * Names of the calculations that can be asked of the same request alone.
     *
     * @return the names; none for a calculation of one part
     */
    default List<String> parts() {
        return List.of();
    }

    /**
     * One of them, as a calculation of its own.
     *
     * @param part one of {@link #parts()}
     * @return the calculation, which takes the same request
     */
    default Calculation<Q, ?, ?, ?> part(PartName part) {
        throw new IllegalArgumentException(name() + " has no part");
    }

    /**
     * Reads a request that fits the contract.
     *
     * @param request validated against its constraints
     * @param reading notes the defaults that are taken
     * @return what is to be worked out
     * @throws ImpossibleRequest when the request contradicts itself
     */
    R read(Q request, Reading reading);

    /**
     * Works it out: pure, so that the same reading can be worked with other numbers.
     *
     * @param read what was read
     * @return the result, with its checks
     */
    W work(R read);

    /**
     * Writes the answer.
     *
     * @param done a request, read and worked
     * @return the generated answer
     */
    A answer(Done<Q, R, W> done);

    /**
     * How the answer was reached.
     *
     * @param done a request, read and worked
     * @return lines in order of computation
     */
    List<ApiWorking> workings(Done<Q, R, W> done);

    /**
     * The answer as a picture.
     *
     * @param done a request, read and worked
     * @param theme colours
     * @return an SVG document
     */
    String figure(Done<Q, R, W> done, Theme theme);

    /**
     * Whether an answer may have a picture of its own for a part of it.
     *
     * @param pointer JSON Pointer into the answer
     * @return whether to ask for it
     */
    default boolean draws(String pointer) {
        return false;
    }

    /**
     * Draws one part of the answer.
     *
     * @param done a request, read and worked
     * @param pointer JSON Pointer to the part in the answer
     * @param theme colours
     * @return an SVG document; empty where this answer lacks the part
     */
    default Optional<String> figure(Done<Q, R, W> done, String pointer, Theme theme) {
        return Optional.empty();
    }

    /**
     * How the answer is laid out to print and file: an HTML document of its own, nothing fetched, no
     * script.
     *
     * @return the layout, of the work and of the request as JSON; empty where the answer is not worth a sheet of paper
     */
    default Optional<BiFunction<Done<Q, R, W>, String, String>> sheet() {
        return Optional.empty();
    }

    /**
     * Puts estimates where the request says nothing.
     *
     * @param request validated against its constraints
     * @param estimating gives them, at one draw of all that is not known
     * @return a request that lacks nothing that the reading needs
     */
    default Q complete(Q request, Estimating estimating) {
        return request;
    }

    /**
     * The numbers of the work that carry a band.
     *
     * @param work what was worked out
     * @param figures takes each under its name, in the unit of that name; null where there is none
     */
    default void figures(W work, Map<MainFigure, Double> figures) {}

    /**
     * What forbids the flight.
     *
     * @param work what was worked out
     * @return codes of the findings that are a stop
     */
    default Set<String> stops(W work) {
        return Set.of();
    }

    /**
     * Works a reading with other numbers, for the bands.
     *
     * @param read what was read at other numbers
     * @param middle the work at the middle numbers: what hardly moves may be taken from it
     * @return the result
     */
    default W workAgain(R read, W middle) {
        return work(read);
    }

    /**
     * Refuses a request that lacks what nothing can stand in for, without working it.
     *
     * @param request validated against its constraints
     * @param certainty whether to estimate
     * @throws MissingFields with each field that is missing
     */
    default void requireWhole(Q request, Certainty certainty) {
        new Doing<>(this, request, certainty).whole(new Estimating(Draw.MEDIANS, certainty.estimates()));
    }

    /**
     * Completes, reads and works a request.
     *
     * @param request validated against its constraints
     * @param certainty whether to estimate, and how thoroughly to seek bands
     * @return what everything else is drawn from
     * @throws MissingFields when something is missing that must not be estimated
     * @throws ImpossibleRequest when the request contradicts itself
     */
    default Done<Q, R, W> done(Q request, Certainty certainty) {
        return new Doing<>(this, request, certainty).done();
    }

    /**
     * Completes, reads and works a request that must say all itself, without bands.
     *
     * @param request validated against its constraints
     * @return what everything else is drawn from
     * @throws MissingFields when something is missing that an estimate would stand in for
     * @throws ImpossibleRequest when the request contradicts itself
     */
    default Done<Q, R, W> done(Q request) {
        return done(request, Certainty.GIVEN_ONLY);
    }
}
