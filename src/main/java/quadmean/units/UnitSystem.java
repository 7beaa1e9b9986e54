package quadmean.units;

/** The two systems a cruise is planned, read and reported in. Inside the program everything is metric. */
public enum UnitSystem {
    /** Centimetres, metres, hectares; breast height 1.30 m. */
    METRIC("metric", Unit.CENTIMETRE, Unit.METRE, Unit.HECTARE, Unit.SQUARE_METRES_PER_HECTARE, Unit.CUBIC_METRE, 1.3),
    /** Inches, feet, acres; breast height 4.5 ft. */
    US("us", Unit.INCH, Unit.FOOT, Unit.ACRE, Unit.SQUARE_FEET_PER_ACRE, Unit.CUBIC_FOOT, 4.5);

    private final String id;
    private final Unit diameter;
    private final Unit length;
    private final Unit area;
    private final Unit basalAreaFactor;
    private final Unit volume;
    private final double breastHeight;

    UnitSystem(
            String id, Unit diameter, Unit length, Unit area, Unit basalAreaFactor, Unit volume, double breastHeight) {
        this.id = id;
        this.diameter = diameter;
        this.length = length;
        this.area = area;
        this.basalAreaFactor = basalAreaFactor;
        this.volume = volume;
        this.breastHeight = breastHeight;
    }

    /** The name used in design files and JSON. */
    public String id() {
        return id;
    }

    /** Unit of dbh: cm or in. */
    public Unit diameter() {
        return diameter;
    }

    /** Unit of heights, distances and plot radii: m or ft. */
    public Unit length() {
        return length;
    }

    /** Unit of ground area: ha or ac. */
    public Unit area() {
        return area;
    }

    /** Unit of a basal area factor: m²/ha or ft²/ac. */
    public Unit basalAreaFactor() {
        return basalAreaFactor;
    }

    /** Unit of wood volume: m³ or ft³. */
    public Unit volume() {
        return volume;
    }

    /** The customary breast height in this system's length unit: 1.30 m or 4.5 ft (which is 1.3716 m). */
    public double breastHeight() {
        return breastHeight;
    }
}
