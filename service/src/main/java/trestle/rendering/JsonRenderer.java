package trestle.rendering;

import trestle.binding.Json;

/** The answer as the contract models it. */
public final class JsonRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.JSON;
    }

    @Override
    public String mediaType() {
        return "application/json";
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        return Json.bytes(answered.whole());
    }
}
