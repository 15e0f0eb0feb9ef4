package trestle.wiring;

/**
 * Power connectors by the class of current they are sold for, with the contact resistance that a
 * clean, fully mated one of the class typically has. Common practice, no source: measure yours.
 */
public enum ConnectorClass {
    /** 30 A. */
    A30(30, 1.0e-3),
    /** 60 A. */
    A60(60, 0.5e-3),
    /** 90 A. */
    A90(90, 0.3e-3),
    /** 120 A. */
    A120(120, 0.2e-3),
    /** 150 A. */
    A150(150, 0.15e-3);

    private final double ratedCurrentA;
    private final double contactResistanceOhm;

    ConnectorClass(double ratedCurrentA, double contactResistanceOhm) {
        this.ratedCurrentA = ratedCurrentA;
        this.contactResistanceOhm = contactResistanceOhm;
    }

    /**
     * Rated continuous current.
     *
     * @return current, A
     */
    public double ratedCurrentA() {
        return ratedCurrentA;
    }

    /**
     * Typical resistance of one mated contact.
     *
     * @return resistance, Ω
     */
    public double contactResistanceOhm() {
        return contactResistanceOhm;
    }

    /**
     * Connectors of this class.
     *
     * @param name the builder's name for it
     * @param count connectors on the run, at least 1
     * @return the connectors
     */
    public Connector connector(String name, int count) {
        return new Connector(name, contactResistanceOhm, ratedCurrentA, count);
    }
}
