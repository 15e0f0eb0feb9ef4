package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trestle.units.Length;

/** A propeller of less diameter or pitch that a drive could turn at full throttle. */
final class SmallerPropeller {
    /** Whole inches less that are tried. */
    private static final int MOST_STEPS = 8;

    private static final double LEAST_IN = 3;

    private SmallerPropeller() {}

    /**
     * The largest propeller, an inch or more less in diameter, else in pitch, with which full throttle keeps every
     * rating and climbs, by the same model.
     *
     * @param task the drive and its aircraft
     * @return the propeller; empty where there is none, or where measurements belong to the one given
     */
    static Optional<Propeller> of(PropulsionTask task) {
        Propeller given = task.system().propeller();
        if (!(given.data() instanceof GeometryOnly)) {
            return Optional.empty();
        }
        double diameterIn = Length.inFromM(given.diameterM());
        double pitchIn = Length.inFromM(given.pitchM());
        return Stream.concat(
                        IntStream.rangeClosed(1, MOST_STEPS).mapToObj(less -> new Size(diameterIn - less, pitchIn)),
                        IntStream.rangeClosed(1, MOST_STEPS).mapToObj(less -> new Size(diameterIn, pitchIn - less)))
                .filter(size -> size.diameterIn >= LEAST_IN && size.pitchIn >= LEAST_IN)
                .map(size -> Propeller.ofSize(
                        Length.mFromIn(size.diameterIn),
                        Length.mFromIn(size.pitchIn),
                        given.bladeCount(),
                        given.bladeType()))
                .filter(propeller -> flies(task, propeller))
                .findFirst();
    }

    private record Size(double diameterIn, double pitchIn) {}

    private static boolean flies(PropulsionTask task, Propeller propeller) {
        PropulsionSystem given = task.system();
        PropulsionTask other = new PropulsionTask(
                new PropulsionSystem(given.motor(), given.controller(), propeller, given.motorCount(), given.supply()),
                task.air(),
                task.cruise(),
                task.takeoffMassKg(),
                List.of(),
                task.limits());
        PowerTrain train = PowerTrain.of(other.system(), other.air());
        List<ThrottleLimit> limits = ThrottleLimits.each(other, train, DrivePerformance.of(other, train));
        return ThrottleLimits.least(limits)
                .filter(limit -> !limit.limits())
                .map(limit -> limit.climbRateMPerS().orElse(0) > 0)
                .orElse(false);
    }
}
