package trestle.rails;

import java.util.List;
import trestle.numeric.Guard;

/**
 * A regulator and what hangs on it.
 *
 * @param name what it is called
 * @param regulator the regulator
 * @param loads its loads; may be empty
 * @param essential whether the aircraft is lost without it; a rail with servos or flight control is
 *     so anyway
 */
public record Rail(String name, Regulator regulator, List<Load> loads, boolean essential) {
    /** Copies the list. */
    public Rail {
        Guard.present("name", name);
        Guard.present("regulator", regulator);
        loads = List.copyOf(loads);
    }

    /**
     * Whether the aircraft is lost without it.
     *
     * @return true where it is said so or it carries servos or flight control
     */
    public boolean carriesTheFlight() {
        return essential || carries(LoadRole.SERVO) || carries(LoadRole.FLIGHT_CONTROL);
    }

    /**
     * Whether it has a load of a role.
     *
     * @param role the role
     * @return true if so
     */
    public boolean carries(LoadRole role) {
        return loads.stream().anyMatch(load -> load.role() == role);
    }

    /**
     * Mean current: {@code Σ q I duty}.
     *
     * @return current, A
     */
    public double meanA() {
        return loads.stream().mapToDouble(Load::meanA).sum();
    }

    /**
     * Greatest current: all peaks that can fall together while the other loads work; or, where that
     * is more, one of the other loads at its peak while everything else works.
     *
     * @return current, A
     */
    public double peakA() {
        double working = loads.stream().mapToDouble(Load::workingA).sum();
        double together = working;
        double greatest = working;
        for (Load load : loads) {
            double rise = load.allPeakA() - load.workingA();
            if (load.simultaneous()) {
                together += rise;
            } else {
                greatest = Math.max(greatest, working + rise);
            }
        }
        return Math.max(together, greatest);
    }
}
