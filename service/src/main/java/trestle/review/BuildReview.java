package trestle.review;

import java.util.List;
import java.util.Optional;
import trestle.wiring.GaugeAnswer;

/**
 * Reviews a whole aircraft: masses of packs and wires go into the balance, the mass into endurance,
 * the current into packs and wires, the resistance of the wires into the drop.
 *
 * <p>Wires feed back: a thicker wire weighs more, which takes more power, which asks for a thicker
 * wire. The review begins with the wires of an aircraft without any and repeats until the gauges stay as they are.
 */
public final class BuildReview {
    /** A few grams of copper move the current by parts per thousand: two or three rounds settle. */
    private static final int MOST_ROUNDS = 8;

    private BuildReview() {}

    /**
     * Reviews an aircraft.
     *
     * @param aircraft the aircraft
     * @return what was found
     */
    public static Review of(Aircraft aircraft) {
        Base base = Base.of(aircraft);
        Round round = new Round(base, List.of(), Optional.empty());
        List<RunReview> runs = round.aboutRuns();
        for (int i = 0; i < MOST_ROUNDS && !runs.isEmpty(); i++) {
            round = new Round(base, runs, Optional.of(round));
            List<RunReview> next = round.runs();
            boolean settled = gauges(next).equals(gauges(runs));
            runs = next;
            if (settled) {
                break;
            }
        }
        return new Review(round, runs);
    }

    /**
     * Reviews an aircraft on the wires that another review of it settled on: with slightly other numbers they are the
     * wires that are fitted all the same.
     *
     * @param aircraft the aircraft
     * @param settled the other review
     * @return what was found
     */
    public static Review of(Aircraft aircraft, Review settled) {
        Round round = new Round(Base.of(aircraft), settled.runs(), Optional.of(settled.round()));
        return new Review(round, round.runs());
    }

    private static List<Optional<String>> gauges(List<RunReview> runs) {
        return runs.stream()
                .map(run -> run.fitted().map(GaugeAnswer::gauge).map(gauge -> gauge.designation()))
                .toList();
    }
}
