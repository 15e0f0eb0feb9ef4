package trestle.magnetics;

import java.util.List;

/**
 * The fields of all leads at the compass, in one state of the flight.
 *
 * @param runs each run alone, in their order
 * @param worst all runs, fields added as magnitudes; its least distance is the one to keep from
 *     every run alike
 * @param likely all runs, fields added by root sum of squares; its least distance likewise
 */
public record LeadFields(List<Disturbance> runs, Disturbance worst, Disturbance likely) {
    /** Copies the list. */
    public LeadFields {
        runs = List.copyOf(runs);
    }
}
