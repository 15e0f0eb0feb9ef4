package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the cells of {@code aircraft.fods} show once LibreOffice has fetched what they ask for. */
final class Spreadsheet {
    static final Path HOME = Path.of("spreadsheet").toAbsolutePath();

    private static final Path RECALCULATE =
            Path.of("src", "test", "python", "recalculate.py").toAbsolutePath();

    /** Debian's own Python, for which its package brings the module. */
    private static final String PYTHON = "/usr/bin/python3";

    private static final String PRINTED_ADDRESS = "http://127.0.0.1:8080";
    private static final int LONGEST_RUN_S = 240;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonNode sheets;

    private Spreadsheet(JsonNode sheets) {
        this.sheets = sheets;
    }

    /**
     * Opens a copy of the spreadsheet that asks a service, and types into some of its cells.
     *
     * @param folder for the copy
     * @param url address of the service
     * @param entries each like {@code Balance.B7=1020}
     */
    static Spreadsheet opened(Path folder, String url, String... entries) throws IOException {
        Tool.need("soffice");
        Tool.need(
                Files.isExecutable(Path.of(PYTHON))
                        && Command.of(PYTHON, "-c", "import uno").run().exitCode() == 0,
                PYTHON + " has no module uno");
        String text = Files.readString(HOME.resolve("aircraft.fods"));
        assertThat(text).containsOnlyOnce(PRINTED_ADDRESS);
        Path copy = folder.resolve("aircraft.fods");
        Files.writeString(copy, text.replace(PRINTED_ADDRESS, url));
        Command.Outcome outcome = Command.of(PYTHON, RECALCULATE.toString(), copy.toString())
                .with(entries)
                .within(LONGEST_RUN_S)
                .run();
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return new Spreadsheet(MAPPER.readTree(outcome.out()));
    }

    /** What a cell shows. */
    String text(String place) {
        return cell(place).path("text").asText();
    }

    /** The number that a cell holds. */
    double number(String place) {
        assertThat(error(place)).as(place + " shows " + text(place)).isZero();
        return cell(place).path("value").asDouble();
    }

    /** The number of the error that a cell shows, 0 for none. */
    int error(String place) {
        return cell(place).path("error").asInt();
    }

    /** Whether no cell shows an error. */
    boolean isSound() {
        return sheets.findValues("error").stream().allMatch(error -> error.asInt() == 0);
    }

    /** What the service answers, by POST, to the question that a cell holds. */
    ObjectNode answerTo(String place) {
        return LiveService.answer(calculation(place), question(place));
    }

    /** The question that a cell holds, as the request that it means. */
    ObjectNode question(String place) {
        ObjectNode request = MAPPER.createObjectNode();
        for (String part : URI.create(text(place)).getRawQuery().split("&")) {
            String[] field = part.split("=", 2);
            String value = URLDecoder.decode(field[1], StandardCharsets.UTF_8);
            if (!field[0].equals("errors") && !value.isEmpty()) {
                put(request, field[0].split("\\."), value);
            }
        }
        return request;
    }

    private String calculation(String place) {
        return URI.create(text(place)).getPath().replace("/v1/", "");
    }

    private static void put(ObjectNode request, String[] names, String value) {
        JsonNode node = request;
        for (int depth = 0; depth < names.length - 1; depth++) {
            boolean isList = names[depth + 1].matches("\\d+");
            node = child(node, names[depth], isList);
        }
        ObjectNode parent = (ObjectNode) node;
        String name = names[names.length - 1];
        if (value.matches("-?\\d+")) {
            parent.put(name, Long.parseLong(value));
        } else if (value.matches("-?\\d+\\.\\d+")) {
            parent.put(name, Double.parseDouble(value));
        } else {
            parent.put(name, value);
        }
    }

    private static JsonNode child(JsonNode node, String name, boolean isList) {
        JsonNode made = isList ? MAPPER.createArrayNode() : MAPPER.createObjectNode();
        if (node instanceof ObjectNode object) {
            if (!object.has(name)) {
                object.set(name, made);
            }
            return object.get(name);
        }
        int index = Integer.parseInt(name);
        if (node.has(index)) {
            return node.get(index);
        }
        assertThat(index).as("lists are without gaps").isEqualTo(node.size());
        ((ArrayNode) node).add(made);
        return made;
    }

    private JsonNode cell(String place) {
        String[] parts = place.split("\\.");
        return sheets.path(parts[0]).path(parts[1]);
    }
}
