package trestle.http;

/** The answer as the contract models it. */
final class JsonRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.JSON;
    }

    @Override
    public String mediaType() {
        return Json.MEDIA_TYPE;
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        return Json.bytes(answered.whole());
    }
}
