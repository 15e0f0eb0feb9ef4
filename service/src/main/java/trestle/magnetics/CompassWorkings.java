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
    private static final String HEADING = "geometry: the field across the earth's";

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
        chain.step("B_a", "allowed field", allowedUt, "µT", "B_h*tan(a*pi/180)", HEADING);
        for (int i = 0; i < task.runs().size(); i++) {
            run(task.runs().get(i), clearance.runs().get(i), i + 1);
        }
        if (task.runs().isEmpty()) {
            return;
        }
        total("w", "all runs at worst", clearance.worst(), terms("B_%d", 1));
        chain.sum("B2", "sum of squares of the fields", "µT²", terms("B_%d^2", 2), "statistics");
        total("l", "all runs as likely", clearance.likely(), List.of());
    }

    private List<Term> terms(String form, int power) {
        return IntStream.range(0, task.runs().size())
                .mapToObj(i -> new Term(form.formatted(i + 1), Math.pow(fieldUt(i), power)))
                .toList();
    }

    private double fieldUt(int run) {
        return FluxDensity.utFromT(task.runs().get(run).fieldT());
    }

    private void run(LeadRun run, Disturbance alone, int n) {
        String of = ", run " + n + ", " + run.name();
        chain.given("I_" + n, "current" + of, run.currentA(), "A");
        String separation = Chain.number(Length.mmFromM(run.separationM()));
        double effectiveMm = Length.mmFromM(run.effectiveSeparationM());
        String formula = run.twisted() ? separation + "/20" : separation;
        String source = run.twisted() ? "common practice, no source" : Chain.REQUEST;
        chain.step("s_" + n, "separation that counts" + of, effectiveMm, "mm", formula, source);
        chain.given("d_" + n, "distance" + of, Length.mmFromM(run.distanceM()), "mm");
        double fieldUt = FluxDensity.utFromT(alone.fieldT());
        chain.step("B_" + n, "field" + of, fieldUt, "µT", field(run, n), FIELD);
        follow(n + "", of, alone);
    }

    /** Out less return; of a straight length each, where one is given. */
    private static String field(LeadRun run, int n) {
        if (run.lengthM().isEmpty()) {
            // The difference of two nearly equal terms, brought together.
            return "200*I_%1$d*s_%1$d/(d_%1$d^2-s_%1$d^2/4)".formatted(n);
        }
        String length = Chain.number(Length.mmFromM(run.lengthM().getAsDouble()));
        String one = "%2$s/((d_%1$d%3$ss_%1$d/2)*sqrt(%2$s^2+4*(d_%1$d%3$ss_%1$d/2)^2))";
        return "200*I_%d*(".formatted(n) + one.formatted(n, length, "-") + "-" + one.formatted(n, length, "+") + ")";
    }

    private void total(String tag, String called, Disturbance all, List<Term> terms) {
        double fieldUt = FluxDensity.utFromT(all.fieldT());
        if (terms.isEmpty()) {
            chain.step("B_" + tag, "field, " + called, fieldUt, "µT", "sqrt(B2)", "statistics");
        } else {
            chain.sum("B_" + tag, "field, " + called, "µT", terms, Chain.ARITHMETIC);
        }
        follow(tag, ", " + called, all);
    }

    private void follow(String tag, String of, Disturbance disturbance) {
        double percent = Share.percentFromFraction(disturbance.fieldFractionOfEarth());
        String share = "100*B_" + tag + "/B_h";
        chain.step("p_" + tag, "over the earth's" + of, percent, "%", share, Chain.ARITHMETIC);
        double errorDeg = Angle.degFromRad(disturbance.headingErrorRad());
        String error = "atan(B_" + tag + "/B_h)*180/pi";
        chain.step("e_" + tag, "heading error" + of, errorDeg, "°", error, HEADING);
        chain.found(
                "D_" + tag,
                "least distance" + of,
                Length.mmFromM(disturbance.leastDistanceM()),
                "mm",
                "distance at which the field is B_a, bracketed root; 0 without current",
                FIELD);
    }
}
