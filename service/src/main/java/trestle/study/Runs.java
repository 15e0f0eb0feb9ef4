package trestle.study;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Runs on all cores; the results stand in the order of their points. */
final class Runs {
    private Runs() {}

    static <T> List<T> of(int count, IntFunction<T> run) {
        return IntStream.range(0, count).parallel().mapToObj(run).toList();
    }
}
