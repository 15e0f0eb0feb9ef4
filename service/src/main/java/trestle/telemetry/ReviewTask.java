package trestle.telemetry;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of a flight: of its log, or of what was written down.
 *
 * @param log rows; empty where there is a landing
 * @param landing what was written down; empty where there is a log
 * @param flown the aircraft and the day
 * @param spanM wing span, m
 * @param pack the pack
 */
public record ReviewTask(
        Optional<Telemetry> log,
        Optional<Landing> landing,
        Flown flown,
        OptionalDouble spanM,
        Optional<FlownPack> pack) {}
