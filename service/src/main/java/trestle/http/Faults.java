package trestle.http;

import java.util.ArrayList;
import java.util.List;
import trestle.api.model.Fault;

/** Gathers what is wrong with one request. */
final class Faults {
    /** More than a person reads; keeps a hostile body from growing the answer without bound. */
    private static final int MOST = 1000;

    private final List<Fault> faults = new ArrayList<>();

    void add(String at, String code, String message) {
        if (faults.size() < MOST) {
            faults.add(new Fault(at, code, message));
        }
    }

    /** Whether something is already wrong at a pointer, at what holds it, or within it. */
    boolean cover(String at) {
        return faults.stream()
                .map(Fault::at)
                .anyMatch(f -> at.equals(f) || at.startsWith(f + "/") || f.startsWith(at + "/"));
    }

    boolean any() {
        return !faults.isEmpty();
    }

    List<Fault> list() {
        return List.copyOf(faults);
    }
}
