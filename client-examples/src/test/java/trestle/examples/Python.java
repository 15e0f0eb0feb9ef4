package trestle.examples;

import java.nio.file.Path;
import java.util.Map;

/** Runs a Python example as a user does. */
final class Python {
    private static final Path SCRIPTS = Path.of("python");

    private Python() {}

    /** Runs a script against a service that the environment names, as {@code TRESTLE_URL}. */
    static Command.Outcome run(String url, String script, String... arguments) {
        return run(Map.of("TRESTLE_URL", url), script, arguments);
    }

    /** Runs a script. */
    static Command.Outcome run(Map<String, String> environment, String script, String... arguments) {
        Tool.need("python3");
        Command command =
                Command.of("python3", SCRIPTS.resolve(script).toString()).with(arguments);
        for (Map.Entry<String, String> variable : environment.entrySet()) {
            command = command.where(variable.getKey(), variable.getValue());
        }
        return command.run();
    }
}
