package trestle.figure;

/** A place on the page, or a pair of values. */
record Point(double x, double y) {}
