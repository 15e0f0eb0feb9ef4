package trestle.magnetics;

import java.util.Optional;
import trestle.finding.Judgement;

/**
 * The compass among its leads.
 *
 * @param cruise in cruise, which lasts for hours
 * @param fullThrottle at full throttle, which lasts for seconds; empty where its currents are not known
 * @param judgement what is to be said of it
 */
public record Clearance(LeadFields cruise, Optional<LeadFields> fullThrottle, Judgement judgement) {}
