package trestle.binding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import trestle.api.model.ApiFault;

/** Gathers what is wrong with one request. */
public final class Faults {
    /** More than a person reads; keeps a hostile body from growing the answer without bound. */
    private static final int MOST = 1000;

    /** As long as the contract lets a pointer and a message be. */
    private static final int LONGEST_POINTER = 400;

    private static final int LONGEST_MESSAGE = 1000;

    private final List<ApiFault> faults = new ArrayList<>();

    /** The pointers of all faults, and of all that holds one: so one look tells what they cover. */
    private final Set<String> places = new HashSet<>();

    private final Set<String> holders = new HashSet<>();

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
            String place = cut(at, LONGEST_POINTER);
            faults.add(new ApiFault(place, code, cut(words.get(), LONGEST_MESSAGE)));
            places.add(place);
            above(place).forEach(holders::add);
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
        return places.contains(at) || holders.contains(at) || above(at).anyMatch(places::contains);
    }

    /** The pointers of what holds a place, nearest first. */
    private static Stream<String> above(String at) {
        return Stream.iterate(at.lastIndexOf('/'), slash -> slash >= 0, slash -> at.lastIndexOf('/', slash - 1))
                .map(slash -> at.substring(0, slash));
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
