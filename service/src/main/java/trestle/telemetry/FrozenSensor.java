package trestle.telemetry;

/**
 * A sensor that showed one and the same figure while others moved.
 *
 * @param channel what it measures
 * @param startS since when, s
 * @param endS until when, s
 */
public record FrozenSensor(Channel channel, double startS, double endS) {}
