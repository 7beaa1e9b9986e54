package quadmean.units;

/** What a {@link Unit} measures; units convert only within one quantity. */
public enum Quantity {
    /** Length, base unit metre. */
    LENGTH,
    /** Ground area, base unit hectare. */
    GROUND_AREA,
    /** Cross-section area of stems, base unit square metre. */
    STEM_AREA,
    /** Wood volume, base unit cubic metre. */
    VOLUME,
    /** Sawn wood by a log rule, base unit board foot; it has no metric form. */
    BOARD_MEASURE,
    /** Mass, base unit kilogram. */
    MASS,
    /** Money, in the currency of the price list. */
    MONEY,
    /** Number of trees. */
    COUNT,
    /** Number of trees on a unit of ground, base unit trees per hectare. */
    COUNT_PER_AREA,
    /** Stem area on a unit of ground (also a basal area factor), base unit m²/ha. */
    STEM_AREA_PER_AREA,
    /** Volume on a unit of ground, base unit m³/ha. */
    VOLUME_PER_AREA,
    /** Board feet on a unit of ground, base unit board feet per hectare. */
    BOARD_MEASURE_PER_AREA,
    /** Mass on a unit of ground, base unit kg/ha. */
    MASS_PER_AREA,
    /** Money on a unit of ground, base unit money per hectare. */
    MONEY_PER_AREA,
    /** Weight of each unit of volume, base unit kg/m³. */
    DENSITY,
    /** Basal area on a unit of ground over the square root of a diameter, base unit m²/ha for √cm. */
    RELATIVE_DENSITY,
    /** A pure number. */
    NUMBER
}
