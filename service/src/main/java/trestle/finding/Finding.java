package trestle.finding;

import java.util.OptionalDouble;

/**
 * A judgement on a result: something a builder can act on.
 *
 * @param severity how much it weighs
 * @param code stable kebab-case name, for programs
 * @param message one sentence with the number, the unit and the limit, in the units of the trade
 * @param subject what it is about
 * @param value the number that was judged, in the unit the message uses; empty where there is none
 * @param limit the limit that it was held against, same unit; empty where there is none
 */
public record Finding(
        Severity severity, String code, String message, Subject subject, OptionalDouble value, OptionalDouble limit) {

    /**
     * A finding without a number to hold against a limit.
     *
     * @param severity how much it weighs
     * @param code stable kebab-case name
     * @param subject what it is about
     * @param message one sentence
     * @return the finding
     */
    public static Finding of(Severity severity, String code, Subject subject, String message) {
        return new Finding(severity, code, message, subject, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
