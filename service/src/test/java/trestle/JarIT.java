package trestle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The jar as it is handed on: licences, notices and versions of everything in it. Runs when it is packed. */
class JarIT {
    /** Files by which a library speaks of its licence and its authors. */
    private static final Pattern LEGAL =
            Pattern.compile("(?i)(.*/)?[^/]*(licen[cs]e|notice|copying|copyright|about\\.)[^/]*(?<!\\.class|/)");

    /** A library on the list: group, name and version, licences, title. */
    private static final Pattern LISTED = Pattern.compile("\\n\\n(.+):(.+):(.+)\\n    (.+)\\n    ([^,\\n]+)");

    /** Built by a tool that writes no pom.properties; the bill of materials has their versions. */
    private static final Set<String> WITHOUT_PROPERTIES = Set.of("kotlin-stdlib", "picocli");

    private static final Pattern PROPERTIES = Pattern.compile("META-INF/maven/(.+/.+)/pom.properties");

    private static Map<String, String> texts;
    private static List<Library> libraries;

    private record Library(String group, String name, String version, String licences, String title) {}

    @BeforeAll
    static void read() throws IOException {
        texts = texts(
                Path.of("target/trestle.jar"), Pattern.compile("META-INF/.*[^/]|trestle/pages/docs/.*LICENSE.txt"));
        libraries = LISTED.matcher(texts.get("META-INF/THIRD-PARTY.txt"))
                .results()
                .map(row -> new Library(row.group(1), row.group(2), row.group(3), row.group(4), row.group(5)))
                .toList();
        assertThat(libraries).hasSizeGreaterThan(20);
    }

    @Test
    void itCarriesItsOwnLicenceAndNotice() throws IOException {
        assertThat(texts).containsEntry("META-INF/LICENSE", Files.readString(Path.of("../LICENSE")));
        assertThat(texts).containsEntry("META-INF/NOTICE", Files.readString(Path.of("NOTICE")));
        assertThat(texts.get("META-INF/NOTICE")).startsWith("Trestle\nCopyright ");
    }

    @Test
    void theListInTheRepositoryIsTheOneThatTheBuildMakes() throws IOException {
        assertThat(texts.get("META-INF/THIRD-PARTY.txt"))
                .as("cp service/target/classes/META-INF/THIRD-PARTY.txt service/")
                .isEqualTo(Files.readString(Path.of("THIRD-PARTY.txt")));
    }

    @Test
    void everyLibraryKeepsItsVersionAndIsListed() {
        Map<String, String> listed = new TreeMap<>();
        for (Library library : libraries) {
            if (!WITHOUT_PROPERTIES.contains(library.name())) {
                listed.put(library.group() + "/" + library.name(), library.version());
            }
        }
        Map<String, String> carried = new TreeMap<>();
        texts.forEach((name, text) -> {
            Matcher properties = PROPERTIES.matcher(name);
            if (properties.matches() && !name.startsWith("META-INF/maven/trestle/")) {
                carried.put(properties.group(1), text.replaceAll("(?s).*\\bversion=([^\\r\\n]+).*", "$1"));
            }
        });
        assertThat(carried).isEqualTo(listed);
    }

    @Test
    void theBillOfMaterialsIsOfTheSameLibraries() throws IOException {
        File bill = new File("target/trestle-bom.json");
        if (System.getenv("CI") == null) {
            assumeThat(bill)
                    .as("the bill of materials, which is made online only")
                    .exists();
        }
        List<String> components = new ArrayList<>();
        new ObjectMapper()
                .readTree(bill)
                .path("components")
                .forEach(c -> components.add(c.path("purl").asText().replaceAll("pkg:maven/|\\?.*", "")));
        components.removeIf(c -> c.startsWith("trestle/"));
        assertThat(components)
                .containsExactlyInAnyOrderElementsOf(libraries.stream()
                        .map(l -> l.group() + "/" + l.name() + "@" + l.version())
                        .toList());
    }

    @Test
    void whatALibrarySaysOfItsLicenceIsInTheJar() throws IOException {
        Set<String> carried = new HashSet<>(texts.values());
        List<String> said = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        for (Library library : libraries) {
            if (library.name().equals("swagger-ui")) {
                continue;
            }
            texts(jar(library), LEGAL).forEach((name, text) -> {
                said.add(name);
                if (!carried.contains(text)) {
                    lacking.add(library.name() + " " + name);
                }
            });
        }
        assertThat(lacking).isEmpty();
        assertThat(said).hasSizeGreaterThan(20);
    }

    @Test
    void theScriptOfTheDocsBringsItsLicences() {
        assertThat(texts.get("trestle/pages/docs/swagger-ui-bundle.js.LICENSE.txt"))
                .contains("MIT");
        assertThat(texts).containsEntry("META-INF/licenses/swagger-ui-jar/LICENSE", texts.get("META-INF/LICENSE"));
        assertThat(texts.get("META-INF/NOTICE")).contains("swagger-ui, Copyright");
    }

    @Test
    void noLicenceIsLeftFromALibraryThatIsGone() {
        assertThat(texts.keySet().stream()
                        .filter(name -> name.startsWith("META-INF/licenses/"))
                        .map(name -> name.split("/")[2]))
                .isSubsetOf(libraries.stream().map(l -> l.name() + "-jar").toList());
    }

    @Test
    void everyLicenceThatIsTakenIsThereInFull() {
        Map<String, String> openings = Map.of(
                "Apache-2.0", "Apache License\n                           Version 2.0",
                "EPL-2.0", "Eclipse Public License - v 2.0",
                "EDL-1.0", "Eclipse Distribution License - v 1.0",
                "MIT", "Permission is hereby granted, free of charge");
        Set<String> taken = new TreeSet<>();
        libraries.forEach(library -> taken.add(library.licences().split(" or ")[0]));
        taken.removeIf(licence -> openings.containsKey(licence)
                && texts.values().stream().anyMatch(text -> text.contains(openings.get(licence))));
        assertThat(taken).as("licences without their text").isEmpty();
    }

    @Test
    void theNoticeSaysWhereTheSourceOfAnEclipseLibraryIs() {
        List<Library> eclipse =
                libraries.stream().filter(l -> l.licences().startsWith("EPL")).toList();
        assertThat(eclipse).isNotEmpty();
        assertThat(texts.get("META-INF/NOTICE"))
                .contains(eclipse.stream().map(Library::title).toList())
                .contains("source code: https://");
    }

    private static Path jar(Library library) {
        String file = File.separator + library.name() + "-" + library.version() + ".jar";
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> entry.endsWith(file))
                .map(Path::of)
                .findFirst()
                .orElseThrow(() -> new AssertionError(file + " is not on the class path"));
    }

    private static Map<String, String> texts(Path jar, Pattern names) throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : (Iterable<JarEntry>) file.stream()::iterator) {
                if (names.matcher(entry.getName()).matches()) {
                    byte[] bytes = file.getInputStream(entry).readAllBytes();
                    texts.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }
}
