package trestle.joint;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.battery.Cutoff;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.battery.Surroundings;
import trestle.numeric.Root;

/**
 * A go-around on the last of a pack: what full power does to it, and what would let it be held.
 *
 * @param chargeFraction state of charge of the emptiest segment at its start, 0 to 1
 * @param powerW power of the pack at its start, W; 0 where it cannot be fed
 * @param voltageBeforeV voltage of the pack just before, under what it fed, V
 * @param voltageAfter10sV voltage after 10 s, V; empty where it ended before
 * @param lowestVoltageV lowest voltage until the time is over or the controller has cut, V
 * @param cutoffVoltageV voltage of the pack at the cutoff, V
 * @param timeToCutoffS when the voltage falls below the cutoff and stays there, s; empty beyond ten minutes
 * @param end what ends it
 * @param energyToCutoffJ energy until then, J; empty likewise
 * @param climbAirspeedMPerS safe climb speed, m/s
 * @param thrustN thrust at its start, N; 0 where the power cannot be fed
 * @param climbRateMPerS rate of climb at its start, m/s
 * @param heightM height gained until the time is over or the cutoff comes, m
 * @param holdS how long was asked, s
 * @param askedHeightM what height was asked, m
 * @param powerAllowedW the greatest constant power of the pack that lasts the time, W; 0 where none does
 * @param heightAtPowerAllowedM height gained at that power, m
 * @param leastChargeFraction least state of charge at which time and height are reached; empty where a full pack does not
 * @param cutoffThatLastsV cutoff for each cell at which time and height are reached, V; empty where it is already, or
 *     would have to be below the least of the cells
 * @param holdsAt25C whether the same charge would do with cells at 25 °C, where it does not as it is and they are colder
 */
public record GoAround(
        double chargeFraction,
        double powerW,
        double voltageBeforeV,
        OptionalDouble voltageAfter10sV,
        double lowestVoltageV,
        double cutoffVoltageV,
        OptionalDouble timeToCutoffS,
        GoAroundEnd end,
        OptionalDouble energyToCutoffJ,
        double climbAirspeedMPerS,
        double thrustN,
        double climbRateMPerS,
        double heightM,
        double holdS,
        double askedHeightM,
        double powerAllowedW,
        double heightAtPowerAllowedM,
        OptionalDouble leastChargeFraction,
        OptionalDouble cutoffThatLastsV,
        boolean holdsAt25C) {
    /** Against steps of 0.1 s the cutoff came 0.056 s late after 9.9 s; with 1 s, 0.111 s. */
    private static final double STEP_S = 0.25;

    /** No search goes finer than this. */
    private static final double LEAST_SEARCH_S = 1;

    /** Searches take longer steps: a tenth of the time asked. */
    private static final double SEARCH_STEPS = 10;

    private static final int POWER_BISECTIONS = 11;
    private static final int CHARGE_BISECTIONS = 8;
    private static final double CHARGE_ACCURACY = 1e-6;

    /** A controller's settings come in steps of this for each cell. */
    private static final double SETTING_V = 0.05;

    private static final double ROUNDING = 1e-9;

    /** The usual temperature of a cell's data sheet. */
    private static final double ROOM_K = 298.15;

    /**
     * Flies it.
     *
     * @param task what is asked
     * @return what comes of it
     */
    public static GoAround of(GoAroundTask task) {
        Before before = before(task);
        GoAroundRun run = begun(task, before.state());
        run.hold(task.holdS(), STEP_S);
        double heightM = run.cutoffS.isPresent() ? run.heightAtCutoffM : run.heightM();
        OptionalDouble lasting = lasting(task, run);
        double lowestV = run.lowestVoltageV();
        boolean well = reached(task, run);
        run.untilCutoff();
        double allowedW = allowedW(task, before.state(), run.startPowerW);
        double allowedThrustN = task.thrustAtPowerN().applyAsDouble(Math.max(0, allowedW - task.systemsW()));
        return new GoAround(
                charge(before.state()),
                run.startPowerW,
                before.voltageV(),
                run.after10sV,
                lowestV,
                task.store().cutoff().packVoltageV(task.store().pack()),
                run.cutoffS,
                run.end,
                run.cutoffS.isPresent() ? OptionalDouble.of(run.energyAtCutoffJ) : OptionalDouble.empty(),
                task.climbing().airspeedMPerS(),
                run.startThrustN,
                run.startRateMPerS,
                heightM,
                task.holdS(),
                task.heightM(),
                allowedW,
                task.climbing().rateMPerS(allowedThrustN) * task.holdS(),
                leastCharge(task),
                lasting,
                !well && holdsWarm(task, before));
    }

    /**
     * Only what stops a flight, quickly: for a sample of hundreds.
     *
     * @param task what is asked
     * @return what is to be known of each
     */
    public static Gist gist(GoAroundTask task) {
        GoAroundRun run = quickly(task, before(task).state());
        boolean atOnce = run.cutoffS.isPresent() && run.cutoffS.getAsDouble() <= 0;
        return new Gist(atOnce, run.lowestVoltageV());
    }

    /**
     * The gist of a go-around.
     *
     * @param atOnce whether the cutoff comes at once
     * @param lowestVoltageV lowest voltage within the time, V
     */
    public record Gist(boolean atOnce, double lowestVoltageV) {}

    /** Whether the cutoff comes at once. */
    public boolean atOnce() {
        return timeToCutoffS.isPresent() && timeToCutoffS.getAsDouble() <= 0;
    }

    /** Whether time and height are both reached. */
    public boolean reached() {
        return lasts() && heightM >= askedHeightM;
    }

    /** Whether full power can be held for the time. */
    public boolean lasts() {
        return timeToCutoffS.isEmpty() || timeToCutoffS.getAsDouble() >= holdS;
    }

    /** A pack at the moment before. */
    private record Before(PackState state, double voltageV) {
        static Before of(Discharge run) {
            return new Before(run.end(), run.endVoltageV());
        }
    }

    private static Before before(GoAroundTask task) {
        PackState full = PackState.of(task.store().pack(), task.store().surroundings());
        if (task.chargeFraction().isPresent()) {
            return at(task.chargeFraction().getAsDouble(), task, full);
        }
        boolean flown = task.plan().stream().anyMatch(step -> step.powerW() > 0);
        return flown
                ? Before.of(Discharge.of(
                        full, new Load.Profile(task.plan()), task.store().cutoff()))
                : new Before(full, full.terminalVoltageV(0));
    }

    /** Charge used up at cruise power until so much is left. */
    private static Before at(double chargeFraction, GoAroundTask task, PackState full) {
        if (chargeFraction >= charge(full)) {
            return new Before(full, full.terminalVoltageV(0));
        }
        double wholeS =
                Discharge.of(full, new Load.Power(task.cruiseW()), deepest()).durationS();
        OptionalDouble durationS = Root.between(
                t -> charge(after(t, task, full).state()) - chargeFraction, 0, wholeS, wholeS * CHARGE_ACCURACY);
        return after(durationS.orElse(wholeS), task, full);
    }

    private static Before after(double durationS, GoAroundTask task, PackState full) {
        if (!(durationS > 0)) {
            return new Before(full, full.terminalVoltageV(0));
        }
        return Before.of(
                Discharge.of(full, new Load.Profile(List.of(new PowerStep(task.cruiseW(), durationS))), deepest()));
    }

    /** As far as cells go without harm, whatever the controller is set to. */
    private static Cutoff deepest() {
        return new Cutoff.CellMinimum();
    }

    private static GoAroundRun begun(GoAroundTask task, PackState state) {
        return new GoAroundRun(
                state, task.power(), task.systemsW(), task.store().cutoff(), task.climbing());
    }

    private static double charge(PackState state) {
        return IntStream.range(0, state.pack().segments().size())
                .mapToDouble(state::stateOfChargeFraction)
                .min()
                .orElse(0);
    }

    private static double allowedW(GoAroundTask task, PackState state, double startW) {
        double high = startW > 0 ? 2 * startW : 2 * task.cruiseW();
        double low = 0;
        for (int i = 0; i < POWER_BISECTIONS; i++) {
            double middle = (low + high) / 2;
            Discharge run = Discharge.of(
                    state,
                    new Load.Profile(List.of(new PowerStep(middle, task.holdS()))),
                    task.store().cutoff());
            boolean held =
                    run.ending() == DischargeEnd.PROFILE_END && run.firstDipS().isEmpty();
            low = held ? middle : low;
            high = held ? high : middle;
        }
        return low;
    }

    private static boolean enough(GoAroundTask task, PackState state) {
        return reached(task, quickly(task, state));
    }

    private static boolean reached(GoAroundTask task, GoAroundRun run) {
        return run.holds() && run.heightM() >= task.heightM();
    }

    private static GoAroundRun quickly(GoAroundTask task, PackState state) {
        return begun(task, state).hold(task.holdS(), Math.max(LEAST_SEARCH_S, task.holdS() / SEARCH_STEPS));
    }

    private static OptionalDouble leastCharge(GoAroundTask task) {
        PackState full = PackState.of(task.store().pack(), task.store().surroundings());
        if (!enough(task, full)) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = Discharge.of(
                        full, new Load.Power(task.cruiseW()), task.store().cutoff())
                .durationS();
        for (int i = 0; i < CHARGE_BISECTIONS; i++) {
            double middle = (low + high) / 2;
            boolean well = enough(task, after(middle, task, full).state());
            low = well ? middle : low;
            high = well ? high : middle;
        }
        return OptionalDouble.of(charge(after(low, task, full).state()));
    }

    /** The cutoff to set where the pack goes on under it, and cells are not harmed. */
    private static OptionalDouble lasting(GoAroundTask task, GoAroundRun held) {
        Pack pack = task.store().pack();
        double settingV = SETTING_V * Math.floor(held.lowestHeldV / pack.seriesCount() / SETTING_V + ROUNDING);
        double leastV = pack.segments().stream()
                .mapToDouble(it -> it.cell().minimumVoltageV())
                .max()
                .orElse(0);
        boolean goesOn = held.end == GoAroundEnd.HELD && held.cutoffS.isPresent() && held.heightM() >= task.heightM();
        return goesOn && settingV >= leastV - ROUNDING ? OptionalDouble.of(settingV) : OptionalDouble.empty();
    }

    private static boolean holdsWarm(GoAroundTask task, Before before) {
        Surroundings day = task.store().surroundings();
        if (before.state().temperatureK(0) >= ROOM_K) {
            return false;
        }
        GoAroundTask warm = task.on(
                new PackStore(task.store().pack(), task.store().cutoff(), Surroundings.of(ROOM_K, day.covering())));
        PackState full = PackState.of(warm.store().pack(), warm.store().surroundings());
        return enough(warm, at(charge(before.state()), warm, full).state());
    }
}
