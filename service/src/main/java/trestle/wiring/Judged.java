package trestle.wiring;

import java.util.List;
import java.util.Optional;

/**
 * The gauge that the run will have, as its checks see it: the one asked about, else the recommended one, else, where no
 * size on offer meets the task, the thickest.
 *
 * @param task what it is for
 * @param answer how it does
 * @param asked whether it was asked about
 * @param better another that meets every limit; empty where there is none
 * @param thickest the thickest on offer
 */
record Judged(WireTask task, GaugeAnswer answer, boolean asked, Optional<Gauge> better, Gauge thickest) {
    static Judged of(
            WireTask task,
            List<GaugeAnswer> candidates,
            Optional<GaugeAnswer> recommended,
            Optional<GaugeAnswer> checked) {
        GaugeAnswer last = candidates.get(candidates.size() - 1);
        GaugeAnswer answer = checked.or(() -> recommended).orElse(last);
        Optional<Gauge> better = recommended.map(GaugeAnswer::gauge).filter(gauge -> !gauge.equals(answer.gauge()));
        return new Judged(task, answer, checked.isPresent(), better, last.gauge());
    }

    /** Whether it stands for all sizes on offer, none of which meets the task. */
    boolean lastResort() {
        return !asked && !answer.meets();
    }

    /** The subject of a sentence on it. */
    String who() {
        return lastResort() ? "Even the largest size, " + label() + "," : label();
    }

    /** Its name. */
    String label() {
        return answer.gauge().label();
    }

    /**
     * What to do: use a gauge that meets every limit, or, where there is none, something else.
     *
     * @param otherwise what else helps
     * @return the end of a sentence
     */
    String instead(String otherwise) {
        if (better.isPresent()) {
            return "use " + better.get().label();
        }
        return asked && !answer.meets()
                ? otherwise + "; no size up to " + thickest.label() + " meets every limit"
                : otherwise;
    }
}
