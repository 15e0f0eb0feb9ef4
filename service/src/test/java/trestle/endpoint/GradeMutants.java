package trestle.endpoint;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;

/**
 * Turns each grade of each check into a note, one at a time, and asks whether the table of findings
 * sees it. Each mutant is compiled by itself against the classes at hand and run in a class loader of
 * its own. What is known of a mutant is kept in a file, so that a run goes on where one ended.
 */
public final class GradeMutants {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    private final Path classes;
    private final Path tests;
    private final Path results;

    private GradeMutants(Path classes, Path tests, Path results) {
        this.classes = classes;
        this.tests = tests;
        this.results = results;
    }

    /**
     * Tries every mutant that the results do not name.
     *
     * @param arguments folder of the classes, folder of the tests' classes, file of the results
     */
    public static void main(String[] arguments) throws Exception {
        Path results = Path.of(arguments[2]);
        boolean held = new GradeMutants(Path.of(arguments[0]), Path.of(arguments[1]), results).run();
        System.exit(held ? 0 : 1);
    }

    private boolean run() throws Exception {
        Optional<String> broken = FindingTable.broken(List.of());
        if (broken.isPresent()) {
            System.out.println("the table does not hold as it is: " + broken.get());
            return false;
        }
        Map<String, String> known = known();
        for (GradeSite site : GradeSite.all()) {
            String source = Files.readString(site.file());
            String name = site.file().getFileName() + ":" + site.line(source) + " " + site.grade() + " " + site.codes();
            String key = name + " " + Integer.toHexString(source.hashCode());
            if (site.codes().isEmpty() || site.severity().equals("note") || known.containsKey(key)) {
                continue;
            }
            String fate = fate(site, source);
            known.put(key, fate);
            System.out.println(fate + " " + name);
            Files.writeString(results, fate + "\t" + key + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
        List<String> survived = known.entrySet().stream()
                .filter(mutant -> !mutant.getValue().startsWith("killed"))
                .map(mutant -> mutant.getValue() + " " + mutant.getKey())
                .toList();
        System.out.println(known.size() + " mutants, " + survived.size() + " survived");
        survived.forEach(System.out::println);
        return survived.isEmpty();
    }

    private Map<String, String> known() throws IOException {
        Map<String, String> known = new TreeMap<>();
        for (String line : Files.exists(results) ? Files.readAllLines(results) : List.<String>of()) {
            String[] halves = line.split("\t", 2);
            known.put(halves[1], halves[0]);
        }
        return known;
    }

    private String fate(GradeSite site, String source) throws Exception {
        Path mutant = Files.createTempDirectory("grade-mutant");
        try {
            if (!compiled(site, source, mutant)) {
                return "NOT COMPILED";
            }
            ClassLoader loader = new Own(List.of(mutant, classes, tests));
            Class<?> table = loader.loadClass(FindingTable.class.getName());
            Optional<?> broken =
                    (Optional<?>) table.getMethod("broken", Collection.class).invoke(null, site.codes());
            return broken.isPresent() ? "killed" : "SURVIVED";
        } catch (InvocationTargetException thrown) {
            return "killed by an exception";
        } finally {
            try (Stream<Path> files = Files.walk(mutant)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private boolean compiled(GradeSite site, String source, Path into) throws IOException {
        try (StandardJavaFileManager files = COMPILER.getStandardFileManager(null, null, null)) {
            files.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(into));
            List<Path> path = new ArrayList<>(List.of(classes));
            for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
                path.add(Path.of(part));
            }
            files.setLocationFromPaths(StandardLocation.CLASS_PATH, path);
            JavaFileObject unit =
                    new SimpleJavaFileObject(
                            URI.create("string:///" + site.file().getFileName()), JavaFileObject.Kind.SOURCE) {
                        @Override
                        public CharSequence getCharContent(boolean ignoreErrors) {
                            return site.noted(source);
                        }
                    };
            return COMPILER.getTask(
                            null,
                            files,
                            new DiagnosticCollector<>(),
                            List.of("-proc:none", "-nowarn", "-parameters", "-XDstringConcat=inline"),
                            null,
                            List.of(unit))
                    .call();
        }
    }

    /** Loads this project's classes by itself, from the first folder that has them, and all others as usual. */
    private static final class Own extends ClassLoader {
        private final List<Path> folders;

        Own(List<Path> folders) {
            super(GradeMutants.class.getClassLoader());
            this.folders = folders;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                return loaded != null
                        ? loaded
                        : name.startsWith("trestle.") ? own(name) : super.loadClass(name, resolve);
            }
        }

        private Class<?> own(String name) throws ClassNotFoundException {
            for (Path folder : folders) {
                Path file = folder.resolve(name.replace('.', '/') + ".class");
                if (Files.exists(file)) {
                    try {
                        byte[] bytes = Files.readAllBytes(file);
                        return defineClass(name, bytes, 0, bytes.length);
                    } catch (IOException unreadable) {
                        throw new ClassNotFoundException(name, unreadable);
                    }
                }
            }
            return super.loadClass(name, false);
        }
    }
}
