package trestle.rendering;

import java.nio.charset.StandardCharsets;
import trestle.endpoint.Calculation;
import trestle.endpoint.Printed;

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
    public boolean offers(Calculation<?, ?> calculation) {
        return calculation instanceof Printed<?>;
    }

    @Override
    public byte[] render(Answered<?, ?> answered) {
        return printed(answered).getBytes(StandardCharsets.UTF_8);
    }

    @SuppressWarnings("unchecked") // a calculation prints requests of its own
    private static <Q, A> String printed(Answered<Q, A> answered) {
        return ((Printed<Q>) answered.calculation()).sheet(answered.request());
    }
}
