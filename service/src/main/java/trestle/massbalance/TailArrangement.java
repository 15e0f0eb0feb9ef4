package trestle.massbalance;

/** What keeps the aircraft's nose where it is: a tail behind the wing, or the wing alone. */
public sealed interface TailArrangement permits Tail, Tailless {
    /** Fuselages and propellers ahead of the CG destabilise; common practice, no source. */
    double USUAL_FUSELAGE_SHIFT_FRACTION = -0.02;

    /**
     * What fuselage and propeller add to the neutral point.
     *
     * @return shift aft, as a fraction of the mean chord; below 0 destabilises
     */
    double fuselageShiftFraction();
}
