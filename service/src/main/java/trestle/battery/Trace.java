package trestle.battery;

/** Looks on while a discharge goes. */
interface Trace {
    /** Sees nothing. */
    Trace NONE = now -> {};

    /** Called at the start, after each step, and where the load changes. */
    void point(Stepper now);
}
