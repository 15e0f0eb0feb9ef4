package trestle.battery;

import trestle.numeric.Guard;

/**
 * What is asked of a pack.
 *
 * @param pack the pack
 * @param load what it feeds
 * @param cutoff where that ends
 * @param surroundings air and wrapping
 * @param reserveFraction share of the usable energy to hold back, 0 to 0.9
 */
public record PackTask(Pack pack, Load load, Cutoff cutoff, Surroundings surroundings, double reserveFraction) {
    private static final double MOST_RESERVE = 0.9;

    /** Checks the physics. */
    public PackTask {
        Guard.present("pack", pack);
        Guard.present("load", load);
        Guard.present("cutoff", cutoff);
        Guard.present("surroundings", surroundings);
        Guard.within("reserveFraction", reserveFraction, 0, MOST_RESERVE);
    }
}
