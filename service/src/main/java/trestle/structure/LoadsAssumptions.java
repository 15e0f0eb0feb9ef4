package trestle.structure;

import java.util.LinkedHashMap;
import java.util.Map;
import trestle.finding.Judge;
import trestle.finding.Subject;

/** What the loads rest on. */
final class LoadsAssumptions {
    private LoadsAssumptions() {}

    static void list(LoadsTask task, Judge judge) {
        Subject all = Subject.of(LoadsPart.ALL);
        Map<String, Material> used = new LinkedHashMap<>();
        task.spars().forEach(s -> used.putIfAbsent(s.material().name(), s.material()));
        task.joints()
                .forEach(j -> used.putIfAbsent(
                        j.joiner().material().name(), j.joiner().material()));
        used.values()
                .forEach(m -> judge.assume(
                        Subject.of(LoadsPart.SPARS),
                        Judge.text(
                                "%s: tension %.0f, compression %.0f, shear %.0f MPa, of which %.0f %% is counted on, %.0f %% in"
                                        + " shear",
                                m.name(),
                                m.tensionPa() / 1e6,
                                m.compressionPa() / 1e6,
                                m.shearPa() / 1e6,
                                100 * m.knockdown(),
                                100 * m.shearKnockdown()),
                        m.source()));
        judge.assume(all, "the whole lift stands on the wing", "a download of the tail adds 2 to 5 %");
        if (task.wing().massKg() == 0) {
            judge.assume(all, "the wing weighs nothing", "no panel gives its mass; in flight this is on the safe side");
        }
        if (task.statedLimit().isEmpty() && task.proofLoadFactor().isEmpty()) {
            judge.assume(
                    all,
                    "a design load of 3.8 g",
                    "no limit is stated; CS-VLA 337 for light aeroplanes, which binds no aircraft of this kind");
        }
        judge.assume(
                all,
                "the gust formula of CS-VLA 341",
                "it was fitted for heavier aircraft and knows neither autopilot nor wing flexibility");
        judge.assume(all, "torsion is shown and not judged", "how skin and spars share it is not described");
        if (!task.restraints().isEmpty()) {
            judge.assume(
                    all,
                    "9 g forward, 3 g up and 1.5 g sideways on what is held",
                    "14 CFR 23.561 for light aeroplanes, from memory; it binds no aircraft of this kind");
        }
        if (!task.surfaces().isEmpty()) {
            judge.assume(
                    all,
                    "hinge moments of thin-aerofoil theory, 20 % of friction",
                    "real plain surfaces show 0.6 to 0.9 of it; friction by common practice");
        }
    }
}
