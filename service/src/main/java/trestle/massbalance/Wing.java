package trestle.massbalance;

import java.util.List;
import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * A wing, symmetric about the centre plane.
 *
 * @param panels panels of one half, root outwards; each begins where the one before ends
 * @param rootLeadingEdgeArmM leading edge at the centre plane, m aft of the datum
 * @param rootVerticalM height of the root above the reference line, m; empty where nobody measured it
 */
public record Wing(List<Panel> panels, double rootLeadingEdgeArmM, OptionalDouble rootVerticalM) {
    /** Copies the list; a wing has a panel. */
    public Wing {
        panels = List.copyOf(panels);
        Guard.finite("rootLeadingEdgeArmM", rootLeadingEdgeArmM);
        if (panels.isEmpty()) {
            throw new ImpossibleValue("panels", "a wing has at least one panel");
        }
        rootVerticalM.ifPresent(value -> Guard.finite("rootVerticalM", value));
    }

    /**
     * A wing of unknown height.
     *
     * @param panels panels of one half, root outwards
     * @param rootLeadingEdgeArmM leading edge at the centre plane, m aft of the datum
     */
    public Wing(List<Panel> panels, double rootLeadingEdgeArmM) {
        this(panels, rootLeadingEdgeArmM, OptionalDouble.empty());
    }

    /**
     * The quarter chord at the root.
     *
     * @return m aft of the datum
     */
    double rootQuarterChordArmM() {
        return rootLeadingEdgeArmM + panels.get(0).rootChordM() / 4;
    }

    /**
     * How far a tail stands from the height of the root.
     *
     * @param tail the tail
     * @return m, above positive; 0 where either height is not known
     */
    double heightOfM(Tail tail) {
        return rootVerticalM.isPresent() && tail.verticalM().isPresent()
                ? tail.verticalM().getAsDouble() - rootVerticalM.getAsDouble()
                : 0;
    }
}
