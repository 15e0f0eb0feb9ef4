package trestle.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trestle.binding.Json;

/** The landing page: what the service offers, drawn from its index, each with a line to type. */
final class Landing {
    /**
     * What a browser sends as the host: a name or an address, and a port. Nothing else is shown.
     */
    private static final Pattern HOST = Pattern.compile("([A-Za-z0-9.-]{1,253}|\\[[0-9A-Fa-f:.]{2,45}])(:[0-9]{1,5})?");

    private static final String USUAL_HOST = "127.0.0.1:8080";

    /** A part of the page that stands once for each entry of the index. */
    private static final Pattern EACH = Pattern.compile("<!-- each ([a-z]+) -->(.*?)<!-- end -->", Pattern.DOTALL);

    private static final Pattern FIELD = Pattern.compile("\\{\\{([a-z]+)}}");

    /**
     * The page.
     *
     * @param host how the caller named the service
     * @return HTML
     */
    String html(Optional<String> host) {
        JsonNode index = index();
        String address =
                "http://" + host.filter(named -> HOST.matcher(named).matches()).orElse(USUAL_HOST);
        String template = new String(template().content(), StandardCharsets.UTF_8);
        Matcher each = EACH.matcher(template);
        String page = each.replaceAll(part -> Matcher.quoteReplacement(entries(part, index)));
        return filled(
                page,
                Map.of("address", address, "version", index.path("version").asText()));
    }

    private static String entries(MatchResult part, JsonNode index) {
        StringBuilder entries = new StringBuilder();
        for (JsonNode entry : index.path(part.group(1))) {
            entries.append(filled(
                    part.group(2),
                    Map.of(
                            "name", entry.path("name").asText(),
                            "summary", entry.path("summary").asText(),
                            "href", entry.path("href").asText())));
        }
        return entries.toString();
    }

    /** Fills in what is given and leaves the other fields for later. */
    private static String filled(String text, Map<String, String> fields) {
        return FIELD.matcher(text).replaceAll(field -> {
            String value = fields.get(field.group(1));
            return Matcher.quoteReplacement(value == null ? field.group() : escaped(value));
        });
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private JsonNode index() {
        try {
            return Json.MAPPER.readTree(Documents.onBoard().index());
        } catch (IOException ours) {
            throw new UncheckedIOException(ours);
        }
    }

    private static PageFile template() {
        return PageFile.read("landing.html").orElseThrow();
    }
}
