package trestle.figure;

/** The name of a place on the level axis, with a line down into the plots. */
record Flag(double at, Style style, String text) {}
