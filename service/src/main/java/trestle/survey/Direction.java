package trestle.survey;

import org.hipparchus.util.MathUtils;

/** The direction of lines that takes least time, turns and wind counted. */
final class Direction {
    /** The time has steps where a line more is needed, so a grid looks first: every 5°, fewer where there are many lines. */
    private static final int MOST_DIRECTIONS = 36;

    private static final int FEWEST_DIRECTIONS = 12;

    /** About the best of them it looks again, at an angle finer by as much. */
    private static final int MOST_FINER = 10;

    private static final int FEWEST_FINER = 3;

    /** Strips that are cut for the grid, about. */
    private static final double STRIPS = 10_000;

    /** In still air a direction and its opposite differ by rounding alone; the first stays. */
    private static final double ROUNDING = 1e-9;

    private Direction() {}

    /**
     * The best direction of those looked at. A direction and its opposite are not alike: with an odd number of lines one
     * of them has a line more against the wind.
     *
     * @param task the survey
     * @return its lines
     */
    static Pass best(SurveyTask task) {
        double affordable = STRIPS * task.betweenLinesM() / (4 * task.block().reachM());
        int grid = (int) Math.max(FEWEST_DIRECTIONS, Math.min(MOST_DIRECTIONS, affordable));
        int finer = (int) Math.max(FEWEST_FINER, Math.min(MOST_FINER, affordable / 5));
        double step = Math.PI / grid;
        Pass best = Pass.of(task, 0);
        for (int i = 1; i < 2 * grid; i++) {
            best = better(best, Pass.of(task, i * step));
        }
        double middle = best.directionRad();
        for (int i = 1 - finer; i < finer; i++) {
            double direction = middle + i * step / finer;
            best = better(best, Pass.of(task, MathUtils.normalizeAngle(direction, Math.PI)));
            best = better(best, Pass.of(task, MathUtils.normalizeAngle(direction + Math.PI, Math.PI)));
        }
        return best;
    }

    private static Pass better(Pass best, Pass other) {
        return other.timeS() < best.timeS() * (1 - ROUNDING) ? other : best;
    }
}
