package trestle.wiring;

import java.util.Optional;

/**
 * What flows through a run of wire.
 *
 * @param currentA continuous current of the load, A
 * @param peak a short peak; empty without one
 * @param supplyVoltageV voltage at the supply, V
 * @param feedsController whether it runs from the pack to a motor controller
 * @param flight flight data; empty when only the mass counts
 */
public record WireDuty(
        double currentA,
        Optional<CurrentPeak> peak,
        double supplyVoltageV,
        boolean feedsController,
        Optional<Flight> flight) {}
