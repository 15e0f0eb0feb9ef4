package trestle.review;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.wiring.CurrentPeak;
import trestle.wiring.WirePlan;

/**
 * A run of wire in the aircraft.
 *
 * @param plan how it is laid
 * @param currentA continuous current, A; empty for a run that carries what the pack gives
 * @param peak a short peak; empty without one, and for a run that carries what the pack gives
 * @param supplyVoltageV voltage at its supply end, V; empty for the pack's
 * @param armM station of its middle, m aft of the datum; empty for a run that is not weighed
 */
public record InstalledRun(
        WirePlan plan,
        OptionalDouble currentA,
        Optional<CurrentPeak> peak,
        OptionalDouble supplyVoltageV,
        OptionalDouble armM) {}
