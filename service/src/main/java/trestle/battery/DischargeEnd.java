package trestle.battery;

/** Why a discharge ended. */
public enum DischargeEnd {
    /** The cutoff was reached, at the pack or at the weakest cell. */
    CUTOFF,
    /** A cell fell to its over-discharge voltage before the cutoff was reached. */
    OVER_DISCHARGE,
    /** The pack cannot give this power at any voltage. */
    POWER_LIMIT,
    /** The profile was flown to its end. */
    PROFILE_END
}
