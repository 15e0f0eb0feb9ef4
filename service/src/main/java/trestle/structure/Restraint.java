package trestle.structure;

import java.util.OptionalDouble;

/**
 * A pack or payload and what holds it.
 *
 * @param name what is held
 * @param massKg its mass, kg
 * @param forwardN what holds it from moving forward, N; absent where not known
 * @param aftN from moving aft, N
 * @param upN from moving up, N
 * @param sideN from moving sideways, N
 */
public record Restraint(
        String name,
        double massKg,
        OptionalDouble forwardN,
        OptionalDouble aftN,
        OptionalDouble upN,
        OptionalDouble sideN) {}
