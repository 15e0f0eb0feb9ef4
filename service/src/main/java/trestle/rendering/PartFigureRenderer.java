package trestle.rendering;

import java.nio.charset.StandardCharsets;
import trestle.binding.Picks;
import trestle.endpoint.Calculation;

/** A part of the answer, picked by its pointer, as a picture. */
public final class PartFigureRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.SVG;
    }

    @Override
    public String mediaType() {
        return "image/svg+xml";
    }

    /**
     * Whether a caller asks for this: a picture of one part that may have one.
     *
     * @param calculation of the catalogue
     * @param options of the request
     * @return whether this is asked for
     */
    public static boolean isAskedFor(Calculation<?, ?, ?, ?> calculation, Options options) {
        return options.as().filter(form -> form == Options.Form.SVG).isPresent()
                && options.picks().size() == 1
                && calculation.draws(options.picks().get(0).pointer());
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        String pointer = answered.options().picks().get(0).pointer();
        return answered.figure(pointer)
                .orElseThrow(() -> Picks.nothingAt(pointer))
                .getBytes(StandardCharsets.UTF_8);
    }
}
