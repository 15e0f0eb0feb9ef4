package trestle.structure;

/**
 * What a restraint is asked.
 *
 * @param name what is held
 * @param forwardN N
 * @param aftN N; 0 without a launch
 * @param upN N
 * @param sideN N
 * @param governedBy what sets the forward force
 */
public record RestraintLoad(String name, double forwardN, double aftN, double upN, double sideN, String governedBy) {}
