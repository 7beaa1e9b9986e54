package quadmean.estimate;

import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Numbers that describe a stand; heights and densities always say which. */
public enum Statistic {
    BASAL_AREA(
            "basal_area",
            "Basal area",
            Unit.SQUARE_METRES_PER_HECTARE,
            Unit.SQUARE_FEET_PER_ACRE,
            "sum of the cross-sections at breast height",
            "by definition"),
    QUADRATIC_MEAN_DIAMETER(
            "quadratic_mean_diameter",
            "Quadratic mean diameter",
            Unit.CENTIMETRE,
            Unit.INCH,
            "dbh of the tree of mean basal area, √(G/(k·N))",
            "by definition"),
    MEAN_DIAMETER(
            "mean_diameter",
            "Mean diameter",
            Unit.CENTIMETRE,
            Unit.INCH,
            "arithmetic mean dbh of trees",
            "by definition"),
    MEAN_HEIGHT(
            "mean_height",
            "Mean height",
            Unit.METRE,
            Unit.FOOT,
            "arithmetic mean height of trees, Σwh/Σw",
            "by definition"),
    LOREY_HEIGHT(
            "lorey_height",
            "Lorey height",
            Unit.METRE,
            Unit.FOOT,
            "mean height weighted by basal area, Σwgh/Σwg",
            "Lorey 1878, from memory"),
    /** The rule of a design names the trees. */
    TOP_HEIGHT("top_height", "Top height", Unit.METRE, Unit.FOOT, "mean over plots of the mean height", "from memory"),
    SDI_REINEKE(
            "sdi_reineke",
            "Stand density index, Reineke",
            Unit.TREES_PER_HECTARE,
            Unit.TREES_PER_ACRE,
            "N·(QMD/25.4)^1.605 with cm and hectares, N·(QMD/10)^1.605 with inches and acres: the two differ by 2.471",
            "Reineke 1933, from memory"),
    SDI_SUMMATION(
            "sdi_summation",
            "Stand density index, summation",
            Unit.TREES_PER_HECTARE,
            Unit.TREES_PER_ACRE,
            "Σw·(d/25.4)^1.605 tree by tree, or d/10 with inches: below Reineke's unless all trees are alike",
            "Stage 1968; Long and Daniel 1990, from memory"),
    RELATIVE_DENSITY(
            "curtis_relative_density",
            "Relative density, Curtis",
            Unit.METRIC_RELATIVE_DENSITY,
            Unit.US_RELATIVE_DENSITY,
            "G/√QMD",
            "Curtis 1982, from memory"),
    RELATIVE_SPACING(
            "relative_spacing",
            "Relative spacing",
            Unit.ONE,
            Unit.ONE,
            "distance between trees on a square grid, √(area/N), over top height",
            "from memory"),
    VOLUME_PER_TREE(
            "volume_per_tree",
            "Volume per tree",
            Unit.CUBIC_METRE,
            Unit.CUBIC_FOOT,
            "volume over the number of trees, those without a volume among them",
            "by definition"),
    WEIBULL_SHAPE(
            "weibull_shape",
            "Weibull shape of diameters",
            Unit.ONE,
            Unit.ONE,
            "largest likelihood, location 0",
            "Bailey and Dell 1973, from memory"),
    WEIBULL_SCALE(
            "weibull_scale",
            "Weibull scale of diameters",
            Unit.CENTIMETRE,
            Unit.INCH,
            "largest likelihood, location 0",
            "Bailey and Dell 1973, from memory");

    private final String id;
    private final String label;
    private final Unit metric;
    private final Unit us;
    private final String rule;
    private final String source;

    Statistic(String id, String label, Unit metric, Unit us, String rule, String source) {
        this.id = id;
        this.label = label;
        this.metric = metric;
        this.us = us;
        this.rule = rule;
        this.source = source;
    }

    /** The name used in JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name for people. */
    public String label() {
        return label;
    }

    /** Its unit in a unit system. */
    public Unit unit(UnitSystem system) {
        return system == UnitSystem.METRIC ? metric : us;
    }

    /** What it is, in words; {@link StandStatistic#rule} says it for the stand at hand. */
    public String rule() {
        return rule;
    }

    /** Who it is from, with its mark. */
    public String source() {
        return source;
    }
}
