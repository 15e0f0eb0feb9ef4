package trestle.structure;

import java.util.OptionalDouble;
import trestle.numeric.Root;

/** Gusts on one aircraft. */
public final class GustCase {
    /** Dynamic overshoot past the stall; from memory. */
    private static final double OVERSHOOT = 1.25;

    /** Never exceed over dive speed: 14 CFR 23.1505, from memory. */
    private static final double NEVER_EXCEED_OF_DIVE = 0.9;

    private final LoadsTask task;
    private final double stallMPerS;
    private final double massRatio;

    GustCase(LoadsTask task, double stallMPerS) {
        this.task = task;
        this.stallMPerS = stallMPerS;
        this.massRatio = Gust.massRatio(
                task.massKg() / task.wing().areaM2(),
                task.densityKgPerM3(),
                task.wing().meanChordM(),
                task.liftSlopePerRad());
    }

    /**
     * Mass ratio μ.
     *
     * @return μ
     */
    public double massRatio() {
        return massRatio;
    }

    /**
     * Alleviation factor Kg.
     *
     * @return Kg
     */
    public double alleviation() {
        return Gust.alleviation(massRatio);
    }

    /** Gust at a speed: full up to cruise, straight down to half at dive speed where one is known, m/s. */
    double gustMPerS(double airspeedMPerS) {
        OptionalDouble dive =
                task.diveMPerS().isPresent() || task.neverExceedMPerS().isEmpty()
                        ? task.diveMPerS()
                        : OptionalDouble.of(task.neverExceedMPerS().getAsDouble() / NEVER_EXCEED_OF_DIVE);
        double cruise = task.cruiseMPerS();
        if (dive.isEmpty() || airspeedMPerS <= cruise || dive.getAsDouble() <= cruise) {
            return task.gustMPerS();
        }
        double share = Math.min(1, (airspeedMPerS - cruise) / (dive.getAsDouble() - cruise));
        return task.gustMPerS() * (1 - share / 2);
    }

    /** What a gust adds at a speed, stall not counted. */
    double increment(double airspeedMPerS) {
        return Gust.increment(
                alleviation(),
                gustMPerS(airspeedMPerS),
                airspeedMPerS,
                task.liftSlopePerRad(),
                task.weightN() / task.wing().areaM2());
    }

    /**
     * Load factor of a gust up; no more than {@code 1.25 (V/V_S)²}.
     *
     * @param airspeedMPerS V, m/s
     * @return multiples of g
     */
    public double up(double airspeedMPerS) {
        return Math.min(1 + increment(airspeedMPerS), cap(airspeedMPerS));
    }

    /** Load factor of a gust down. */
    double down(double airspeedMPerS) {
        return Math.max(1 - increment(airspeedMPerS), cap(airspeedMPerS) * task.minLift() / task.maxLift());
    }

    /** Fastest airspeed under one at which a gust loads no more than a limit, m/s. */
    double speedAtMPerS(double limit, double underMPerS) {
        return Root.between(v -> up(v) - limit, 0, underMPerS, 1e-4).orElse(underMPerS);
    }

    private double cap(double airspeedMPerS) {
        double ratio = airspeedMPerS / stallMPerS;
        return OVERSHOOT * ratio * ratio;
    }
}
