package trestle.battery;

/**
 * How a controller that counts cells takes a pack: the voltage at plug-in over what it holds for a
 * full cell, rounded up. Common practice, no source.
 */
public final class CellCount {
    /** Some controllers divide by this. */
    public static final double LOW_DIVISOR_V = 4.2;

    /** Others by this. */
    public static final double HIGH_DIVISOR_V = 4.4;

    /** Rounding of the controller's own meter, as a share of one cell. */
    private static final double METER_FRACTION = 0.005;

    private CellCount() {}

    /**
     * The count that a controller comes to.
     *
     * @param plugInVoltageV voltage of the resting pack, V, above 0
     * @param divisorV voltage that the controller holds for a full cell, V
     * @return cells in series, 1 or more
     */
    public static int of(double plugInVoltageV, double divisorV) {
        return Math.max(1, (int) Math.ceil(plugInVoltageV / divisorV - METER_FRACTION));
    }
}
