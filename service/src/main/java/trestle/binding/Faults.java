package trestle.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import trestle.api.model.ApiFault;

/** Gathers what is wrong with one request. */
public final class Faults {
    /** More than a person reads; keeps a hostile body from growing the answer without bound. */
    private static final int MOST = 1000;

    /** As long as the contract lets a pointer and a message be. */
    private static final int LONGEST_POINTER = 400;

    private static final int LONGEST_MESSAGE = 1000;

    private final List<ApiFault> faults = new ArrayList<>();

    /**
     * Notes a fault.
     *
     * @param at JSON Pointer of the field
     * @param code one word for a program
     * @param message a sentence for a person
     */
    public void add(String at, String code, String message) {
        add(at, code, () -> message);
    }

    /**
     * Notes a fault whose message takes some finding.
     *
     * @param at JSON Pointer of the field
     * @param code one word for a program
     * @param words finds the message; not asked once there are too many faults
     */
    public void add(String at, String code, Supplier<String> words) {
        if (!full()) {
            String message = words.get();
            faults.add(new ApiFault(cut(at, LONGEST_POINTER), code, cut(message, LONGEST_MESSAGE)));
        }
    }

    /**
     * Whether there are so many that no more are noted.
     *
     * @return whether it is full
     */
    public boolean full() {
        return faults.size() >= MOST;
    }

    private static String cut(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }

    /** Whether something is already wrong at a pointer, at what holds it, or within it. */
    boolean cover(String at) {
        return faults.stream()
                .map(ApiFault::at)
                .anyMatch(f -> at.equals(f) || at.startsWith(f + "/") || f.startsWith(at + "/"));
    }

    /**
     * Refuses the request with all of them, if there are any.
     *
     * @param reason of what sort they are
     * @throws Refusal if there are any
     */
    public void refuseIfAny(Reason reason) {
        if (!faults.isEmpty()) {
            throw new Refusal(reason, faults);
        }
    }
}
