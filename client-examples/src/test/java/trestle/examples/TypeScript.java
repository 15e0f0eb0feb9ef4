package trestle.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** The compiler of the pinned version, fetched once for this build folder. */
final class TypeScript {
    private static final Path PINNED = Path.of("generated", "typescript-check");
    private static final Path FETCHED = Path.of("target", "typescript-check").toAbsolutePath();
    private static final int LONGEST_FETCH_S = 300;

    private TypeScript() {}

    /** The folder of the compiler and of the types of Node. */
    static Path modules() {
        fetch();
        return FETCHED.resolve("node_modules");
    }

    private static void fetch() {
        Tool.need("node", "npm");
        try {
            Files.createDirectories(FETCHED);
            boolean same = true;
            for (String file : List.of("package.json", "package-lock.json", ".npmrc")) {
                Path copy = FETCHED.resolve(file);
                same &= Files.exists(copy) && Files.mismatch(PINNED.resolve(file), copy) < 0;
                Files.copy(PINNED.resolve(file), copy, StandardCopyOption.REPLACE_EXISTING);
            }
            if (!same || !Files.exists(FETCHED.resolve("node_modules/.bin/tsc"))) {
                Command.Outcome outcome = Command.of("npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund")
                        .in(FETCHED)
                        .within(LONGEST_FETCH_S)
                        .run();
                Tool.need(outcome.exitCode() == 0, "the TypeScript compiler cannot be fetched: " + outcome.err());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
