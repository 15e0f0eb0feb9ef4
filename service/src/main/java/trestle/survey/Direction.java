package trestle.survey;

/** The direction of lines that takes least time, turns and wind counted. */
final class Direction {
    /** The time has steps where a line more is needed, so a grid looks first: every 3°, fewer where there are many lines. */
    private static final int MOST_DIRECTIONS = 60;

    private static final int FEWEST_DIRECTIONS = 12;

    /** About the best of them it looks again, at an angle finer by as much. */
    private static final int MOST_FINER = 12;

    private static final int FEWEST_FINER = 3;

    /** Strips that are cut for the grid, about. */
    private static final double STRIPS = 10_000;

    private Direction() {}

    /**
     * The best direction.
     *
     * @param task the survey
     * @return its lines; a direction and its opposite are flown alike, so the direction is within a half circle
     */
    static Pass best(SurveyTask task) {
        double affordable = STRIPS * task.betweenLinesM() / (2 * task.block().reachM());
        int grid = (int) Math.max(FEWEST_DIRECTIONS, Math.min(MOST_DIRECTIONS, affordable));
        int finer = (int) Math.max(FEWEST_FINER, Math.min(MOST_FINER, affordable / 5));
        double step = Math.PI / grid;
        Pass best = Pass.of(task, 0);
        for (int i = 1; i < grid; i++) {
            best = better(best, Pass.of(task, i * step));
        }
        double middle = best.directionRad();
        for (int i = 1 - finer; i < finer; i++) {
            double direction = middle + i * step / finer;
            best = i == 0 ? best : better(best, Pass.of(task, direction < 0 ? direction + Math.PI : direction));
        }
        return best;
    }

    private static Pass better(Pass best, Pass other) {
        return other.timeS() < best.timeS() ? other : best;
    }
}
