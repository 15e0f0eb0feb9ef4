/**
 * What a flight's telemetry says: rows that can be trusted, charge, energy and distance, phases, wind, the pack's
 * resistance and the power that level flight takes. {@link trestle.telemetry.FlightLog} is the way in for a log, {@link
 * trestle.telemetry.Landing} for the few numbers that are written down after landing.
 *
 * <p>The model: trapezium rule between neighbouring rows, never across a gap; distance by geodesics on the WGS 84
 * ellipsoid; wind as the centre of the circle on which ground velocities lie [1], refined geometrically by least
 * squares; resistance as the slope of voltage over current at steps of load; power of level flight {@code P = P0 + k3 ρ
 * V³ + k1 m²/(ρ V)} by Huber's regression [2] on steady stretches of five seconds; nothing is claimed that the log
 * cannot tell apart [3].
 *
 * <p>Sources, cited from memory: [1] I. Kåsa, A circle fitting procedure and its error analysis, IEEE Transactions on
 * Instrumentation and Measurement 25, 1976; [2] P. Huber, Robust Statistics; [3] NIST/SEMATECH e-Handbook of
 * Statistical Methods, regression diagnostics. Thresholds without a source are common practice and say so.
 */
package trestle.telemetry;
