package trestle.rendering;

import java.nio.charset.StandardCharsets;
import trestle.endpoint.Calculation;
import trestle.endpoint.Drawn;

/** The answer as a picture. */
public final class FigureRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.SVG;
    }

    @Override
    public String mediaType() {
        return "image/svg+xml";
    }

    @Override
    public boolean offers(Calculation<?, ?> calculation) {
        return calculation instanceof Drawn<?>;
    }

    @Override
    public byte[] render(Answered<?, ?> answered) {
        return drawn(answered).getBytes(StandardCharsets.UTF_8);
    }

    @SuppressWarnings("unchecked") // a calculation draws requests of its own
    private static <Q, A> String drawn(Answered<Q, A> answered) {
        return ((Drawn<Q>) answered.calculation())
                .figure(answered.request(), answered.options().theme());
    }
}
