package trestle.wiring;

import trestle.atmosphere.StandardAtmosphere;

/**
 * The way of one conductor's heat to its surroundings, per metre: a thermal resistance from the
 * copper to the surface, then convection and radiation, or foam.
 *
 * <p>A bundle is a cylinder with the heat of all its n conductors and the envelope diameter {@code
 * 1.15 D √n}. Its core is warmer than its surface by {@code (n − 1) q' / (4 π k)}, the centre of a
 * cylinder with heat spread evenly in it; the effective conductivity k is set so that the one
 * published point that could be read, 0.6 of the free-air current for 8 wires at 60 % in [7] page
 * 11-27, is met.
 */
final class HeatPath {
    /** Emissivity of insulation of any colour, [4], typical of plastics and rubber. */
    static final double EMISSIVITY = 0.9;

    /** Stefan and Boltzmann's constant, W/(m² K⁴), CODATA 2018. */
    static final double RADIATION_W_PER_M2_K4 = 5.670374419e-8;

    /** Conductivity of rigid foam, W/(m K), typical, from memory. */
    static final double FOAM_CONDUCTIVITY_W_PER_M_K = 0.035;

    /** Envelope of n wires over D √n: wires do not fill the circle. Common practice, no source. */
    static final double BUNDLE_ENVELOPE_RATIO = 1.15;

    /** Effective, W/(m K); see above. */
    static final double BUNDLE_CONDUCTIVITY_W_PER_M_K = 0.2;

    private final double sinkK;
    private final double pressurePa;
    private final double heatedCount;
    private final double surfaceDiameterM;
    private final boolean foam;
    private final double foamConductanceWPerMK;
    private final double innerResistanceKMPerW;

    HeatPath(Wire wire, Surroundings surroundings) {
        this(wire, surroundings, surroundings.bundledConductors());
    }

    /** With a count that need not be whole: a bundle loaded to 60 %. */
    HeatPath(Wire wire, Surroundings surroundings, double heatedCount) {
        this.sinkK = surroundings.sinkTemperatureK();
        this.pressurePa = StandardAtmosphere.pressurePa(surroundings.altitudeM());
        this.heatedCount = heatedCount;
        this.surfaceDiameterM = heatedCount <= 1
                ? wire.outerDiameterM()
                : BUNDLE_ENVELOPE_RATIO * Math.sqrt(heatedCount) * wire.outerDiameterM();
        this.foam = surroundings.enclosure() == Enclosure.FOAM_CHANNEL;
        this.foamConductanceWPerMK = foamConductanceWPerMK(surfaceDiameterM, surroundings.foamWallM());
        this.innerResistanceKMPerW = wire.insulationResistanceKMPerW()
                + Math.max(0, heatedCount - 1) / (4 * Math.PI * BUNDLE_CONDUCTIVITY_W_PER_M_K);
    }

    /** Conductance of a foam cylinder round a wire, {@code 2 π k / ln(1 + 2 t / D)}, [4]. */
    static double foamConductanceWPerMK(double diameterM, double wallM) {
        return 2 * Math.PI * FOAM_CONDUCTIVITY_W_PER_M_K / Math.log1p(2 * wallM / diameterM);
    }

    /** Temperature of the air or the foam's outer face, K. */
    double sinkK() {
        return sinkK;
    }

    /** From copper to surface, K m/W. */
    double innerResistanceKMPerW() {
        return innerResistanceKMPerW;
    }

    /** Heat that one conductor's share of the surface gives off, W/m. */
    double heatWPerM(double surfaceK) {
        if (foam) {
            return foamConductanceWPerMK * (surfaceK - sinkK) / heatedCount;
        }
        double convected = NaturalConvection.heatWPerM(surfaceK, sinkK, surfaceDiameterM, pressurePa);
        double radiated =
                EMISSIVITY * RADIATION_W_PER_M2_K4 * Math.PI * surfaceDiameterM * (fourth(surfaceK) - fourth(sinkK));
        return (convected + radiated) / heatedCount;
    }

    private static double fourth(double value) {
        double square = value * value;
        return square * square;
    }
}
