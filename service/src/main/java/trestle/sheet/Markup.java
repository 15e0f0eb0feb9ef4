package trestle.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import trestle.figure.PlainText;

/**
 * HTML that is safe to put into a page. Text becomes markup in {@link #text} alone, which escapes
 * it; elements take markup, so that the compiler refuses text that was not escaped.
 *
 * @param html well-formed HTML
 */
record Markup(String html) {
    static final Markup NONE = new Markup("");
    static final Markup SPACE = new Markup(" ");

    /** Text of anyone, on one line. */
    static Markup text(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        PlainText.escape(PlainText.clean(text), out);
        return new Markup(out.toString());
    }

    /** A picture that we drew. */
    static Markup svg(String svg) {
        return new Markup(svg);
    }

    /** An element of our own naming; no class where that is empty. */
    static Markup element(String name, String cssClass, Markup... content) {
        String opened = cssClass.isEmpty() ? name : name + " class=\"" + cssClass + '"';
        return new Markup("<" + opened + ">" + joined(List.of(content)).html + "</" + name + ">");
    }

    /** An element around text of anyone. */
    static Markup element(String name, String cssClass, String text) {
        return element(name, cssClass, text(text));
    }

    static <T> Markup each(List<T> things, Function<T, Markup> written) {
        return joined(things.stream().map(written).toList());
    }

    static Markup when(boolean wanted, Markup... content) {
        return wanted ? joined(Arrays.asList(content)) : NONE;
    }

    private static Markup joined(List<Markup> parts) {
        return new Markup(parts.stream().map(Markup::html).collect(Collectors.joining()));
    }
}
