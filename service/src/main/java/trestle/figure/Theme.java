package trestle.figure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The colours of a figure. */
public enum Theme {
    /** As the reader's system prefers; light where the viewer does not tell. */
    AUTO,
    /** Dark on light, whatever the reader's system prefers. */
    LIGHT,
    /** Light on dark, whatever the reader's system prefers. */
    DARK;

    private final String rootClass = "trestle-" + name().toLowerCase(Locale.ROOT);
    private final String css = css(rootClass, name());

    /**
     * The theme of a name.
     *
     * @param name light, dark or auto
     * @return the theme, if there is one of that name
     */
    public static Optional<Theme> named(String name) {
        return Arrays.stream(values())
                .filter(theme -> theme.name().toLowerCase(Locale.ROOT).equals(name))
                .findFirst();
    }

    /** Class of the root: it keeps the rules of one figure off others on the same page. */
    String rootClass() {
        return rootClass;
    }

    /** Rules for every style, for the figure's own style sheet. */
    String css() {
        return css;
    }

    /** An enum's constructor cannot ask for its constants yet; hence the name. */
    private static String css(String rootClass, String theme) {
        StringBuilder css = new StringBuilder();
        boolean follows = theme.equals("AUTO");
        if (follows) {
            css.append(variables(rootClass, false))
                    .append("@media(prefers-color-scheme:dark){")
                    .append(variables(rootClass, true))
                    .append('}');
        }
        for (Style style : Style.values()) {
            css.append('.')
                    .append(rootClass)
                    .append(" .")
                    .append(style.cssClass())
                    .append('{')
                    .append(style.paint())
                    .append(':')
                    .append(style.colour().hex(theme.equals("DARK")));
            if (follows) {
                css.append(';')
                        .append(style.paint())
                        .append(":var(")
                        .append(variable(style.colour()))
                        .append(')');
            }
            css.append(style.more()).append('}');
        }
        return css.toString();
    }

    private static String variables(String rootClass, boolean dark) {
        StringBuilder css = new StringBuilder("." + rootClass + "{");
        for (Colour colour : Colour.values()) {
            css.append(variable(colour)).append(':').append(colour.hex(dark)).append(';');
        }
        return css.append('}').toString();
    }

    private static String variable(Colour colour) {
        return "--trestle-" + colour.name().toLowerCase(Locale.ROOT);
    }
}
