package trestle.finding;

/**
 * A model choice or a default that touched a number.
 *
 * @param subject what was assumed about
 * @param assumed the value taken, with its unit, or the choice made
 * @param because why, in a few words
 */
public record Assumption(Subject subject, String assumed, String because) {}
