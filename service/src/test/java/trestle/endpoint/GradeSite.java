package trestle.endpoint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A place in the sources where a check gives a grade, or where something is noted.
 *
 * @param file the source
 * @param start where the name of the grade begins
 * @param grade {@code stop}, {@code attention} or {@code note}, with {@code If} behind it or not
 * @param codes of the findings that it may give
 */
record GradeSite(Path file, int start, String grade, Set<String> codes) {
    private static final Path SOURCES = Path.of("src", "main", "java");

    /** The room that grades are given through. */
    private static final Path ROOM = SOURCES.resolve(Path.of("trestle", "finding"));

    private static final Pattern GRADE = Pattern.compile("\\.((?:stop|attention|note)(?:If)?)\\(");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern CODE = Pattern.compile("(?:[a-z0-9]+)?(?:-[a-z0-9]+)+");
    private static final Pattern NAMED = Pattern.compile("\\s*(\\w+),");

    /** How much its findings weigh. */
    String severity() {
        return grade.replace("If", "");
    }

    /** The same source with a note in place of the grade. */
    String noted(String source) {
        return source.substring(0, start)
                + (grade.endsWith("If") ? "noteIf" : "note")
                + source.substring(start + grade.length());
    }

    /** Line of the source, from 1. */
    long line(String source) {
        return source.substring(0, start).lines().count();
    }

    static List<GradeSite> all() {
        List<GradeSite> sites = new ArrayList<>();
        try (Stream<Path> sources = Files.walk(SOURCES)) {
            for (Path file : sources.filter(p -> p.toString().endsWith(".java") && !p.startsWith(ROOM))
                    .sorted()
                    .toList()) {
                String source = Files.readString(file);
                Matcher grade = GRADE.matcher(source);
                while (grade.find()) {
                    sites.add(new GradeSite(file, grade.start(1), grade.group(1), codes(source, grade.end())));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return sites;
    }

    /**
     * The codes stand before the sentence, which is the first text with a space, and within the call; or
     * they are named before it; or they end so, behind the code of what is judged.
     */
    private static Set<String> codes(String source, int from) {
        Set<String> codes = new TreeSet<>();
        String call = source.substring(from, source.indexOf(';', from));
        Matcher text = TEXT.matcher(call);
        while (text.find()
                && !text.group(1).contains(" ")
                && !GRADE.matcher(call).region(0, text.start()).find()) {
            if (CODE.matcher(text.group(1)).matches()) {
                codes.add(text.group(1));
            }
        }
        Matcher named = NAMED.matcher(call);
        if (codes.isEmpty() && named.lookingAt()) {
            Matcher value = Pattern.compile("\\b" + named.group(1) + " = \"([a-z0-9-]+)\";")
                    .matcher(source);
            while (value.find()) {
                codes.add(value.group(1));
            }
        }
        return codes;
    }
}
