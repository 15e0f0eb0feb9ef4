package trestle.launch;

/** The ground that the wind has blown over, classes of Davenport and Wieringa, [4]. */
public enum Terrain {
    /** Open water. */
    SEA(0.0002),
    /** Mud flat, snow, beach. */
    SMOOTH(0.005),
    /** Short grass, airfield. */
    OPEN(0.03),
    /** Low crops, scattered bushes. */
    ROUGHLY_OPEN(0.10),
    /** High crops, hedges. */
    ROUGH(0.25),
    /** Orchards, bushes, groups of trees. */
    VERY_ROUGH(0.5);

    private final double roughnessM;

    Terrain(double roughnessM) {
        this.roughnessM = roughnessM;
    }

    /**
     * Roughness length of the logarithmic law.
     *
     * @return roughness length, m
     */
    public double roughnessM() {
        return roughnessM;
    }
}
