package trestle.rendering;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A line of name and value for each plain value, to read in a terminal: first what stands in no
 * list, with the values in one column, then the lists.
 */
public final class TextRenderer implements Renderer {
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
        List<Line> plain = new ArrayList<>();
        List<Line> listed = new ArrayList<>();
        collect("", answered.tree(), plain, listed);
        return (column(plain) + column(listed)).getBytes(StandardCharsets.UTF_8);
    }

    private record Line(String name, String value) {}

    private static void collect(String name, JsonNode node, List<Line> plain, List<Line> listed) {
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                collect(name + "." + i, node.get(i), listed, listed);
            }
        } else if (node.isObject()) {
            for (Map.Entry<String, JsonNode> part : node.properties()) {
                String prefix = name.isEmpty() ? "" : name + ".";
                collect(prefix + part.getKey(), part.getValue(), plain, listed);
            }
        } else {
            plain.add(new Line(name, value(node)));
        }
    }

    /** A value on one line, whatever a name in the request brought along. */
    private static String value(JsonNode node) {
        return node.asText().replaceAll("\\p{Cntrl}+", " ");
    }

    private static String column(List<Line> lines) {
        int width = lines.stream().mapToInt(line -> line.name.length()).max().orElse(0);
        StringBuilder text = new StringBuilder();
        for (Line line : lines) {
            text.append(line.name)
                    .append(" ".repeat(width + 1 - line.name.length()))
                    .append(line.value)
                    .append('\n');
        }
        return text.toString();
    }
}
