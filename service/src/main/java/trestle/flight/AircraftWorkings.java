package trestle.flight;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.atmosphere.AirState;
import trestle.finding.Chain;

/**
 * The first lines of every chain about an aircraft in flight: air, weight, stall.
 *
 * @param chain where to write
 * @param airframe the aircraft
 * @param air the air
 */
public record AircraftWorkings(Chain chain, Airframe airframe, AirState air) {
    /** Lift, drag, stall and power of level flight. */
    public static final String ANDERSON = "J. D. Anderson, Introduction to Flight, chapters 5 and 6 (from memory)";

    private static final String AIR = "the request, or the U.S. Standard Atmosphere, 1976, at its altitude";

    /** Writes {@code T}, {@code p}, {@code rho}, {@code m}, {@code S} and {@code C_Lmax}. */
    public void surroundings() {
        chain.given("T", "air temperature", air.temperatureK(), "K", AIR);
        chain.given("p", "air pressure", air.pressurePa(), "Pa", AIR);
        String gas = "U.S. Standard Atmosphere, 1976, equation 42";
        chain.step("rho", "air density", air.densityKgPerM3(), "kg/m³", "p*28.9644/(8314.32*T)", gas);
        chain.given("m", "take-off mass", airframe.massKg(), "kg");
        chain.given("S", "wing area", airframe.wingAreaM2(), "m²");
        chain.given("C_Lmax", "maximum lift coefficient", airframe.maxLiftCoefficient(), "1");
    }

    /** Writes {@code W} and {@code V_s}, after the air. */
    public void stall() {
        chain.step("W", "weight", airframe.massKg() * GRAVITY_M_PER_S2, "N", "m*9.80665", "standard gravity");
        double stallMPerS = airframe.stallSpeedMPerS(air.densityKgPerM3());
        chain.step("V_s", "stall speed", stallMPerS, "m/s", "sqrt(2*W/(rho*S*C_Lmax))", ANDERSON);
    }
}
