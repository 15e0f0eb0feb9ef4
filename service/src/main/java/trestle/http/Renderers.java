package trestle.http;

import java.util.List;
import java.util.stream.Collectors;
import trestle.endpoint.Calculation;
import trestle.rendering.CsvRenderer;
import trestle.rendering.FigureRenderer;
import trestle.rendering.JsonRenderer;
import trestle.rendering.Options;
import trestle.rendering.PartFigureRenderer;
import trestle.rendering.PickedRowRenderer;
import trestle.rendering.PickedValueRenderer;
import trestle.rendering.Renderer;
import trestle.rendering.SheetRenderer;
import trestle.rendering.TextRenderer;

/** Every way in which an answer can be written, and the choice among them. */
final class Renderers {
    /** The first is the one for a caller who does not mind. */
    private static final List<Renderer> WHOLE = List.of(
            new JsonRenderer(), new TextRenderer(), new CsvRenderer(), new FigureRenderer(), new SheetRenderer());

    private static final Renderer PART = new PartFigureRenderer();
    private static final Renderer VALUE = new PickedValueRenderer();
    private static final Renderer ROW = new PickedRowRenderer();

    private Renderers() {}

    /**
     * The way that a request asks for by {@code as} or by its header.
     *
     * @param calculation what is asked
     * @param options of the request
     * @param accept value of the header, null where there is none
     * @throws Denial when there is no such way
     */
    static Renderer choose(Calculation<?, ?, ?, ?> calculation, Options options, String accept) {
        if (PartFigureRenderer.isAskedFor(calculation, options)) {
            return PART;
        }
        List<Renderer> offered = offered(calculation, options);
        return options.as()
                .map(form -> offered.stream().filter(r -> r.form() == form).findFirst())
                .orElseGet(() -> Accept.best(accept, offered, Renderer::mediaType))
                .orElseThrow(() -> notOffered(offered, options));
    }

    private static List<Renderer> offered(Calculation<?, ?, ?, ?> calculation, Options options) {
        return switch (options.picks().size()) {
            case 0 -> WHOLE.stream().filter(r -> r.offers(calculation)).toList();
            case 1 -> List.of(VALUE, ROW);
            default -> List.of(ROW);
        };
    }

    private static Denial notOffered(List<Renderer> offered, Options options) {
        String what = options.picks().isEmpty() ? "the answer is" : "picked values are";
        return new Denial(
                Problems.Kind.NOT_ACCEPTABLE,
                offered.stream()
                        .map(r -> MediaTypes.bare(r.mediaType()) + " (as=" + Options.word(r.form()) + ")")
                        .collect(Collectors.joining(", ", what + " offered as ", "")));
    }
}
