package trestle.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trestle.atmosphere.StandardAtmosphere;
import trestle.battery.Discharge;
import trestle.battery.Load;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.propulsion.BladeType;
import trestle.propulsion.Controller;
import trestle.propulsion.GeometryOnly;
import trestle.propulsion.Motor;
import trestle.propulsion.PowerTrain;
import trestle.propulsion.Propeller;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.Supply;

/** What a go-around is said to need is enough for it, and what ends it is what ends a discharge. */
class GoAroundPropertyTest {
    private static final double COLD_K = 283.15;

    private static final Motor MOTOR = new Motor(
            39.8,
            0.036,
            1.1,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    private static final Controller CONTROLLER = new Controller(60, 34, 0.0025);
    private static final Propeller PROPELLER =
            new Propeller(0.33, 0.2032, 2, BladeType.EFFICIENT, new GeometryOnly(), OptionalDouble.empty());

    @Property(tries = 20)
    void whatItSaysToDoIsEnough(@ForAll @DoubleRange(min = 0.08, max = 0.35) double charge) {
        GoAroundTask task = GoAroundTasks.usual(charge, COLD_K, GoAroundTasks.CUTOFF_V);
        GoAround run = GoAround.of(task);
        double leastCharge = run.leastChargeFraction().orElseThrow();
        assertThat(GoAround.of(GoAroundTasks.usual(leastCharge + 0.002, COLD_K, GoAroundTasks.CUTOFF_V))
                        .reached())
                .isTrue();
        assertThat(GoAround.of(GoAroundTasks.usual(leastCharge - 0.01, COLD_K, GoAroundTasks.CUTOFF_V))
                        .reached())
                .isFalse();
        run.cutoffThatLastsV()
                .ifPresent(setting -> assertThat(GoAround.of(GoAroundTasks.usual(charge, COLD_K, 6 * setting))
                                .reached())
                        .isTrue());
        assertThat(run.cutoffThatLastsV().isPresent() && run.reached()).isFalse();
    }

    @Property(tries = 20)
    void theGistIsThatOfTheWhole(@ForAll @DoubleRange(min = 0.05, max = 0.9) double charge) {
        GoAroundTask task = GoAroundTasks.usual(charge, COLD_K, GoAroundTasks.CUTOFF_V);
        GoAround whole = GoAround.of(task);
        GoAround.Gist gist = GoAround.gist(task);
        assertThat(gist.atOnce()).isEqualTo(whole.atOnce());
        assertThat(gist.lowestVoltageV()).isCloseTo(whole.lowestVoltageV(), within(0.15));
    }

    @Example
    void aPowerThatIsHeldEndsWhereADischargeInShortStepsEnds() {
        GoAroundTask task = GoAroundTasks.usual(0.25, COLD_K, GoAroundTasks.CUTOFF_V);
        PackState full = PackState.of(task.store().pack(), task.store().surroundings());
        double seconds = GoAround.of(task).timeToCutoffS().orElseThrow();
        PackState left = Discharge.of(
                        full,
                        new Load.Profile(List.of(new PowerStep(150, durationS(task, full)))),
                        task.store().cutoff())
                .end();
        Discharge finely = Discharge.of(
                left,
                new Load.Profile(Collections.nCopies(400, new PowerStep(700, 0.1))),
                task.store().cutoff());
        assertThat(seconds).isCloseTo(finely.firstDipS().orElseThrow(), within(0.1));
    }

    private static double durationS(GoAroundTask task, PackState full) {
        double low = 0;
        double high = 20_000;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            Discharge run = Discharge.of(
                    full,
                    new Load.Profile(List.of(new PowerStep(150, middle))),
                    task.store().cutoff());
            boolean above =
                    run.end().stateOfChargeFraction(0) > task.chargeFraction().orElseThrow();
            low = above ? middle : low;
            high = above ? high : middle;
        }
        return low;
    }

    @Property(tries = 30)
    void aSaggingDriveIsTheDriveOnThatVoltage(@ForAll @DoubleRange(min = 12, max = 24) double voltageV) {
        PowerTrain onFull = train(24.5);
        SaggingDrive sagging = new SaggingDrive(onFull, 24.5, 13);
        var itself = train(voltageV).atFullThrottle(13).orElseThrow();
        assertThat(sagging.currentA(voltageV)).isCloseTo(itself.supplyCurrentA(), within(0.06));
        assertThat(sagging.thrustN(voltageV)).isCloseTo(itself.thrustN(), within(0.06));
    }

    @Example
    void aPackThatCannotGiveThePowerEndsAtOnce() {
        GoAroundTask usual = GoAroundTasks.usual(0.5, COLD_K, GoAroundTasks.CUTOFF_V);
        GoAround run = GoAround.of(new GoAroundTask(
                usual.store(),
                List.of(),
                150,
                OptionalDouble.of(0.5),
                FullPower.constant(50_000, 20),
                0,
                powerW -> 20 * powerW / 700,
                usual.climbing(),
                30,
                30));
        assertThat(run.end()).isEqualTo(GoAroundEnd.POWER_LIMIT);
        assertThat(run.atOnce()).isTrue();
        assertThat(run.heightM()).isZero();
        assertThat(run.powerW()).isZero();
    }

    private static PowerTrain train(double voltageV) {
        return PowerTrain.of(
                new PropulsionSystem(MOTOR, CONTROLLER, PROPELLER, 1, Supply.steady(voltageV)),
                StandardAtmosphere.at(0));
    }
}
