package trestle.propulsion;

/** What is known of a propeller beside its size: nothing, one static test, or a whole table. */
public sealed interface PropellerData permits GeometryOnly, StaticTest, CoefficientTable {}
