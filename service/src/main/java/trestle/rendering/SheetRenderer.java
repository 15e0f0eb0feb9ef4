package trestle.rendering;

import java.nio.charset.StandardCharsets;
import trestle.endpoint.Calculation;

/** The answer as a sheet to print and file. */
public final class SheetRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.HTML;
    }

    @Override
    public String mediaType() {
        return "text/html;charset=utf-8";
    }

    @Override
    public boolean offers(Calculation<?, ?, ?, ?> calculation) {
        return calculation.sheet().isPresent();
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        return answered.sheet().getBytes(StandardCharsets.UTF_8);
    }
}
