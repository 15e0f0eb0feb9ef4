package trestle.rendering;

import java.nio.charset.StandardCharsets;
import trestle.binding.Picks;

/**
 * One picked value, bare: no unit, no quotes and no line end, at which a spreadsheet would choke.
 */
public final class PickedValueRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.TEXT;
    }

    @Override
    public String mediaType() {
        return "text/plain;charset=utf-8";
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        Picks picks = new Picks(answered.options().picks());
        return picks.from(answered.tree()).get(0).asText().getBytes(StandardCharsets.UTF_8);
    }
}
