package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.massbalance.Item;
import trestle.massbalance.PointMass;

/** Wires as items of the balance. */
final class WireItems {
    private WireItems() {}

    /**
     * The runs that have a place and a gauge.
     *
     * @param runs the runs of the aircraft
     * @param reviewed the same runs as judged; empty in the first round
     * @return one item for each run that can be weighed
     */
    static List<Item> of(List<InstalledRun> runs, List<RunReview> reviewed) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < reviewed.size(); i++) {
            OptionalDouble armM = runs.get(i).armM();
            RunReview run = reviewed.get(i);
            if (armM.isPresent() && run.fitted().isPresent()) {
                double massKg = run.fitted().get().massKg();
                items.add(Item.of("wire: " + run.task().run().name(), new PointMass(massKg, armM.getAsDouble(), 0, 0)));
            }
        }
        return items;
    }
}
