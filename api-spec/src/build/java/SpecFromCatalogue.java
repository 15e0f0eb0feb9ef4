import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes the contract that is bundled from the contract that is edited: each of its files with the rows of
 * {@code catalogue.yaml} at hand, and {@code paths/<section>.mustache} once for each row of that section. Arguments:
 * the folder edited, the folder written.
 */
final class SpecFromCatalogue {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Mustache.Compiler TEMPLATES = Mustache.compiler().escapeHTML(false);

    private SpecFromCatalogue() {}

    public static void main(String[] folders) throws IOException {
        Path edited = Path.of(folders[0]);
        Path written = Path.of(folders[1]);
        Catalogue catalogue =
                new YAMLMapper().readValue(edited.resolve("catalogue.yaml").toFile(), Catalogue.class);
        for (String part : List.of("openapi.yaml", "paths", "schemas", "examples")) {
            for (Path file : filesIn(edited.resolve(part))) {
                Path target = written.resolve(edited.relativize(file));
                switch (file.getFileName().toString()) {
                    case "calculations.mustache" -> writeEach(file, catalogue.calculations(), target.getParent());
                    case "tables.mustache" -> writeEach(file, catalogue.tables(), target.getParent());
                    default -> write(file, catalogue, target);
                }
            }
        }
    }

    private record Catalogue(List<Map<String, Object>> calculations, List<Map<String, Object>> tables) {}

    private static List<Path> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private static void writeEach(Path template, List<Map<String, Object>> rows, Path folder) throws IOException {
        for (Map<String, Object> row : rows) {
            write(template, withForms(row), folder.resolve(row.get("name") + ".yaml"));
        }
    }

    private static void write(Path template, Object context, Path target) throws IOException {
        Files.createDirectories(target.getParent());
        Files.writeString(target, TEMPLATES.compile(Files.readString(template)).execute(context));
    }

    /** The row, with the forms of its names and of its request that a template shows. */
    private static Map<String, Object> withForms(Map<String, Object> row) throws IOException {
        Map<String, Object> all = new LinkedHashMap<>(row);
        String model = pascal((String) row.get("name"));
        all.put("model", model);
        all.put("operation", model.substring(0, 1).toLowerCase() + model.substring(1));
        if (row.containsKey("least_request")) {
            Map<String, String> fields = new LinkedHashMap<>();
            dotted("", row.get("least_request"), fields);
            all.put("example_key", ((String) row.get("example")).replace('-', '_'));
            all.put("query", JSON.writeValueAsString(fields));
            all.put("json_line", JSON.writeValueAsString(row.get("least_request")));
            all.put("csv_header", String.join(",", fields.keySet()));
            all.put("csv_row", String.join(",", fields.values()));
        }
        return all;
    }

    private static String pascal(String kebab) {
        StringBuilder name = new StringBuilder();
        for (String word : kebab.split("-")) {
            name.append(word.substring(0, 1).toUpperCase()).append(word.substring(1));
        }
        return name.toString();
    }

    /** Puts each leaf of a request under its dotted name, lists from 0. */
    private static void dotted(String name, Object value, Map<String, String> fields) {
        String prefix = name.isEmpty() ? "" : name + ".";
        if (value instanceof Map<?, ?> object) {
            object.forEach((key, inner) -> dotted(prefix + key, inner, fields));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                dotted(prefix + i, list.get(i), fields);
            }
        } else {
            fields.put(name, value.toString());
        }
    }
}
