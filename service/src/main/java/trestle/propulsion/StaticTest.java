package trestle.propulsion;

import trestle.atmosphere.AirState;
import trestle.numeric.Guard;

/**
 * One measured point at rest; the model's thrust and power are scaled to meet it.
 *
 * <p>Two multipliers, for all advance ratios. On propellers that the fit never saw this brings the
 * mean error in flight from 15 to 11 % of thrust and from 13 to 9 % of power. Fitting pitch and
 * chord to the point instead makes flight worse.
 *
 * @param rotationRadPerS rotation, rad/s, above 0
 * @param thrustN thrust, N, above 0
 * @param shaftPowerW power at the shaft, not at the battery, W, above 0
 * @param air the air of the test, which need not be that of the flight
 */
public record StaticTest(double rotationRadPerS, double thrustN, double shaftPowerW, AirState air)
        implements PropellerData {
    /** Checks the physics. */
    public StaticTest {
        Guard.positive("rotationRadPerS", rotationRadPerS);
        Guard.positive("thrustN", thrustN);
        Guard.positive("shaftPowerW", shaftPowerW);
        Guard.present("air", air);
    }

    /**
     * The point without dimensions.
     *
     * @param diameterM diameter of the propeller, m
     * @return CT and CP at rest
     */
    public PropellerCoefficients coefficients(double diameterM) {
        double revPerS = rotationRadPerS / (2 * Math.PI);
        double pressure = air.densityKgPerM3() * revPerS * revPerS * Math.pow(diameterM, 4);
        return new PropellerCoefficients(thrustN / pressure, shaftPowerW / (pressure * revPerS * diameterM));
    }
}
