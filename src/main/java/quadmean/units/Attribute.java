package quadmean.units;

/** What a cruise estimates, with the units of its value per unit area and of its total in both systems. */
public enum Attribute {
    TREES("trees", "trees", Unit.TREES_PER_HECTARE, Unit.TREES_PER_ACRE, Unit.TREE, Unit.TREE),
    BASAL_AREA(
            "basal_area",
            "basal area",
            Unit.SQUARE_METRES_PER_HECTARE,
            Unit.SQUARE_FEET_PER_ACRE,
            Unit.SQUARE_METRE,
            Unit.SQUARE_FOOT),
    VOLUME(
            "volume",
            "volume",
            Unit.CUBIC_METRES_PER_HECTARE,
            Unit.CUBIC_FEET_PER_ACRE,
            Unit.CUBIC_METRE,
            Unit.CUBIC_FOOT),
    /** A ratio: the diameter of the tree of mean basal area. It has no total. */
    QUADRATIC_MEAN_DIAMETER(
            "quadratic_mean_diameter",
            "quadratic mean diameter",
            Unit.CENTIMETRE,
            Unit.INCH,
            Unit.CENTIMETRE,
            Unit.INCH);

    private final String id;
    private final String label;
    private final Unit metricPerArea;
    private final Unit usPerArea;
    private final Unit metricTotal;
    private final Unit usTotal;

    Attribute(String id, String label, Unit metricPerArea, Unit usPerArea, Unit metricTotal, Unit usTotal) {
        this.id = id;
        this.label = label;
        this.metricPerArea = metricPerArea;
        this.usPerArea = usPerArea;
        this.metricTotal = metricTotal;
        this.usTotal = usTotal;
    }

    /** The name used in design files, JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name used in sentences and on charts. */
    public String label() {
        return label;
    }

    /** The unit of a value on this basis in a unit system. */
    public Unit unit(Basis basis, UnitSystem system) {
        boolean metric = system == UnitSystem.METRIC;
        if (basis == Basis.TOTAL) {
            return metric ? metricTotal : usTotal;
        }
        return metric ? metricPerArea : usPerArea;
    }
}
