package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.motorout.MotorOut;
import trestle.units.Angle;
import trestle.units.Share;

/** Whether an aircraft of several motors is held, and climbs, on those that are left when one stops. */
final class MotorOutChecks {
    private static final double MOST_BANK_DEG = 5;

    /** From here on the drag of the stopped side is worth a word. */
    private static final double MUCH_DRAG = 0.1;

    private final Aircraft aircraft;
    private final Propulsion.ByParts parts;
    private final Optional<MotorOutOfAircraft> found;

    private MotorOutChecks(Aircraft aircraft, Propulsion.ByParts parts, Optional<MotorOutOfAircraft> found) {
        this.aircraft = aircraft;
        this.parts = parts;
        this.found = found;
    }

    /** Nothing is to be judged of an aircraft with one motor, or of motors that are known by their efficiency alone. */
    static Judgement of(Aircraft aircraft, Optional<MotorOutOfAircraft> found) {
        Judge judge = new Judge();
        if (aircraft.propulsion() instanceof Propulsion.ByParts parts && parts.motorCount() > 1) {
            MotorOutChecks checks = new MotorOutChecks(aircraft, parts, found);
            Subject fin = Subject.of(ReviewPart.TAIL_FIN);
            judge.check("motor-out-control", "rudder with one motor stopped", fin, checks::control);
            judge.check("motor-out-bank", "bank with one motor stopped", fin, checks::bank);
            judge.check(
                    "motor-out-climb",
                    "climb with one motor stopped",
                    Subject.of(ReviewPart.FULL_THROTTLE),
                    checks::climb);
            judge.check(
                    "motor-out-drag", "drag of the stopped side", Subject.of(ReviewPart.DEAD_PROPELLER), checks::drag);
            found.ifPresent(out -> judge.assume(
                    Subject.of(ReviewPart.MOTOR_LATERAL),
                    Judge.text(
                            "the outermost of %d motors stops at %.1f m/s, 1.3 stall speeds; its propeller is %s",
                            parts.motorCount(),
                            out.out().airspeedMPerS(),
                            parts.deadPropeller().name().toLowerCase(Locale.ROOT)),
                    "rigid, small angles, nobody reacts late; the dead propeller's model was never checked braking"));
        }
        return judge.judgement();
    }

    private boolean unknown(Trial trial) {
        if (found.isEmpty()) {
            trial.notJudged(missing().toArray(Subject[]::new));
        }
        return found.isEmpty();
    }

    /** A fin ahead of the centre of gravity is none, and asks for another. */
    private List<Subject> missing() {
        List<Subject> missing = new ArrayList<>();
        if (parts.motorLateralM().isEmpty()) {
            missing.add(Subject.of(ReviewPart.MOTOR_LATERAL));
        }
        if (!aircraft.balanced()) {
            missing.add(Subject.of(ReviewPart.ITEMS));
        }
        if (aircraft.fin().isEmpty() || missing.isEmpty()) {
            missing.add(Subject.of(ReviewPart.TAIL_FIN));
        }
        return missing;
    }

    private void control(Trial trial) {
        if (unknown(trial)) {
            return;
        }
        MotorOut out = found.get().out();
        trial.of(out.controlNm(), "N m")
                .atLeast(out.yawNm(), Basis.COMPUTED)
                .stopIf(!out.held(), "motor-out-no-control", "%s: %s.", needs(out), remedy(out));
    }

    private String needs(MotorOut out) {
        return out.rudderNeededRad().isPresent()
                ? Judge.text(
                        "With one motor stopped, full throttle on the one opposite needs %.0f° of rudder at %.1f m/s, and"
                                + " there is %.0f°",
                        Angle.degFromRad(out.rudderNeededRad().getAsDouble()),
                        out.airspeedMPerS(),
                        Angle.degFromRad(aircraft.fin().orElseThrow().rudderDeflectionRad()))
                : Judge.text(
                        "With one motor stopped, full throttle on the one opposite yaws with %.2f N m at %.1f m/s, and the"
                                + " fin without a rudder holds %.2f N m at 10° of sideslip",
                        out.yawNm(), out.airspeedMPerS(), out.controlNm());
    }

    private String remedy(MotorOut out) {
        List<String> found = new ArrayList<>();
        if (out.largestThrustN() > 0) {
            found.add(Judge.text("hold it to %.1f N", out.largestThrustN())
                    + this.found.get().throttleFraction().stream()
                            .mapToObj(share ->
                                    Judge.text(" (%.0f %% throttle)", Math.floor(Share.percentFromFraction(share))))
                            .findFirst()
                            .orElse(""));
        }
        out.minimumControlMPerS().ifPresent(speed -> found.add(Judge.text("fly above %.1f m/s", speed)));
        found.add("fit more fin");
        return String.join(", or ", found);
    }

    private void bank(Trial trial) {
        if (unknown(trial)) {
            return;
        }
        double bankDeg = Angle.degFromRad(found.get().out().bankNeededRad());
        trial.of(bankDeg, "°")
                .atMost(MOST_BANK_DEG, Basis.source("14 CFR 23.149"))
                .attention(
                        "motor-out-bank",
                        "With one motor stopped it takes %.1f° of bank towards the one opposite to fly straight, more than"
                                + " the %.0f° that 14 CFR 23.149 allows: use less throttle, or move the motors inwards.",
                        bankDeg,
                        MOST_BANK_DEG);
    }

    private void climb(Trial trial) {
        if (unknown(trial)) {
            return;
        }
        MotorOut out = found.get().out();
        trial.of(out.climbRateMPerS(), "m/s")
                .atLeast(0, Basis.COMPUTED)
                .attention(
                        "motor-out-no-climb",
                        "With one motor stopped it sinks %.1f m/s at %.1f m/s on the thrust that can be held: plan to land"
                                + " within reach.",
                        -out.climbRateMPerS(),
                        out.airspeedMPerS());
    }

    private void drag(Trial trial) {
        if (unknown(trial)) {
            return;
        }
        MotorOutOfAircraft it = found.get();
        double deadN = it.out().deadDragN();
        trial.of(deadN, "N")
                .atMost(MUCH_DRAG * it.task().dragN(), Basis.COMMON_PRACTICE)
                .note(
                        "motor-out-asymmetric-drag",
                        "The stopped side drags %.2f N %s, %.0f %% of the aircraft's drag: a propeller that folds would save"
                                + " %.2f N.",
                        deadN,
                        parts.deadPropeller().name().toLowerCase(Locale.ROOT),
                        Share.percentFromFraction(deadN / it.task().dragN()),
                        deadN - it.foldedDragN());
    }
}
