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
    /** Cubic volume of trees by their equations. */
    VOLUME(
            "volume",
            "volume",
            Unit.CUBIC_METRES_PER_HECTARE,
            Unit.CUBIC_FEET_PER_ACRE,
            Unit.CUBIC_METRE,
            Unit.CUBIC_FOOT),
    /** Cubic volume of the logs that stems are cut into, inside bark, before defect. */
    LOG_VOLUME(
            "log_volume",
            "gross log volume",
            Unit.CUBIC_METRES_PER_HECTARE,
            Unit.CUBIC_FEET_PER_ACRE,
            Unit.CUBIC_METRE,
            Unit.CUBIC_FOOT),
    NET_LOG_VOLUME(
            "net_log_volume",
            "net log volume",
            Unit.CUBIC_METRES_PER_HECTARE,
            Unit.CUBIC_FEET_PER_ACRE,
            Unit.CUBIC_METRE,
            Unit.CUBIC_FOOT),
    /** Board feet by the log rule of the design, before defect. */
    BOARD_FEET(
            "board_feet",
            "gross board feet",
            Unit.BOARD_FEET_PER_HECTARE,
            Unit.BOARD_FEET_PER_ACRE,
            Unit.BOARD_FOOT,
            Unit.BOARD_FOOT),
    NET_BOARD_FEET(
            "net_board_feet",
            "net board feet",
            Unit.BOARD_FEET_PER_HECTARE,
            Unit.BOARD_FEET_PER_ACRE,
            Unit.BOARD_FOOT,
            Unit.BOARD_FOOT),
    /** What net logs fetch at the prices of the design, in their currency. */
    VALUE("value", "value of logs", Unit.DOLLARS_PER_HECTARE, Unit.DOLLARS_PER_ACRE, Unit.DOLLAR, Unit.DOLLAR),
    GREEN_WEIGHT(
            "green_weight",
            "green weight",
            Unit.TONNES_PER_HECTARE,
            Unit.SHORT_TONS_PER_ACRE,
            Unit.TONNE,
            Unit.SHORT_TON),
    BIOMASS("biomass", "dry biomass", Unit.TONNES_PER_HECTARE, Unit.SHORT_TONS_PER_ACRE, Unit.TONNE, Unit.SHORT_TON),
    CARBON("carbon", "carbon", Unit.TONNES_PER_HECTARE, Unit.SHORT_TONS_PER_ACRE, Unit.TONNE, Unit.SHORT_TON),
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

    /** Whether it belongs to logs, so that each product and each log of the stem has its share of it. */
    public boolean isOfLogs() {
        return switch (this) {
            case LOG_VOLUME, NET_LOG_VOLUME, BOARD_FEET, NET_BOARD_FEET, VALUE -> true;
            default -> false;
        };
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
