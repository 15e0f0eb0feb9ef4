package trestle.wiring;

/** How conductors are named. */
public enum GaugeSystem {
    /** American wire gauge: the number falls as the wire grows. */
    AWG,
    /** Nominal copper area, mm². */
    METRIC
}
