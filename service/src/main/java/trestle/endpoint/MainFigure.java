package trestle.endpoint;

import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trestle.api.model.ApiBand;
import trestle.api.model.ApiBands;

/** The numbers that a builder asks for first, and that carry a band; most wanted first. */
public enum MainFigure {
    /** How long. */
    ENDURANCE(false, ApiBands.ENDURANCE_H.name(), ApiBands.Builder::enduranceH),
    /** How far over the ground. */
    GROUND_RANGE(false, ApiBands.GROUND_RANGE_KM.name(), ApiBands.Builder::groundRangeKm),
    /** Power from the pack in cruise. */
    CRUISE_POWER(false, ApiBands.CRUISE_POWER_W.name(), ApiBands.Builder::cruisePowerW),
    /** Stall speed. */
    STALL_SPEED(false, ApiBands.STALL_SPEED_M_PER_S.name(), ApiBands.Builder::stallSpeedMPerS),
    /** Static margin. */
    STATIC_MARGIN(true, ApiBands.STATIC_MARGIN_PERCENT.name(), ApiBands.Builder::staticMarginPercent),
    /** Centre of gravity. */
    CG_ARM(true, ApiBands.CG_ARM_MM.name(), ApiBands.Builder::cgArmMm),
    /** Mass of the whole. */
    TOTAL_MASS(false, ApiBands.TOTAL_MASS_G.name(), ApiBands.Builder::totalMassG),
    /** Energy down to the cutoff. */
    USABLE_ENERGY(false, ApiBands.USABLE_ENERGY_WH.name(), ApiBands.Builder::usableEnergyWh),
    /** Thrust at full throttle at rest. */
    STATIC_THRUST(false, ApiBands.STATIC_THRUST_N.name(), ApiBands.Builder::staticThrustN),
    /** Rate of climb. */
    CLIMB_RATE(true, ApiBands.CLIMB_RATE_M_PER_S.name(), ApiBands.Builder::climbRateMPerS),
    /** How far the airspeed at release is above what flies. */
    LAUNCH_MARGIN(true, ApiBands.LAUNCH_MARGIN_PERCENT.name(), ApiBands.Builder::launchMarginPercent);

    private static final Map<String, MainFigure> BY_FIELD =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(f -> f.field, f -> f));

    private final boolean signed;
    private final String field;
    private final BiFunction<ApiBands.Builder, ApiBand, ApiBands.Builder> writing;

    MainFigure(boolean signed, String field, BiFunction<ApiBands.Builder, ApiBand, ApiBands.Builder> writing) {
        this.signed = signed;
        this.field = field;
        this.writing = writing;
    }

    /** Its name in the contract. */
    public String field() {
        return field;
    }

    /** The names of those that may be zero or negative. */
    static Set<String> signed() {
        return Stream.of(values()).filter(f -> f.signed).map(f -> f.field).collect(Collectors.toSet());
    }

    static void write(String field, ApiBand band, ApiBands.Builder bands) {
        BY_FIELD.get(field).writing.apply(bands, band);
    }
}
