package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Compiles C# with Mono, the compiler that Debian has. Its JSON library is older than the one that
 * the client asks for and lacks one setting, which is cut out of a copy: it tells how members are
 * named that give no name, and all of the client's members give one.
 */
final class CSharp {
    private static final Path JSON = Path.of("/usr/lib/cli/Newtonsoft.Json-5.0/Newtonsoft.Json.dll");
    private static final Pattern UNKNOWN_SETTING =
            Pattern.compile("new DefaultContractResolver\\s*\\{\\s*NamingStrategy = new"
                    + " CamelCaseNamingStrategy\\s*\\{[^}]*\\}\\s*\\}");
    private static final String[] REFERENCES = {
        "System.Net.Http",
        "System.ComponentModel.DataAnnotations",
        "System.Runtime.Serialization",
        "System.Web",
        "Newtonsoft.Json.dll"
    };

    private CSharp() {}

    static void need() {
        Tool.need("mcs", "mono");
        Tool.need(Files.exists(JSON), "Mono's JSON library is not installed");
    }

    /** What compiles a client into a library of a folder. */
    static Command library(Path client, Path folder) throws IOException {
        Files.copy(JSON, folder.resolve(JSON.getFileName()));
        Path copy = Files.createDirectory(folder.resolve("library"));
        List<String> sources = new ArrayList<>();
        int cuts = 0;
        try (Stream<Path> files = Files.walk(client)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".cs")).toList()) {
                String text = Files.readString(file);
                cuts += (int) UNKNOWN_SETTING.matcher(text).results().count();
                Path target = copy.resolve(client.relativize(file).toString().replace('/', '_'));
                Files.writeString(target, UNKNOWN_SETTING.matcher(text).replaceAll("new DefaultContractResolver()"));
                sources.add(target.toString());
            }
        }
        assertThat(cuts).as("settings cut out").isEqualTo(4);
        return compiler(folder)
                .with("-target:library", "-out:Trestle.Client.dll")
                .with(sources.toArray(String[]::new));
    }

    /** What compiles a program with that library. */
    static Command program(Path folder) {
        return compiler(folder).with("-r:Trestle.Client.dll", "-out:Program.exe", "Program.cs");
    }

    private static Command compiler(Path folder) {
        return Command.of("mcs", "-langversion:latest", "-r:" + String.join(",", REFERENCES))
                .in(folder);
    }
}
