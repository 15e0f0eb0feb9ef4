package trestle.magnetics;

import java.util.List;
import java.util.stream.IntStream;
import trestle.finding.Chain;
import trestle.finding.Chain.Term;
import trestle.finding.Working;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;
import trestle.units.Share;

/** How the fields at a compass were reached: in µT and mm, where µ0/(2π) is 200 µT mm/A. */
public final class CompassWorkings {
    private static final String FIELD =
            "D. Griffiths, Introduction to Electrodynamics, section 5.2 (from memory), out less return";
    private static final String HEADING = "geometry: the field from its worst side";

    private final CompassTask task;
    private final Chain chain = new Chain();

    private CompassWorkings(CompassTask task) {
        this.task = task;
    }

    /**
     * The workings of a clearance.
     *
     * @param task what was asked
     * @param clearance what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(CompassTask task, Clearance clearance) {
        CompassWorkings workings = new CompassWorkings(task);
        workings.write(clearance);
        return workings.chain.lines();
    }

    private void write(Clearance clearance) {
        double earthUt = FluxDensity.utFromT(task.earthHorizontalT());
        chain.given("B_h", "horizontal field of the earth", earthUt, "µT");
        double allowedDeg = Angle.degFromRad(task.allowedHeadingErrorRad());
        chain.given("a", "allowed heading error", allowedDeg, "°");
        double allowedUt = FluxDensity.utFromT(task.allowedFieldT());
        chain.step("B_a", "allowed field", allowedUt, "µT", "B_h*sin(a*pi/180)", HEADING);
        for (int i = 0; i < task.runs().size(); i++) {
            laid(task.runs().get(i), i + 1);
        }
        fields(task.runs(), clearance.cruise(), "", "");
        clearance
                .fullThrottle()
                .ifPresent(fields -> fields(
                        task.runs().stream().map(LeadRun::atFullThrottle).toList(), fields, "p", " at full throttle"));
    }

    /** Symbols of full throttle end in p. */
    private void fields(List<LeadRun> runs, LeadFields fields, String mark, String when) {
        for (int i = 0; i < runs.size(); i++) {
            run(runs.get(i), fields.runs().get(i), i + 1, mark, when);
        }
        if (runs.isEmpty()) {
            return;
        }
        String squares = "B2" + mark;
        total("w" + mark, "all runs at worst" + when, fields.worst(), terms(fields, mark, 1), squares);
        chain.sum(squares, "sum of squares of the fields" + when, "µT²", terms(fields, mark, 2), "statistics");
        total("l" + mark, "all runs as likely" + when, fields.likely(), List.of(), squares);
    }

    private static List<Term> terms(LeadFields fields, String mark, int power) {
        return IntStream.range(0, fields.runs().size())
                .mapToObj(i -> new Term(
                        "B_" + (i + 1) + mark + (power == 1 ? "" : "^" + power),
                        Math.pow(FluxDensity.utFromT(fields.runs().get(i).fieldT()), power)))
                .toList();
    }

    private void laid(LeadRun run, int n) {
        String of = ", run " + n + ", " + run.name();
        String separation = Chain.number(Length.mmFromM(run.separationM()));
        double effectiveMm = Length.mmFromM(run.effectiveSeparationM());
        String formula = run.twisted() ? separation + "/20" : separation;
        String source = run.twisted() ? "common practice, no source" : Chain.REQUEST;
        chain.step("s_" + n, "separation that counts" + of, effectiveMm, "mm", formula, source);
        chain.given("d_" + n, "distance" + of, Length.mmFromM(run.distanceM()), "mm");
    }

    private void run(LeadRun run, Disturbance alone, int n, String mark, String when) {
        String of = ", run " + n + ", " + run.name() + when;
        chain.given("I_" + n + mark, "current" + of, run.currentA(), "A");
        double fieldUt = FluxDensity.utFromT(alone.fieldT());
        chain.step("B_" + n + mark, "field" + of, fieldUt, "µT", field(run, n, mark), FIELD);
        follow(n + mark, of, alone);
    }

    /** Out less return; of a straight length each, where one is given. */
    private static String field(LeadRun run, int n, String mark) {
        if (run.lengthM().isEmpty()) {
            // The difference of two nearly equal terms, brought together.
            return "200*I_%1$d%2$s*s_%1$d/(d_%1$d^2-s_%1$d^2/4)".formatted(n, mark);
        }
        String length = Chain.number(Length.mmFromM(run.lengthM().getAsDouble()));
        String one = "%2$s/((d_%1$d%3$ss_%1$d/2)*sqrt(%2$s^2+4*(d_%1$d%3$ss_%1$d/2)^2))";
        return "200*I_%d%s*(".formatted(n, mark) + one.formatted(n, length, "-") + "-" + one.formatted(n, length, "+")
                + ")";
    }

    private void total(String tag, String called, Disturbance all, List<Term> terms, String squares) {
        double fieldUt = FluxDensity.utFromT(all.fieldT());
        if (terms.isEmpty()) {
            chain.step("B_" + tag, "field, " + called, fieldUt, "µT", "sqrt(" + squares + ")", "statistics");
        } else {
            chain.sum("B_" + tag, "field, " + called, "µT", terms, Chain.ARITHMETIC);
        }
        follow(tag, ", " + called, all);
    }

    private void follow(String tag, String of, Disturbance disturbance) {
        double percent = Share.percentFromFraction(disturbance.fieldFractionOfEarth());
        String share = "100*B_" + tag + "/B_h";
        chain.step("p_" + tag, "over the earth's" + of, percent, "%", share, Chain.ARITHMETIC);
        disturbance.headingErrorRad().ifPresent(errorRad -> {
            String error = "asin(B_" + tag + "/B_h)*180/pi";
            chain.step("e_" + tag, "heading error" + of, Angle.degFromRad(errorRad), "°", error, HEADING);
        });
        chain.found(
                "D_" + tag,
                "least distance" + of,
                Length.mmFromM(disturbance.leastDistanceM()),
                "mm",
                "distance at which the field is B_a, bracketed root; 0 without current",
                FIELD);
    }
}
