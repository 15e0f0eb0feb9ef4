package trestle.endpoint;

import java.util.Optional;

/**
 * Which part of a calculation is asked for alone.
 *
 * @param calculation name of the calculation that the part is
 * @param run name of the one of several that is meant; empty where there is one
 */
public record PartName(String calculation, Optional<String> run) {}
