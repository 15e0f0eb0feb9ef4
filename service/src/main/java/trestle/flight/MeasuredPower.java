package trestle.flight;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.numeric.MonotoneCubic;

/**
 * Power from points measured in level flight, joined by a cubic that does not overshoot.
 *
 * <p>To another mass and density it is carried at equal lift coefficient, [4]: with {@code s =
 * sqrt((m / m0) (ρ0 / ρ))} the airspeed grows by {@code s} and the thrust part of the power by
 * {@code s m / m0}; exact for constant efficiency. Outside the points the power goes on along the
 * end slope and never below the end point; the range of the points is {@link #validAirspeeds}.
 */
public final class MeasuredPower implements PowerSource {
    private final MonotoneCubic curve;
    private final double massKg;
    private final double densityKgPerM3;
    private final double systemsPowerW;
    private final double climbEfficiencyFraction;

    /**
     * Power from measured points.
     *
     * @param points at least two, airspeeds rising, each above the systems power
     * @param massKg mass of the aircraft when they were measured, kg
     * @param densityKgPerM3 density when they were measured, kg/m³
     * @param systemsPowerW the part of every point that does not go into thrust, W
     * @param climbEfficiencyFraction from pack power to thrust power, for the climb alone
     */
    public MeasuredPower(
            List<MeasuredPoint> points,
            double massKg,
            double densityKgPerM3,
            double systemsPowerW,
            double climbEfficiencyFraction) {
        this.massKg = Guard.positive("massKg", massKg);
        this.densityKgPerM3 = Guard.positive("densityKgPerM3", densityKgPerM3);
        this.systemsPowerW = Guard.notNegative("systemsPowerW", systemsPowerW);
        Guard.positive("climbEfficiencyFraction", climbEfficiencyFraction);
        this.climbEfficiencyFraction = Guard.within("climbEfficiencyFraction", climbEfficiencyFraction, 0, 1);
        for (MeasuredPoint point : points) {
            if (!(point.powerW() > systemsPowerW)) {
                throw new ImpossibleValue(
                        "points",
                        "a measured power of "
                                + point.powerW()
                                + " W is not above the systems power of "
                                + systemsPowerW
                                + " W that it includes");
            }
        }
        this.curve = new MonotoneCubic(
                points.stream().mapToDouble(MeasuredPoint::airspeedMPerS).toArray(),
                points.stream().mapToDouble(MeasuredPoint::powerW).toArray());
    }

    @Override
    public double powerW(Airframe airframe, double densityKgPerM3, double airspeedMPerS, double climbRateMPerS) {
        double massRatio = airframe.massKg() / massKg;
        double speedRatio = speedRatio(airframe, densityKgPerM3);
        double measuredW = measuredW(airspeedMPerS / speedRatio);
        return systemsPowerW
                + (measuredW - systemsPowerW) * speedRatio * massRatio
                + airframe.massKg() * GRAVITY_M_PER_S2 * climbRateMPerS / climbEfficiencyFraction;
    }

    private double measuredW(double airspeedMPerS) {
        double heldW = curve.at(airspeedMPerS);
        double below = Math.min(0, airspeedMPerS - curve.first());
        double above = Math.max(0, airspeedMPerS - curve.last());
        double alongSlopeW = heldW + below * curve.slopeAtFirst() + above * curve.slopeAtLast();
        return Math.max(heldW, alongSlopeW);
    }

    private double speedRatio(Airframe airframe, double densityKgPerM3) {
        return Math.sqrt(airframe.massKg() / massKg * (this.densityKgPerM3 / densityKgPerM3));
    }

    @Override
    public double systemsPowerW() {
        return systemsPowerW;
    }

    @Override
    public AirspeedRange validAirspeeds(Airframe airframe, double densityKgPerM3) {
        double speedRatio = speedRatio(airframe, densityKgPerM3);
        return new AirspeedRange(curve.first() * speedRatio, curve.last() * speedRatio);
    }
}
