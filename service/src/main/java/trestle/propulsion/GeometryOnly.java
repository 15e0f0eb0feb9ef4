package trestle.propulsion;

/** Nothing was measured: the blade-element model stands alone. */
public record GeometryOnly() implements PropellerData {}
