package trestle.review;

import java.util.OptionalDouble;
import trestle.wiring.WireTask;

/**
 * A run of wire in the aircraft.
 *
 * @param current which current it carries
 * @param task what it must stand; current, peak, air and flight are put in by the review for a run
 *     that carries the pack's current, and voltage too where none was given
 * @param voltageGiven whether the supply voltage of the task was given
 * @param armM station of its middle, m aft of the datum; empty for a run that is not weighed
 */
public record InstalledRun(RunCurrent current, WireTask task, boolean voltageGiven, OptionalDouble armM) {
    /** Which current a run carries. */
    public enum RunCurrent {
        /** What the pack gives. */
        PACK,
        /** Given with the run. */
        GIVEN
    }
}
