package trestle.massbalance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trestle.finding.Judge;
import trestle.units.Length;

/** What to do about a CG that is not where it should be, as the end of a sentence. */
final class Remedy {
    /** A longer list stands in the answer. */
    private static final int MOST_NAMED = 3;

    private Remedy() {}

    /**
     * What would bring the CG to its target.
     *
     * @param aim the ways
     * @param maximumTakeoffMassKg what no ballast may pass, kg; empty for no limit
     * @return a clause that begins with a semicolon; empty where there is nowhere to go
     */
    static String of(Optional<Aim> aim, OptionalDouble maximumTakeoffMassKg) {
        if (aim.isEmpty()) {
            return "";
        }
        List<String> ways = new ArrayList<>();
        moving(aim.get()).ifPresent(ways::add);
        aim.get().ballast().stream()
                .filter(b -> maximumTakeoffMassKg.isEmpty() || b.totalMassKg() <= maximumTakeoffMassKg.getAsDouble())
                .findFirst()
                .map(Remedy::adding)
                .ifPresent(ways::add);
        String goal =
                Judge.text("to bring it to %.1f mm", Length.mmFromM(aim.get().targetArmM()));
        if (!ways.isEmpty()) {
            return "; " + goal + ", " + String.join(", or ", ways) + fallingShort(aim.get());
        }
        return aim.get().together().isPresent()
                ? fallingShort(aim.get())
                : "; " + goal + ", say which items can be moved (movable_from_mm, movable_to_mm)";
    }

    private static Optional<String> moving(Aim aim) {
        Optional<Move> nearest = aim.alone().stream()
                .filter(Move::reachable)
                .min(Comparator.comparingDouble(move -> Math.abs(move.byM())));
        if (nearest.isPresent()) {
            Move move = nearest.get();
            return Optional.of(Judge.text(
                    "move the %s %s %s, to %.0f mm",
                    move.item(), Said.distance(move.byM()), Said.way(move.byM()), Length.mmFromM(move.toArmM())));
        }
        return aim.together().filter(JointMove::reachesTarget).map(Remedy::together);
    }

    private static String together(JointMove joint) {
        List<Move> moves = joint.moves().stream()
                .filter(move -> move.byM() != 0)
                .sorted(Comparator.comparingDouble(move -> -Math.abs(move.byM())))
                .toList();
        String named = moves.stream()
                .limit(MOST_NAMED)
                .map(move -> "the " + move.item() + " " + Said.distance(move.byM()))
                .collect(Collectors.joining(", "));
        int more = moves.size() - MOST_NAMED;
        return "move " + named + (more > 0 ? Judge.text(" and %d more", more) : "") + " "
                + Said.way(moves.isEmpty() ? 0 : moves.get(0).byM());
    }

    private static String adding(Ballast ballast) {
        return Judge.text(
                "put %s at the %s (%.0f mm)",
                Said.mass(ballast.massKg()), ballast.place(), Length.mmFromM(ballast.armM()));
    }

    /** Where moving alone does not do. */
    private static String fallingShort(Aim aim) {
        return aim.together().isPresent() && !aim.reachable()
                ? Judge.text(
                        "; moving all that is movable brings it only to %.1f mm",
                        Length.mmFromM(aim.together().get().cgArmM()))
                : "";
    }
}
