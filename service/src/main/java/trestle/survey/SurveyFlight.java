package trestle.survey;

/**
 * One flight of a survey.
 *
 * @param firstLine first line of it, from 0
 * @param lastLine last line of it
 * @param timeS time from home to home, s
 * @param energyJ energy, launch and landing too, J
 */
public record SurveyFlight(int firstLine, int lastLine, double timeS, double energyJ) {}
