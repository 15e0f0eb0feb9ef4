package trestle.figure;

/** A mark on an axis. */
record Tick(double at, String label) {}
