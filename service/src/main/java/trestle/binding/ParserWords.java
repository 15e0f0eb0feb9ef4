package trestle.binding;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** What the parser says of a malformed body, without its talk of its own settings. */
final class ParserWords {
    /** In this order, each wherever it is found. */
    private static final Map<Pattern, String> PLAINER = new LinkedHashMap<>();

    static {
        plainer(" \\(start marker at .*", "");
        plainer("\\('(.+?)' \\(code [^)]*\\)\\)", "'$1'");
        plainer("\\(\\(CTRL-CHAR, code (\\d+)\\)\\)", "of code $1");
        plainer(" \\(code [^)]*\\)", "");
        plainer(" \\(\\d+\\) exceeds the maximum allowed \\((\\d+), from .*", " is more than the $1 that are read");
        plainer("Trailing token.*", "something follows after the end of the object");
        plainer("[:,] enable `.*", ": JSON has no such number");
    }

    private ParserWords() {}

    private static void plainer(String said, String better) {
        PLAINER.put(Pattern.compile(said), better);
    }

    /** One line: where, as far as it is known, and what. */
    static String plain(JacksonException malformed) {
        String said = malformed.getOriginalMessage().lines().findFirst().orElse("not JSON");
        for (Map.Entry<Pattern, String> rule : PLAINER.entrySet()) {
            said = rule.getKey().matcher(said).replaceFirst(rule.getValue());
        }
        return where(malformed.getLocation()) + said;
    }

    private static String where(JsonLocation at) {
        if (at == null) {
            return "";
        }
        String line = at.getLineNr() == 1 ? "" : "line " + at.getLineNr() + ", ";
        return line + "column " + at.getColumnNr() + ": ";
    }
}
