package trestle.wiring;

import trestle.units.Temperature;

/**
 * What a wire or a plug may touch, and the temperature that it stands for years: no melting point. See the reference
 * table {@code contact-temperatures}.
 */
public enum ContactMaterial {
    /** Expanded polystyrene. */
    EPS_FOAM("polystyrene foam (EPS)", 74, Side.SURFACE, "shrinks from 80 to 85 °C, collapses near 100 °C", Read.EPS),
    /** Extruded polystyrene, sheet too. */
    XPS_FOAM("polystyrene foam (XPS)", 74, Side.SURFACE, "shrinks from 80 to 85 °C, collapses near 100 °C", Read.EPS),
    /** Moulded beads of polyethylene with polystyrene. */
    MOULDED_BEAD_FOAM("moulded bead foam", 70, Side.SURFACE, "creeps and sinks", Read.MEMORY),
    /** Expanded polypropylene. */
    EPP_FOAM(
            "polypropylene foam (EPP)",
            90,
            Side.SURFACE,
            "creeps under load, melts at 140 to 160 °C",
            "a plastics table: reinforced polypropylene 90 °C continuous; melting from memory"),
    /** Printed polylactide. */
    PLA_PRINT("PLA print", 50, Side.SURFACE, "sags under load", Read.MEMORY),
    /** Printed glycol-modified polyester. */
    PETG_PRINT("PETG print", 65, Side.SURFACE, "sags under load", Read.MEMORY),
    /** ABS. */
    ABS("ABS", 85, Side.SURFACE, "sags under load", "a plastics table: 85 °C continuous, 100 °C brief"),
    /** Laminates and tube bonds cured at room temperature. */
    ROOM_CURED_EPOXY(
            "room-cured epoxy",
            50,
            Side.SURFACE,
            "the bond creeps: glass transition begins at 54 °C in one common system",
            "data of epoxy systems, read second hand"),
    /** Glue from a hot gun. */
    HOT_GLUE("hot glue", 45, Side.SURFACE, "lets go", Read.MEMORY),
    /** Instant glue. */
    CYANOACRYLATE("cyanoacrylate glue", 70, Side.SURFACE, "lets go", Read.MEMORY),
    /** Plug housings. */
    POLYAMIDE("polyamide plug", 80, Side.CONDUCTOR, "its pins shift", Read.PLASTICS),
    /** Plug housings with glass. */
    GLASS_FILLED_POLYAMIDE("glass-filled polyamide plug", 110, Side.CONDUCTOR, "its pins shift", Read.PLASTICS),
    /** Plug housings. */
    POLYCARBONATE("polycarbonate plug", 120, Side.CONDUCTOR, "its pins shift", Read.PLASTICS),
    /** Wrap round packs. */
    PVC_WRAP("PVC wrap", 80, Side.SURFACE, "softens and shrinks", Read.MEMORY),
    /** Shrink tube of PVC. */
    HEAT_SHRINK_PVC("PVC heat shrink", 80, Side.SURFACE, "softens and shrinks", Read.MEMORY),
    /** Shrink tube of polyolefin. */
    HEAT_SHRINK_POLYOLEFIN("polyolefin heat shrink", 125, Side.SURFACE, "softens and shrinks", Read.MEMORY),
    /** Joints of tin and lead. */
    SOLDER_TIN_LEAD("tin-lead solder", 110, Side.CONDUCTOR, "creeps, far below melting at 183 °C", Read.MEMORY),
    /** Joints without lead. */
    SOLDER_LEAD_FREE("lead-free solder", 120, Side.CONDUCTOR, "creeps, far below melting at 217 °C", Read.MEMORY),
    /** Cells of the pack. */
    CELLS("cells", 60, Side.SURFACE, "age, and vent far above; 45 °C while they charge", Read.MEMORY),
    /** A servo. */
    SERVO("servo", 60, Side.SURFACE, "its grease runs", Read.MEMORY),
    /** A magnet of neodymium. */
    MAGNET("magnet", 80, Side.SURFACE, "loses field (grade N)", Read.MEMORY),
    /** Balsa or plywood. */
    BALSA_OR_PLY("balsa or plywood", 100, Side.SURFACE, "dries; glue lines go first", Read.MEMORY),
    /** Skin that may touch it. */
    SKIN("skin", 51, Side.SURFACE, "burns within a minute; 48 °C for ten minutes or more", "ISO 13732-1, from memory");

    /** Which temperature of a wire such a thing meets. */
    public enum Side {
        /** That of the insulation. */
        SURFACE,
        /** That of the copper: what is joined to it. */
        CONDUCTOR
    }

    /** Sources that stand at several rows. */
    private static final class Read {
        static final String MEMORY = "from memory";
        static final String PLASTICS = "a plastics table, continuous use";
        static final String EPS = "ASTM C578, scope: -53.9 to 73.9 °C";

        private Read() {}
    }

    private final String words;
    private final double limitK;
    private final Side side;
    private final String effect;
    private final String source;

    ContactMaterial(String words, double limitC, Side side, String effect, String source) {
        this.words = words;
        this.limitK = Temperature.kFromC(limitC);
        this.side = side;
        this.effect = effect;
        this.source = source;
    }

    /**
     * Its name in a sentence.
     *
     * @return such as "hot glue"
     */
    public String words() {
        return words;
    }

    /**
     * The temperature that it stands for years.
     *
     * @return temperature, K
     */
    public double limitK() {
        return limitK;
    }

    /**
     * Which temperature of a wire it meets.
     *
     * @return surface or conductor
     */
    public Side side() {
        return side;
    }

    /**
     * What happens above the limit.
     *
     * @return a few words
     */
    public String effect() {
        return effect;
    }

    /**
     * Where the limit is from.
     *
     * @return a source, or that it is from memory
     */
    public String source() {
        return source;
    }
}
