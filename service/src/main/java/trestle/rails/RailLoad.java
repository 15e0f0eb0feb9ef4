package trestle.rails;

import java.util.OptionalDouble;

/**
 * What one rail carries.
 *
 * @param name the rail
 * @param typicalA mean current delivered, A
 * @param peakA greatest current delivered, A
 * @param loadFraction mean current over the continuous rating
 * @param peakLoadFraction greatest current over the peak rating, or the continuous one
 * @param heatW heat in the regulator at the mean current and the full pack, W
 * @param inputCurrentA mean current from the pack at its lowest voltage, A
 * @param peakInputCurrentA greatest current from the pack at its lowest voltage, A
 * @param inputPowerW mean power from the full pack, W
 * @param peakInputPowerW greatest power from the full pack, W
 * @param inputWithinRange whether the regulator is rated for the full pack and regulates at its lowest
 * @param temperatureK hottest part of the regulator, K; empty where its cooling is not known
 * @param carriesTheFlight whether the aircraft is lost without it
 */
public record RailLoad(
        String name,
        double typicalA,
        double peakA,
        double loadFraction,
        double peakLoadFraction,
        double heatW,
        double inputCurrentA,
        double peakInputCurrentA,
        double inputPowerW,
        double peakInputPowerW,
        boolean inputWithinRange,
        OptionalDouble temperatureK,
        boolean carriesTheFlight) {}
