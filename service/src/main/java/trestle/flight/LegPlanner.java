package trestle.flight;

import java.util.OptionalDouble;

/**
 * Turns legs into airspeed, power and duration. A leg without an airspeed takes the one of its
 * kind; see {@link Leg}.
 *
 * @param flight the aircraft in its air
 * @param usable usable energy over power
 * @param bestEnduranceMPerS airspeed of least power, m/s
 * @param headwindMPerS headwind of climbs and descents, m/s
 */
record LegPlanner(SteadyFlight flight, UsableEnergy usable, double bestEnduranceMPerS, double headwindMPerS) {
    /** A store is never drawn at nothing: keeps a glide without systems power finite. */
    private static final double LEAST_POWER_W = 1e-6;

    PlannedLeg plan(Leg leg) {
        if (leg instanceof Leg.Climb climb) {
            return climb(climb);
        }
        if (leg instanceof Leg.Cruise cruise) {
            return cruise(cruise);
        }
        if (leg instanceof Leg.Descent descent) {
            return descent(descent);
        }
        return loiter((Leg.Loiter) leg);
    }

    private PlannedLeg climb(Leg.Climb climb) {
        double airspeed = climb.airspeedMPerS()
                .orElse(Math.max(bestEnduranceMPerS, SteadyFlight.CLIMB_IN_STALL_SPEEDS * flight.stallSpeedMPerS()));
        if (climb.climbRateMPerS() >= airspeed) {
            return PlannedLeg.notFlyable(climb, airspeed);
        }
        return checked(
                climb,
                airspeed,
                flight.climbPowerW(airspeed, climb.climbRateMPerS()),
                climb.heightM() / climb.climbRateMPerS(),
                alongGround(airspeed, climb.climbRateMPerS()));
    }

    private PlannedLeg cruise(Leg.Cruise cruise) {
        OptionalDouble asked = cruise.airspeedMPerS();
        OptionalDouble airspeed =
                asked.isPresent() ? asked : flight.furthestAirspeedMPerS(cruise.headwindMPerS(), usable::energyJ);
        if (airspeed.isEmpty()) {
            return PlannedLeg.notFlyable(cruise, bestEnduranceMPerS);
        }
        double groundSpeed = airspeed.getAsDouble() - cruise.headwindMPerS();
        if (cruise.extent() instanceof Extent.Distance distance) {
            return groundSpeed > 0
                    ? level(cruise, airspeed.getAsDouble(), distance.distanceM() / groundSpeed, groundSpeed)
                    : PlannedLeg.notFlyable(cruise, airspeed.getAsDouble());
        }
        double durationS = ((Extent.Duration) cruise.extent()).durationS();
        return level(cruise, airspeed.getAsDouble(), durationS, groundSpeed);
    }

    private PlannedLeg loiter(Leg.Loiter loiter) {
        double airspeed = loiter.airspeedMPerS().orElse(bestEnduranceMPerS);
        return level(loiter, airspeed, loiter.durationS(), 0);
    }

    private PlannedLeg descent(Leg.Descent descent) {
        double airspeed = descent.airspeedMPerS()
                .orElseGet(() -> flight.furthestAirspeedMPerS(headwindMPerS, usable::energyJ)
                        .orElse(bestEnduranceMPerS));
        if (descent.sinkRateMPerS() >= airspeed) {
            return PlannedLeg.notFlyable(descent, airspeed);
        }
        double systemsW = flight.power().systemsPowerW();
        double thrustPartW = flight.powerW(airspeed) - systemsW;
        return checked(
                descent,
                airspeed,
                Math.max(systemsW + descent.powerFraction() * thrustPartW, LEAST_POWER_W),
                descent.heightM() / descent.sinkRateMPerS(),
                alongGround(airspeed, descent.sinkRateMPerS()));
    }

    private PlannedLeg level(Leg leg, double airspeed, double durationS, double groundSpeed) {
        return checked(leg, airspeed, flight.powerW(airspeed), durationS, groundSpeed);
    }

    private PlannedLeg checked(Leg leg, double airspeed, double powerW, double durationS, double groundSpeed) {
        boolean flyable = airspeed >= flight.stallSpeedMPerS() && Double.isFinite(powerW);
        return flyable
                ? new PlannedLeg(leg, true, airspeed, powerW, durationS, groundSpeed)
                : PlannedLeg.notFlyable(leg, airspeed);
    }

    private double alongGround(double airspeed, double verticalMPerS) {
        return Math.sqrt(airspeed * airspeed - verticalMPerS * verticalMPerS) - headwindMPerS;
    }
}
