package trestle.magnetics;

import java.util.List;
import trestle.finding.Judgement;

/**
 * The compass among its leads.
 *
 * @param runs each run alone, in their order
 * @param worst all runs, fields added as magnitudes; its least distance is the one to keep from
 *     every run alike
 * @param likely all runs, fields added by root sum of squares; its least distance likewise
 * @param judgement what is to be said of it
 */
public record Clearance(List<Disturbance> runs, Disturbance worst, Disturbance likely, Judgement judgement) {
    /** Copies the list. */
    public Clearance {
        runs = List.copyOf(runs);
    }
}
