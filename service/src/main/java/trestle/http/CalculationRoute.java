package trestle.http;

import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Compressor;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;
import trestle.binding.Binder;
import trestle.binding.Nearest;
import trestle.binding.Picks;
import trestle.binding.Reason;
import trestle.binding.Refusal;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.PartName;
import trestle.endpoint.Reading;
import trestle.endpoint.Table;
import trestle.rendering.Answered;
import trestle.rendering.Options;
import trestle.rendering.PartFigureRenderer;
import trestle.rendering.Renderer;

/**
 * The ways to one calculation: POST with a body, GET with the same fields as a query, HEAD, and
 * batches. The same request gets the same answer by each.
 *
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 * @param <A> generated answer model
 */
final class CalculationRoute<Q, R, W, A> {
    /** An answer stays true until the version changes; a day bounds how long an old one is kept. */
    private static final String CACHE_CONTROL = "public, max-age=86400";

    private static final String VARY = "Accept, Accept-Encoding";

    /** A figure has its styles in it. */
    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

    private final Calculation<Q, R, W, A> calculation;
    private final Batches batches;
    private final Bodies bodies;

    CalculationRoute(Calculation<Q, R, W, A> calculation, Batches batches, Bodies bodies) {
        this.calculation = calculation;
        this.batches = batches;
        this.bodies = bodies;
    }

    void post(Context context) {
        Query query = Query.of(context.queryString());
        query.requireNoFields();
        // A band takes its sample at each line: a batch has them on request only.
        boolean batch = MediaTypes.isBatch(MediaTypes.of(context));
        Options options = QueryOptions.of(query, batch ? Certainty.Bands.FALSE : Certainty.Bands.FULL);
        asked(options).post(context, options);
    }

    private void post(Context context, Options options) {
        requirePossible(options);
        MediaTypes.requirePlain(context);
        if (MediaTypes.isBatch(MediaTypes.of(context))) {
            batches.answer(context, calculation, options);
            return;
        }
        MediaTypes.requireJson(MediaTypes.of(context));
        Room.Taken taken = bodies.room(context);
        try {
            whole(context, options);
        } finally {
            taken.giveBack();
        }
    }

    private void whole(Context context, Options options) {
        Optional<String> rows = rows(context, options);
        if (rows.isPresent()) {
            Q request = Binder.bind(bodies.read(context), calculation.requestType());
            batches.send(context, calculation, table(request), options, rows.get());
            return;
        }
        Renderer renderer = renderer(context, options);
        Q request = Binder.bind(bodies.read(context), calculation.requestType());
        byte[] written = renderer.render(Answered.of(calculation, request, options));
        typed(context, renderer).result(written);
    }

    /**
     * GET, and HEAD without the calculation: a spreadsheet sends HEAD before each GET. What only
     * the calculation can find wrong, a HEAD does not tell.
     */
    void get(Context context) throws IOException {
        context.res().addHeader("Vary", VARY);
        Query query = Query.of(context.queryString());
        Options options = QueryOptions.of(query);
        asked(options).get(context, query, options);
    }

    private void get(Context context, Query query, Options options) throws IOException {
        requirePossible(options);
        Room.Taken taken = bodies.roomForQuery(context);
        try {
            whole(context, query, options);
        } finally {
            taken.giveBack();
        }
    }

    private void whole(Context context, Query query, Options options) throws IOException {
        Optional<String> rows = rows(context, options);
        if (rows.isPresent() && context.method() != HandlerType.HEAD) {
            batches.send(
                    context,
                    calculation,
                    table(Binder.bind(query.fields(), calculation.requestType())),
                    options,
                    rows.get());
            return;
        }
        Renderer renderer = renderer(context, options);
        Q request = Binder.bind(query.fields(), calculation.requestType());
        EntityTag tag = tag(context, request, options, renderer);
        if (tag.held(context)) {
            sendHeadAlone(stamped(context.status(304), renderer, tag));
        } else if (context.method() == HandlerType.HEAD) {
            calculation.requireWhole(request, options.certainty());
            sendHeadAlone(stamped(context, renderer, tag));
        } else {
            byte[] written = renderer.render(Answered.of(calculation, request, options));
            stamped(context, renderer, tag).result(written);
        }
    }

    private static Context stamped(Context context, Renderer renderer, EntityTag tag) {
        return typed(context, renderer).header("ETag", tag.value()).header("Cache-Control", CACHE_CONTROL);
    }

    /** What is drawn or laid out runs no script and fetches nothing, whatever stood in the request. */
    private static Context typed(Context context, Renderer renderer) {
        if (!renderer.mediaType().startsWith(MediaTypes.JSON)) {
            context.header("Content-Security-Policy", POLICY);
        }
        return context.contentType(renderer.mediaType());
    }

    /** Sends the head before the server can note in it that the answer has no bytes: a GET has. */
    private static void sendHeadAlone(Context context) throws IOException {
        context.res().flushBuffer();
    }

    /** The whole, or the part of it that is asked for alone. */
    private CalculationRoute<Q, ?, ?, ?> asked(Options options) {
        if (options.part().isEmpty()) {
            return this;
        }
        PartName part = options.part().get();
        List<String> parts = calculation.parts();
        if (!parts.contains(part.calculation())) {
            String known = parts.isEmpty()
                    ? calculation.name() + " is answered whole"
                    : Nearest.to(part.calculation(), parts, "a part of " + calculation.name());
            throw new Refusal(Reason.INVALID, List.of(new ApiFault("/part", "unknown_value", known)));
        }
        return new CalculationRoute<>(calculation.part(part), batches, bodies);
    }

    /** Whether the answer is wanted as the rows that it is made of. */
    private Optional<String> rows(Context context, Options options) {
        return calculation.tabled() && options.picks().isEmpty()
                ? Batches.rowsAsked(context, options)
                : Optional.empty();
    }

    private Table table(Q request) {
        return calculation.table(calculation.read(request, new Reading())).orElseThrow();
    }

    private void requirePossible(Options options) {
        if (!PartFigureRenderer.isAskedFor(calculation, options)) {
            Picks.requirePossible(options.picks(), calculation.answerType());
        }
    }

    private Renderer renderer(Context context, Options options) {
        return Renderers.choose(calculation, options, context.header("Accept"));
    }

    private EntityTag tag(Context context, Q request, Options options, Renderer renderer) {
        return EntityTag.of(
                request,
                calculation.name(),
                renderer.mediaType(),
                options.picks().toString(),
                options.theme().toString(),
                String.valueOf(options.workings()),
                String.valueOf(options.cautions()),
                options.certainty().toString(),
                options.part().toString(),
                coding(context));
    }

    /** The compression that the server will choose: compressed bytes are other bytes. */
    private static String coding(Context context) {
        String accepted = Optional.ofNullable(context.header("Accept-Encoding")).orElse("");
        Compressor compressor = CompressionStrategy.GZIP.findMatchingCompressor(accepted);
        return compressor == null ? "" : compressor.encoding();
    }
}
