package trestle.api.model;

/**
 * A charge but for the pack: by itself beside its segments, or in the document of an aircraft. The generated records of both
 * implement it, so that the compiler holds the two shapes together.
 */
public interface ApiChargeShape {
    /** Charge at the start, % of full; null where the default holds. */
    Double startStateOfChargePercent();

    /** Air around the pack, °C; null where the default holds. */
    Double ambientC();

    /** Cells at the start, °C; null where they are as warm as the air. */
    Double packTemperatureC();

    /** Leads and connectors, both ways, mΩ; null where the default holds. */
    Double leadResistanceMilliohm();

    /** How the segments are connected; null where the default holds. */
    ApiChargeConnection connection();

    /** The charger; null where none is described. */
    ApiPackCharger charger();

    /** Current that is set, A; null for the greatest that is allowed. */
    Double currentA();

    /** What is to be reached; null where the default holds. */
    ApiChargeTargetKind target();

    /** Charge to be reached, %; null but for that target. */
    Double targetStateOfChargePercent();

    /** Voltage that each cell is held at, V; null for its full voltage. */
    Double holdVoltageV();

    /** Current at which it ends, % of the capacity an hour; null where the default holds. */
    Double endCurrentPercent();

    /** How far the cells differ, %; null where the default holds. */
    Double imbalancePercent();

    /** Temperature that the cells' rating holds down to, °C; null where none is stated. */
    Double coldRatingC();

    /** How long the pack rests afterwards, days; null where it is not known. */
    Double storageDays();

    /** Where the energy is from; null where it is not looked at. */
    ApiPackChargeSupply supply();
}
