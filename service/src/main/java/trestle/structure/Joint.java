package trestle.structure;

import java.util.OptionalDouble;

/**
 * A joint of the wing with its joiner.
 *
 * @param name what it is called
 * @param lateralM from the plane of symmetry, m
 * @param joiner its section, count and material; its ends are not looked at
 * @param engagementM length in its socket, m, above 0
 * @param bearingPa what the socket may be pressed with, typical, Pa; absent where not known
 * @param bearingKnockdown share of it that is counted on
 * @param bearingWidthM width that presses, m
 */
public record Joint(
        String name,
        double lateralM,
        Spar joiner,
        double engagementM,
        OptionalDouble bearingPa,
        double bearingKnockdown,
        double bearingWidthM) {}
