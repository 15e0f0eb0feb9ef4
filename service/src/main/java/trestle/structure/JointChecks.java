package trestle.structure;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of joiners and their sockets. */
final class JointChecks {
    private static final Basis THEORY = Basis.source("a rigid pin in a linear socket, with the strengths as assumed");

    private final LoadsTask task;
    private final Joint joint;
    private final JointLoad load;

    private JointChecks(LoadsTask task, Joint joint, JointLoad load) {
        this.task = task;
        this.joint = joint;
        this.load = load;
    }

    static void judge(LoadsTask task, LoadsResult result, Judge judge) {
        for (int i = 0; i < task.joints().size(); i++) {
            Joint joint = task.joints().get(i);
            JointChecks checks = new JointChecks(task, joint, result.joints().get(i));
            Subject at = Subject.of(LoadsPart.JOINT, i);
            Subject socket = Subject.of(LoadsPart.SOCKET, i);
            String of = " of " + joint.name();
            judge.essential("joiner-strength", "joiner" + of + " at the design load", at, checks::joiner);
            judge.check("joiner-shear", "shear inside the joiner" + of, at, checks::splits);
            judge.essential(
                    "socket-bearing", "socket" + of + " at the design load", socket, t -> checks.socket(t, socket));
        }
    }

    private void joiner(Trial trial) {
        Stress stress = load.stress();
        trial.of(stress.reserve(), "")
                .atLeast(1, THEORY)
                .stop(
                        "joiner-too-weak",
                        "The joiner of %s bears %.0f MPa at %.1f g and may bear %.0f (%s): use a thicker one.",
                        joint.name(),
                        LoadsChecks.mpa(stress.stressPa()),
                        task.designLoadFactor(),
                        LoadsChecks.mpa(stress.allowedPa()),
                        LoadsChecks.word(stress.mode()));
    }

    private void splits(Trial trial) {
        trial.of(load.reverseReserve(), "")
                .atLeast(1, THEORY)
                .attention(
                        "joiner-splits",
                        "The joiner of %s takes %.0f N of shear inside its socket, near the middle of its engagement,"
                                + " %.1f times what it may: bind the tube, plug its end, or engage it further.",
                        joint.name(),
                        load.reverseShearN(),
                        1 / load.reverseReserve());
    }

    private void socket(Trial trial, Subject at) {
        if (load.bearingReserve().isEmpty()) {
            trial.notJudged(at);
            return;
        }
        double allowed = load.bearingPa() * load.bearingReserve().getAsDouble();
        double engagement = Pin.engagementM(
                load.shearN(),
                load.bendingNm(),
                allowed * joint.bearingWidthM() * joint.joiner().count());
        trial.of(load.bearingReserve().getAsDouble(), "")
                .atLeast(1, THEORY)
                .stop(
                        "socket-crushes",
                        "The joiner of %s presses %.2f MPa on a socket that may bear %.2f MPa: sleeve it, or engage %.0f mm"
                                + " instead of %.0f mm.",
                        joint.name(),
                        LoadsChecks.mpa(load.bearingPa()),
                        LoadsChecks.mpa(allowed),
                        Math.ceil(1000 * engagement),
                        1000 * joint.engagementM());
    }
}
