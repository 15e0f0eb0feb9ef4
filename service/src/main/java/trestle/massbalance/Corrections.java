package trestle.massbalance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What to move, or what to add, to bring the CG to a target. */
final class Corrections {
    /** More ballast than this makes another aircraft; common practice, no source. */
    static final double MOST_BALLAST_FRACTION = 0.25;

    /** Places nearer than this are one. */
    private static final double ONE_PLACE_M = 0.001;

    private Corrections() {}

    /**
     * All ways to a target.
     *
     * @param items the aircraft
     * @param tail its tail, where there is one
     * @param centre its mass and CG
     * @param targetArmM the target, m
     * @return the ways
     */
    static Aim towards(List<Item> items, Optional<Tail> tail, Centre centre, double targetArmM) {
        List<Integer> movable = IntStream.range(0, items.size())
                .filter(index -> items.get(index).travel().isPresent())
                .boxed()
                .toList();
        List<Move> alone = movable.stream()
                .map(i -> alone(items.get(i), i, centre, targetArmM))
                .toList();
        return new Aim(
                targetArmM,
                alone,
                movable.isEmpty() ? Optional.empty() : Optional.of(together(items, movable, centre, targetArmM)),
                ballast(items, tail, centre, targetArmM));
    }

    private static Move alone(Item item, int index, Centre centre, double targetArmM) {
        double byM = CgShift.moveForM(item.totalMassKg(), targetArmM - centre.armM(), centre.massKg());
        double toM = item.armM() + byM;
        return new Move(
                index, item.name(), toM, byM, item.travel().orElseThrow().reaches(toM));
    }

    /**
     * Least sum of squared moves that gives the wanted moment: each move is proportional to its
     * mass, {@code di = λ mi}, until its travel ends; the rest of the moment goes to the others.
     * All moves have one direction and λ only grows as ends are met, so an item at its end stays
     * there, and there are at most as many rounds as items.
     */
    private static JointMove together(List<Item> items, List<Integer> movable, Centre centre, double targetArmM) {
        double wantedKgM = centre.massKg() * (targetArmM - centre.armM());
        double[] moveM = new double[movable.size()];
        boolean[] atEnd = new boolean[movable.size()];
        double lacking = wantedKgM;
        boolean changed = true;
        while (changed) {
            changed = false;
            double squares = 0;
            lacking = wantedKgM;
            for (int k = 0; k < moveM.length; k++) {
                double massKg = items.get(movable.get(k)).totalMassKg();
                squares += atEnd[k] ? 0 : massKg * massKg;
                lacking -= atEnd[k] ? massKg * moveM[k] : 0;
            }
            for (int k = 0; k < moveM.length && squares > 0; k++) {
                if (!atEnd[k]) {
                    Item item = items.get(movable.get(k));
                    double free = lacking / squares * item.totalMassKg();
                    moveM[k] = withinTravel(item, free);
                    atEnd[k] = Math.abs(moveM[k] - free) > 0;
                    changed |= atEnd[k];
                }
            }
        }
        return joint(items, movable, moveM, centre, targetArmM);
    }

    private static JointMove joint(
            List<Item> items, List<Integer> movable, double[] moveM, Centre centre, double targetArmM) {
        List<Move> moves = new ArrayList<>();
        double armM = centre.armM();
        for (int k = 0; k < moveM.length; k++) {
            int index = movable.get(k);
            Item item = items.get(index);
            moves.add(new Move(index, item.name(), item.armM() + moveM[k], moveM[k], true));
            armM += CgShift.byMovingM(item.totalMassKg(), moveM[k], centre.massKg());
        }
        return new JointMove(moves, armM, Math.abs(armM - targetArmM) <= MassBalance.ROUNDING_M);
    }

    /** An item that stands outside its travel may stay there. */
    private static double withinTravel(Item item, double byM) {
        Travel travel = item.travel().orElseThrow();
        double forward = Math.min(0, travel.fromM() - item.armM());
        double aft = Math.max(0, travel.toM() - item.armM());
        return Math.max(forward, Math.min(aft, byM));
    }

    /** The places that the aircraft has: its most forward and most aft item, and the tail. */
    private static List<Ballast> ballast(List<Item> items, Optional<Tail> tail, Centre centre, double targetArmM) {
        List<Place> places = new ArrayList<>();
        Item forward =
                items.stream().min(Comparator.comparingDouble(Item::armM)).orElseThrow();
        Item aft = items.stream().max(Comparator.comparingDouble(Item::armM)).orElseThrow();
        places.add(new Place(forward.name(), forward.armM()));
        places.add(new Place(aft.name(), aft.armM()));
        tail.ifPresent(t -> places.add(new Place("tail", t.quarterChordArmM())));
        List<Ballast> ballast = new ArrayList<>();
        for (Place place : places) {
            boolean helps = Math.abs(place.armM() - targetArmM) > MassBalance.ROUNDING_M;
            double massKg = helps ? CgShift.ballastKg(centre.massKg(), centre.armM(), targetArmM, place.armM()) : 0;
            boolean told = ballast.stream().anyMatch(b -> Math.abs(b.armM() - place.armM()) < ONE_PLACE_M);
            if (!told && massKg > MassBalance.ROUNDING_KG && massKg <= MOST_BALLAST_FRACTION * centre.massKg()) {
                ballast.add(new Ballast(place.name(), place.armM(), massKg, centre.massKg() + massKg));
            }
        }
        ballast.sort(Comparator.comparingDouble(Ballast::massKg));
        return ballast;
    }

    private record Place(String name, double armM) {}
}
