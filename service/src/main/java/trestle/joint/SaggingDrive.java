package trestle.joint;

import java.util.Optional;
import trestle.numeric.MonotoneCubic;
import trestle.propulsion.OperatingPoint;
import trestle.propulsion.PowerTrain;

/**
 * A drive at full throttle and one airspeed on a voltage that sags: current and thrust fall with it. A few voltages are
 * worked out, and a curve joins them.
 */
public final class SaggingDrive implements FullPower {
    /** A curve through so many is within 0.1 %, see the test. */
    private static final int ROWS = 9;

    /** From here up, over the voltage at rest: below it a pack has collapsed. */
    private static final double LOWEST_RATIO = 0.4;

    private final double lowestV;
    private final double highestV;
    private final MonotoneCubic currentA;
    private final MonotoneCubic thrustN;

    /**
     * A drive at an airspeed.
     *
     * @param train the drive
     * @param restVoltageV voltage of its supply at rest, V, above 0
     * @param airspeedMPerS airspeed, m/s, 0 or more
     */
    public SaggingDrive(PowerTrain train, double restVoltageV, double airspeedMPerS) {
        lowestV = LOWEST_RATIO * restVoltageV;
        highestV = restVoltageV;
        double[] voltages = new double[ROWS];
        double[] currents = new double[ROWS];
        double[] thrusts = new double[ROWS];
        for (int i = 0; i < ROWS; i++) {
            voltages[i] = lowestV + (highestV - lowestV) * i / (ROWS - 1);
            Optional<OperatingPoint> point = train.fedAt(voltages[i], airspeedMPerS);
            currents[i] = point.map(OperatingPoint::supplyCurrentA).orElse(0.0);
            thrusts[i] = point.map(OperatingPoint::thrustN).orElse(0.0);
        }
        currentA = new MonotoneCubic(voltages, currents);
        thrustN = new MonotoneCubic(voltages, thrusts);
    }

    @Override
    public double currentA(double voltageV) {
        return Math.max(0, currentA.at(within(voltageV)));
    }

    @Override
    public double thrustN(double voltageV) {
        return thrustN.at(within(voltageV));
    }

    private double within(double voltageV) {
        return Math.max(lowestV, Math.min(highestV, voltageV));
    }
}
