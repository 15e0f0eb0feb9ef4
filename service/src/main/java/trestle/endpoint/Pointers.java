package trestle.endpoint;

import java.util.Map;
import trestle.finding.Subject;

/**
 * Where in a request each part of a discipline stands: a JSON Pointer template for each constant of
 * the discipline's enum of parts, with {@code {}} for each list index.
 *
 * @param templates pointer template of each part
 */
public record Pointers(Map<Enum<?>, String> templates) {

    /** Copies the map. */
    public Pointers {
        templates = Map.copyOf(templates);
    }

    /**
     * The pointer to a subject.
     *
     * @param subject what a finding or an assumption is about
     * @return its JSON Pointer; the whole request where the part has no field of its own
     */
    public String to(Subject subject) {
        String pointer = templates.getOrDefault(subject.part(), "");
        for (Integer index : subject.indices()) {
            pointer = pointer.replaceFirst("\\{}", index.toString());
        }
        // A subject without its index speaks of the list.
        int unfilled = pointer.indexOf("/{}");
        return unfilled < 0 ? pointer : pointer.substring(0, unfilled);
    }
}
