package trestle.rendering;

import java.nio.charset.StandardCharsets;

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
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        return answered.figure().getBytes(StandardCharsets.UTF_8);
    }
}
