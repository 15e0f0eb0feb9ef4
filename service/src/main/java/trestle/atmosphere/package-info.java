/**
 * The air: standard atmosphere, density, viscosity, speed of sound, density altitude.
 *
 * <p>Altitude is geopotential. Two layers: constant lapse rate to 11 km, isothermal to 20 km. Air
 * is a dry ideal gas; viscosity by Sutherland's law.
 *
 * <p>Sources: [1] U.S. Standard Atmosphere, 1976, NOAA/NASA/USAF: table 2 (constants), equations
 * 23, 33a, 33b (temperature and pressure), 42 (density), 50 (speed of sound), 51 (viscosity).
 */
package trestle.atmosphere;
