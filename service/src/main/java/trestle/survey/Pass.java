package trestle.survey;

import java.util.List;

/**
 * All lines of one direction.
 *
 * @param directionRad direction, clockwise from north, rad
 * @param lines the lines in the order in which they are flown
 * @param radiusM radius of the turns, m
 * @param lineS time on the lines, s; infinite where the wind is too strong
 * @param turnS time between them, s
 */
public record Pass(double directionRad, List<Line> lines, double radiusM, double lineS, double turnS) {
    /** Copies the list. */
    public Pass {
        lines = List.copyOf(lines);
    }

    static Pass of(SurveyTask task, double directionRad) {
        Flying flying = task.flying();
        List<Line> lines = Lines.over(task.block(), directionRad, task.spacing());
        double radiusM =
                Turns.radiusM(Math.max(flying.fastestMPerS(directionRad), task.airspeedMPerS()), task.bankRad());
        double lineS = 0;
        double turnS = 0;
        for (int i = 0; i < lines.size(); i++) {
            lineS += flying.straightS(lines.get(i).fromM(), lines.get(i).toM());
            if (i > 0) {
                turnS += flying.betweenS(lines.get(i - 1), lines.get(i), directionRad, radiusM);
            }
        }
        return new Pass(directionRad, lines, radiusM, lineS, turnS);
    }

    double timeS() {
        return lineS + turnS;
    }

    double lengthM() {
        return lines.stream().mapToDouble(Line::lengthM).sum();
    }

    int photos() {
        return lines.stream().mapToInt(Line::photos).sum();
    }
}
