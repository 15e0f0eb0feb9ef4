package trestle.massbalance;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * A wing, symmetric about the centre plane.
 *
 * @param panels panels of one half, root outwards; each begins where the one before ends
 * @param rootLeadingEdgeArmM leading edge at the centre plane, m aft of the datum
 */
public record Wing(List<Panel> panels, double rootLeadingEdgeArmM) {
    /** Copies the list; a wing has a panel. */
    public Wing {
        panels = List.copyOf(panels);
        Guard.finite("rootLeadingEdgeArmM", rootLeadingEdgeArmM);
        if (panels.isEmpty()) {
            throw new ImpossibleValue("panels", "a wing has at least one panel");
        }
    }
}
