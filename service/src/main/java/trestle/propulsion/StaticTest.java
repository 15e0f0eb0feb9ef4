package trestle.propulsion;

import trestle.atmosphere.AirState;
import trestle.numeric.Guard;

/**
 * One measured point at rest; the model's thrust and power are scaled to meet it, in full at rest and less the faster
 * the propeller flies, see {@link ScaledMap}.
 *
 * <p>On 19 propellers that no constant was fitted to this brings the mean error of thrust and power below a quarter
 * of the advance ratio at which thrust ends from 7 and 8 to 2 and 4 %, and of shaft power at a measured thrust from 7
 * to 4 %; from half of it on nothing changes. Fitting pitch and chord to the point instead makes flight worse.
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
