package trestle.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** Whole lines to each flight, as many as its energy holds with the way out and home. */
final class Flights {
    private final SurveyTask task;
    private final SurveyEnergy energy;
    private final List<Line> lines;
    private final List<Double> directions;
    private final List<Double> radii;
    private final double powerW;
    private final Optional<Coordinate> home;

    private Flights(SurveyTask task, SurveyEnergy energy, List<Pass> passes, double powerW) {
        this.task = task;
        this.energy = energy;
        this.powerW = powerW;
        home = energy.home().flatMap(task.block()::place);
        lines = new ArrayList<>();
        directions = new ArrayList<>();
        radii = new ArrayList<>();
        for (Pass pass : passes) {
            for (Line line : pass.lines()) {
                lines.add(line);
                directions.add(pass.directionRad());
                radii.add(pass.radiusM());
            }
        }
    }

    /**
     * The flights at a power.
     *
     * @param task the survey
     * @param energy what each flight has
     * @param passes the lines
     * @param powerW power at the airspeed of the survey, W
     * @return the flights; the last of them beyond its energy where one line is too much for any
     */
    static List<SurveyFlight> of(SurveyTask task, SurveyEnergy energy, List<Pass> passes, double powerW) {
        return new Flights(task, energy, passes, powerW).all();
    }

    private List<SurveyFlight> all() {
        List<SurveyFlight> flights = new ArrayList<>();
        int first = 0;
        while (first < lines.size()) {
            int last = first;
            double onLinesS = lineS(first);
            double timeS = wholeS(first, last, onLinesS);
            if (energyJ(timeS) > energy.availableJ()) {
                flights.add(new SurveyFlight(first, last, timeS, energyJ(timeS)));
                return flights;
            }
            while (last + 1 < lines.size()) {
                double moreS = onLinesS + betweenS(last) + lineS(last + 1);
                double thenS = wholeS(first, last + 1, moreS);
                if (energyJ(thenS) > energy.availableJ()) {
                    break;
                }
                onLinesS = moreS;
                timeS = thenS;
                last++;
            }
            flights.add(new SurveyFlight(first, last, timeS, energyJ(timeS)));
            first = last + 1;
        }
        return flights;
    }

    private double energyJ(double timeS) {
        return timeS * powerW + energy.overheadJ();
    }

    private double lineS(int line) {
        return task.flying().straightS(lines.get(line).fromM(), lines.get(line).toM());
    }

    private double betweenS(int line) {
        if (!directions.get(line).equals(directions.get(line + 1))) {
            return task.flying()
                    .straightS(lines.get(line).toM(), lines.get(line + 1).fromM());
        }
        return task.flying().betweenS(lines.get(line), lines.get(line + 1), directions.get(line), radii.get(line));
    }

    private double wholeS(int first, int last, double onLinesS) {
        if (home.isEmpty()) {
            double against = task.airspeedMPerS() - task.wind().speedMPerS();
            double with = task.airspeedMPerS() + task.wind().speedMPerS();
            return onLinesS + (energy.wayM() == 0 ? 0 : energy.wayM() / Math.max(against, 1e-9) + energy.wayM() / with);
        }
        List<Double> place = List.of(home.get().x, home.get().y);
        return task.flying().straightS(place, lines.get(first).fromM())
                + onLinesS
                + task.flying().straightS(lines.get(last).toM(), place);
    }
}
