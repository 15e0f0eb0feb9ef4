package trestle.wiring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A wire against the one thing that it is hottest for of all that it touches.
 *
 * @param material what it touches
 * @param temperatureK what that meets: the wire's surface, or its copper, K
 */
record Touch(ContactMaterial material, double temperatureK) {
    /** Nearer than this a warm day or a dusty wire passes the limit, K. Common practice, no source. */
    static final double NEAR_K = 10;

    /** How far a short peak may pass the limit, which is one for years, K. Common practice, no source. */
    static final double PEAK_ALLOWANCE_K = 20;

    /**
     * The worst of all that is touched. Skin is left out: it may be burnt, and is not softened.
     *
     * @param touches what is touched
     * @param surfaceK surface of the wire, K
     * @param conductorK its copper, K
     * @return empty where nothing is touched
     */
    static Optional<Touch> worst(List<ContactMaterial> touches, double surfaceK, double conductorK) {
        return touches.stream()
                .filter(material -> material != ContactMaterial.SKIN)
                .map(material ->
                        new Touch(material, material.side() == ContactMaterial.Side.SURFACE ? surfaceK : conductorK))
                .max(Comparator.comparingDouble(Touch::excessK));
    }

    /** How far above what the material stands, K; negative below. */
    double excessK() {
        return temperatureK - material.limitK();
    }
}
