package trestle.structure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of an airframe; speeds are equivalent airspeeds, m/s.
 *
 * @param massKg take-off mass, kg
 * @param wing half wing
 * @param lift how lift is spread
 * @param maxLift greatest lift coefficient
 * @param minLift least, below 0
 * @param liftSlopePerRad per rad
 * @param densityKgPerM3 of the air, kg/m³
 * @param cruiseMPerS planned airspeed
 * @param topMPerS level top speed
 * @param neverExceedMPerS stated
 * @param diveMPerS stated
 * @param statedLimit positive limit, multiples of g
 * @param negativeLimit below 0, multiples of g
 * @param proofLoadFactor what the wing was tested to
 * @param factorOfSafety limit load to breaking
 * @param gustMPerS derived gust at cruise, m/s
 * @param windMPerS for the operating gust, m/s
 * @param items in each half wing
 * @param spars root outwards or side by side
 * @param joints with joiners
 * @param foamModulusPa under caps
 * @param foamShearPa under caps
 * @param moments for torsion
 * @param launch what pulls
 * @param restraints of packs and payload
 * @param landing how it comes down
 * @param surfaces with servos
 */
public record LoadsTask(
        double massKg,
        HalfWing wing,
        LiftDistribution lift,
        double maxLift,
        double minLift,
        double liftSlopePerRad,
        double densityKgPerM3,
        double cruiseMPerS,
        OptionalDouble topMPerS,
        OptionalDouble neverExceedMPerS,
        OptionalDouble diveMPerS,
        OptionalDouble statedLimit,
        double negativeLimit,
        OptionalDouble proofLoadFactor,
        double factorOfSafety,
        double gustMPerS,
        OptionalDouble windMPerS,
        List<WingItem> items,
        List<Spar> spars,
        List<Joint> joints,
        OptionalDouble foamModulusPa,
        OptionalDouble foamShearPa,
        TorsionMoments moments,
        Optional<LaunchPull> launch,
        List<Restraint> restraints,
        Optional<Landing> landing,
        List<ControlSurface> surfaces) {
    /** The limit of CS-VLA 337, which binds no aircraft of this kind. */
    public static final double CONVENTION = 3.8;

    /** Copies the lists. */
    public LoadsTask {
        items = List.copyOf(items);
        spars = List.copyOf(spars);
        joints = List.copyOf(joints);
        restraints = List.copyOf(restraints);
        surfaces = List.copyOf(surfaces);
    }

    double weightN() {
        return massKg * Flight.GRAVITY_M_PER_S2;
    }

    /**
     * Load factor at which reserves are taken.
     *
     * @return multiples of g
     */
    public double designLoadFactor() {
        return statedLimit.orElse(proofLoadFactor.orElse(CONVENTION));
    }

    /** Mass of both half wings with what is in them, kg. */
    double wingMassKg() {
        return wing.massKg() + 2 * items.stream().mapToDouble(WingItem::massKg).sum();
    }

    /** The fastest airspeed that torsion is taken at. */
    double fastestMPerS() {
        return neverExceedMPerS.orElse(topMPerS.orElse(cruiseMPerS));
    }
}
