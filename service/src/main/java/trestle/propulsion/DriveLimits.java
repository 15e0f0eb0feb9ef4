package trestle.propulsion;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import trestle.finding.Basis;
import trestle.numeric.Guard;

/**
 * What else holds a drive back beside the ratings of its own parts.
 *
 * @param maxLiftCoefficient maximum lift coefficient of the aircraft; empty where unknown
 * @param liftBasis where that is from
 * @param wireCurrentA current that the wires of the pack may carry, A; empty where none is stated
 * @param connectorCurrentA current that the connector of the pack is rated for, A; empty where none is stated
 * @param neverExceedMPerS airspeed that must never be exceeded, m/s; empty where none is stated
 * @param fullThrottleDurationS how long full throttle is held in one go, s; empty where unknown
 * @param keep the ratings that the throttle limit has to keep
 */
public record DriveLimits(
        OptionalDouble maxLiftCoefficient,
        Basis liftBasis,
        OptionalDouble wireCurrentA,
        OptionalDouble connectorCurrentA,
        OptionalDouble neverExceedMPerS,
        OptionalDouble fullThrottleDurationS,
        Set<KeptRating> keep) {
    /** Checks the physics and copies the set. */
    public DriveLimits {
        maxLiftCoefficient.ifPresent(it -> Guard.positive("maxLiftCoefficient", it));
        Guard.present("liftBasis", liftBasis);
        wireCurrentA.ifPresent(it -> Guard.positive("wireCurrentA", it));
        connectorCurrentA.ifPresent(it -> Guard.positive("connectorCurrentA", it));
        neverExceedMPerS.ifPresent(it -> Guard.positive("neverExceedMPerS", it));
        fullThrottleDurationS.ifPresent(it -> Guard.positive("fullThrottleDurationS", it));
        keep = Set.copyOf(keep);
    }

    /**
     * No limit but the ratings of the drive's parts.
     *
     * @return the limits
     */
    public static DriveLimits none() {
        return new DriveLimits(
                OptionalDouble.empty(),
                Basis.REQUEST,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                EnumSet.allOf(KeptRating.class));
    }

    /**
     * These limits with those of the flight: what an aircraft that is described as a whole knows of them.
     *
     * @param neverExceed airspeed that must never be exceeded, m/s; empty where none is stated
     * @param heldS how long full throttle is held in one go, s, above 0
     * @return the limits
     */
    public DriveLimits flown(OptionalDouble neverExceed, double heldS) {
        return new DriveLimits(
                maxLiftCoefficient,
                liftBasis,
                wireCurrentA,
                connectorCurrentA,
                neverExceed,
                OptionalDouble.of(heldS),
                keep);
    }

    /**
     * Only the lift of an aircraft that another calculation describes.
     *
     * @param maxLiftCoefficient its maximum lift coefficient, above 0
     * @return the limits
     */
    public static DriveLimits ofLift(double maxLiftCoefficient) {
        DriveLimits none = none();
        return new DriveLimits(
                OptionalDouble.of(maxLiftCoefficient),
                none.liftBasis,
                none.wireCurrentA,
                none.connectorCurrentA,
                none.neverExceedMPerS,
                none.fullThrottleDurationS,
                none.keep);
    }
}
