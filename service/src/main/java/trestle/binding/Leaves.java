package trestle.binding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import java.util.Locale;
import java.util.regex.Pattern;

/** How the plain values of a request are written. */
enum Leaves {
    /** As JSON: a number is a number. */
    TYPED {
        @Override
        JsonNode read(JsonNode leaf, Shape.Kind kind) {
            return leaf;
        }
    },

    /** As JSON or as text: what a study was given in either way. */
    EITHER {
        @Override
        JsonNode read(JsonNode leaf, Shape.Kind kind) {
            return TEXT.read(leaf, kind);
        }
    },

    /** As text, which spells what the contract expects at its place. */
    TEXT {
        @Override
        JsonNode read(JsonNode leaf, Shape.Kind kind) {
            if (!leaf.isTextual()) {
                return leaf;
            }
            String text = leaf.textValue().strip();
            if (kind == Shape.Plain.NUMBER || kind == Shape.Plain.INTEGER) {
                return number(text, leaf);
            }
            return kind == Shape.Plain.BOOLEAN ? truth(text, leaf) : leaf;
        }
    };

    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,18}");
    private static final Pattern DECIMAL =
            Pattern.compile("[+-]?([0-9]{1,40}(\\.[0-9]{0,40})?|\\.[0-9]{1,40})([eE][+-]?[0-9]{1,4})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[0-9.]*,[0-9.,]*([eE][+-]?[0-9]+)?");

    /** What a leaf spells, where it spells what the kind expects; otherwise the leaf itself. */
    abstract JsonNode read(JsonNode leaf, Shape.Kind kind);

    /** Whether a text is a number but for its comma. */
    static boolean hasDecimalComma(JsonNode leaf) {
        return leaf.isTextual() && WITH_COMMA.matcher(leaf.textValue().strip()).matches();
    }

    private static JsonNode number(String text, JsonNode leaf) {
        if (WHOLE.matcher(text).matches()) {
            return LongNode.valueOf(Long.parseLong(text));
        }
        return DECIMAL.matcher(text).matches() ? DoubleNode.valueOf(Double.parseDouble(text)) : leaf;
    }

    /** Spreadsheets write TRUE. */
    private static JsonNode truth(String text, JsonNode leaf) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "true" -> BooleanNode.TRUE;
            case "false" -> BooleanNode.FALSE;
            default -> leaf;
        };
    }
}
