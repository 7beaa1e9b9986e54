package quadmean.model;

import java.util.EnumSet;
import java.util.Set;

/**
 * The catalogue of rules that input is held to. Each has a code, a sentence that says the rule, a remedy, and the
 * policies a design may choose for it.
 */
public enum Rule {
    DESIGN_SYNTAX(
            "design-syntax",
            "a design file is written in TOML 1.0",
            "mend the line; designs/README.md has a complete example"),
    DESIGN_KEY("design-key", "a design has known keys only", "use the key named, or take the line out"),
    DESIGN_TYPE("design-type", "each key takes one type of value", "write the value as shown"),
    DESIGN_VALUE("design-value", "a value lies in the range that makes sense", "write a value of the range shown"),
    DESIGN_MISSING("design-missing", "some keys must be there", "add the key"),
    FILE_UNREADABLE(
            "file-unreadable",
            "a tally is a text file or a workbook with a header row",
            "save the file again, as CSV in UTF-8 or as .xlsx"),
    FORMAT_DETECTED(
            "format-detected",
            "what the design leaves open is read off the file, and stated",
            "nothing, if it is right; else say it in the design",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    FORMAT_CONTRADICTS(
            "format-contradicts",
            "a file is written in one way, and as the design says",
            "mend the design or the file; with keep the design holds",
            Policy.KEEP),
    COLUMN_MISSING(
            "column-missing",
            "each column that the design names is in the header",
            "name the column as the header does, or mend the header"),
    CELL_UNUSABLE(
            "cell-unusable",
            "a spreadsheet cell in use holds a number or a text",
            "write the value itself into the cell",
            Policy.DROP),
    FORMULA_VALUE(
            "formula-value",
            "where cells hold formulas the values last saved are used, and the tally says so once a column",
            "nothing, if the workbook was worked out before it was saved",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    CELLS_MERGED(
            "cells-merged",
            "each cell in use stands alone",
            "split the merged cells, and write the value into each",
            Policy.KEEP),
    ROW_LENGTH(
            "row-length",
            "a row has as many fields as the header, and those in use stand on one line",
            "add or remove separators; quote fields that hold one",
            Policy.DROP),
    PLOT_MISSING("plot-missing", "each row names its plot", "write the plot number", Policy.DROP),
    STRATUM_UNKNOWN(
            "stratum-unknown",
            "each plot lies in a stratum of the design",
            "mend the stratum, or add it to the design",
            Policy.DROP),
    STRATUM_CHANGES(
            "stratum-changes", "all rows of a plot name the same stratum", "give the plot one stratum", Policy.DROP),
    NUMBER_UNREADABLE(
            "number-unreadable",
            "a measurement is one plain number",
            "write the number alone, with the decimal mark that the design states",
            Policy.DROP),
    COUNT_UNUSABLE(
            "count-unusable",
            "a row stands for a whole number of trees, 1 or more",
            "write the number of trees; leave it empty for one tree; take rows of no trees out",
            Policy.DROP),
    EDGE_UNUSABLE(
            "edge-unusable",
            "a tree at the boundary counts as often as the treatment of the design allows",
            "write the number of times, the same for a whole plot under inward_sweep; leave it empty for once",
            Policy.DROP,
            Policy.KEEP),
    PREDICTION_UNUSABLE(
            "prediction-unusable",
            "in 3P sampling each tree has a prediction above 0, and one that reaches the limit is measured",
            "write the prediction; measure the tree that was sure to be measured",
            Policy.DROP),
    DEFECT_IMPOSSIBLE(
            "defect-impossible",
            "defect lies between 0 and 100 % of the wood",
            "write the share of the wood that is no good, in percent; leave it empty for none",
            Policy.DROP),
    LOGS_UNUSABLE(
            "logs-unusable",
            "a number of 16-ft logs is counted in halves, from 0 to 24",
            "mend the number, or leave it empty",
            Policy.DROP,
            Policy.KEEP),
    DBH_CLASS(
            "dbh-class",
            "a diameter class counts at its midpoint, and the tally says so once",
            "nothing, if the classes are right",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    STAND_UNKNOWN(
            "stand-unknown",
            "each row of an estate names a stand of the table of stands",
            "write the stand as the table has it, or add it there",
            Policy.DROP),
    STAND_TABLE(
            "stand-table",
            "each row of the table of stands names a stand, none twice, with an area above zero",
            "mend the row"),
    STAND_WITHOUT_PLOTS(
            "stand-without-plots",
            "each stand of an estate has a plot",
            "run plots in it; with keep its area is left out of what is estimated, which the output says",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    PLOT_SCATTERED(
            "plot-scattered",
            "the rows of a plot of an estate lie together, in one file",
            "sort the tally by stand and plot; give two plots of one number numbers of their own"),
    CURVE_FILE(
            "curve-file",
            "each row of a file of curves names region, species, form, units, breast height, ratio and the parameters of the form",
            "take the file that an earlier run wrote, or mend the row"),
    SPECIES_MISSING("species-missing", "each tree has a species", "write the species", Policy.DROP),
    SPECIES_UNKNOWN(
            "species-unknown",
            "each species stands in the design",
            "mend the code, add [species.CODE], or list the code under recode_from",
            Policy.DROP,
            Policy.KEEP),
    SPECIES_RECODED(
            "species-recoded",
            "a recorded code is replaced as the design says",
            "nothing, if the design is right",
            Policy.KEEP,
            EnumSet.allOf(Policy.class)),
    DBH_MISSING(
            "dbh-missing",
            "each tree has a dbh",
            "write the dbh; a row with a plot number alone is a plot without trees",
            Policy.DROP),
    DBH_IMPOSSIBLE(
            "dbh-impossible",
            "a dbh lies above 0 and under 12 m",
            "look the tree up in the field notes; check the unit in the design",
            Policy.DROP),
    DBH_BELOW_MINIMUM(
            "dbh-below-minimum",
            "a tree reaches the smallest dbh that the plot counts",
            "take the tree off the tally, or lower min_dbh",
            Policy.DROP),
    HEIGHT_IMPOSSIBLE(
            "height-impossible",
            "a height lies above breast height and under 130 m",
            "look the tree up; check the unit in the design",
            Policy.DROP,
            Policy.KEEP),
    READING_UNUSABLE(
            "reading-unusable",
            "a height by clinometer has a top and a base reading and a distance above zero",
            "complete the readings, or leave all of them empty",
            Policy.DROP,
            Policy.KEEP),
    HEIGHT_OFF_CURVE(
            "height-off-curve",
            "a height lies near the curve of its species",
            "look the tree up; check the unit; measure again",
            Policy.DROP,
            Policy.KEEP),
    ROW_REPEATED(
            "row-repeated",
            "no row stands twice",
            "delete the copy if the tree was keyed twice",
            Policy.DROP,
            Policy.KEEP),
    TREE_REPEATED(
            "tree-repeated",
            "a tree number stands once in its plot",
            "give the tree its own number, or delete the row",
            Policy.DROP,
            Policy.KEEP),
    EMPTY_PLOT_HAS_TREES(
            "empty-plot-has-trees",
            "a plot noted as empty has no trees",
            "delete the empty row, or the trees",
            Policy.DROP,
            Policy.KEEP),
    PLOT_NOT_LISTED(
            "plot-not-listed",
            "each plot is on the design's list of plots",
            "mend the plot number, or the list",
            Policy.DROP,
            Policy.KEEP),
    PLOT_NOT_IN_TALLY(
            "plot-not-in-tally",
            "each plot on the design's list is in the tally",
            "enter the plot; for a plot without trees a row with its number alone",
            Policy.DROP,
            Policy.KEEP),
    STATUS_UNKNOWN(
            "status-unknown",
            "each status is one that the design knows",
            "write live, dead, cull or snag, or explain the code under status_codes",
            Policy.DROP,
            Policy.KEEP),
    MARK_UNREADABLE(
            "mark-unreadable",
            "a mark is yes or no",
            "write yes or no, or leave it empty for no",
            Policy.DROP,
            Policy.KEEP),
    TREE_TOO_FAR(
            "tree-too-far",
            "a tree stands within the limit of its plot or point",
            "measure the distance again; take the tree off if it is out",
            Policy.DROP,
            Policy.KEEP),
    RING_WRONG(
            "ring-wrong",
            "a tree is tallied on the ring that its dbh belongs to",
            "mend the ring or the dbh",
            Policy.DROP,
            Policy.KEEP),
    DBH_UNLIKELY(
            "dbh-unlikely",
            "a dbh lies among those of its species",
            "look the tree up; check the unit; measure again",
            Policy.DROP,
            Policy.KEEP),
    RATIO_UNLIKELY(
            "ratio-unlikely",
            "a height is between 15 and 200 times the dbh",
            "look the tree up; check both units",
            Policy.DROP,
            Policy.KEEP),
    UNIT_SLIP(
            "unit-slip",
            "a value is written in the unit that the design states",
            "look the tree up; mend the value or the unit",
            Policy.DROP,
            Policy.KEEP),
    PLOT_NOT_REACHED(
            "plot-not-reached",
            "each plot of the plan was reached",
            "run the plot, or drop it and say that the estimate holds for the part that can be reached",
            Policy.DROP),
    PLOT_CUT(
            "plot-cut",
            "each plot lies wholly inside its stratum",
            "keep it to expand its trees by the share inside, or drop it",
            Policy.DROP,
            Policy.KEEP),
    FELLED_COLUMN(
            "felled-column",
            "dbh, height and volume of felled trees, or the points of their stems, stand each in one column, with a unit",
            "name column and unit in the option, such as --volume NAME:ft3"),
    FELLED_VALUE(
            "felled-value",
            "a felled tree has a dbh, a height, and a volume or points of its stem, each a plain number that a tree can have",
            "look the tree up; --bad-rows drop leaves such rows out and lists them"),
    FELLED_REPEATED(
            "felled-repeated",
            "a felled tree stands in the table once",
            "give the tree its own name, or delete the row; --bad-rows drop leaves the later row out"),
    FELLED_UNLIKELY(
            "felled-unlikely",
            "a stem fills between 10 and 100 % of the cylinder of its dbh and height (common practice, no source)",
            "look the tree up; check the three units"),
    FELLED_POINT(
            "felled-point",
            "each point of a stem names its tree and lies above the point of the row before, below the total height",
            "sort the rows of a tree from the foot up and look the point up; the tip is no point; --bad-rows drop"
                    + " leaves such trees out and lists them"),
    FELLED_DIFFERS(
            "felled-differs",
            "all rows of a tree agree in dbh and height",
            "write the same in each row, or give the other tree its own name; --bad-rows drop leaves such trees out"),
    FELLED_STEM(
            "felled-stem",
            "a stem has two points or more, and is summed only if each of its rows can be used",
            "mend the other row, or measure more points; --bad-rows drop leaves such trees out"),
    FELLED_BULGE("felled-bulge", "a stem gets thinner upward", "look the point up; it is used as it stands"),
    FELLED_CUT(
            "felled-cut",
            "stump and top diameter cut a piece out of each stem: the stump lies on what was measured, the top diameter is"
                    + " below the dbh",
            "choose another --stump or --top; --bad-rows drop leaves such trees out"),
    FOREST_COLUMN(
            "forest-column",
            "a forest to simulate is a map of trees with x, y and dbh, or a stand table with dbh and trees_per_ha or"
                    + " trees_per_ac, each once and lengths with their unit",
            "name the columns as in x_m, y_m, dbh_cm, height_m, species, trees_per_ha, stratum"),
    FOREST_VALUE(
            "forest-value",
            "each tree of a forest to simulate has its place, a dbh above 0 and under 12 m, and stands there once; a height"
                    + " lies above 1.3 m and under 130 m",
            "mend the row, or take it out"),
    VOLUME_EQUATION_MISSING(
            "volume-equation-missing",
            "each species has a volume equation",
            "add [volume.CODE] for it, or [volume.\"*\"] for all the rest"),
    PLOT_FACT_UNUSABLE(
            "plot-fact-unusable",
            "the list of plots says of each plot what the estimator needs, and says it once and as the key explains",
            "mend the list of plots, or choose another estimator in [estimate]"),
    BOUNDARY_UNREADABLE(
            "boundary-unreadable",
            "a boundary file is GeoJSON, KML, WKT or GPX, not empty, and holds polygons or a walked track",
            "export the boundary again as polygons, best as GeoJSON; name its kind under tract.format"),
    BOUNDARY_POSITION(
            "boundary-position",
            "positions are finite, lie in the range of their map system, longitude or east first, and within one map zone",
            "name the system under tract.crs, or export again in longitude and latitude"),
    BOUNDARY_SHAPE(
            "boundary-shape",
            "a boundary returns to its start, does not cross or touch itself, holds its lakes, and has an area",
            "mend the boundary at the place named, in the map program that drew it"),
    BOUNDARY_WALK(
            "boundary-walk",
            "a walked boundary has three places or more and ends near its start",
            "walk the missing part, or draw it in a map program"),
    BOUNDARY_STRATUM(
            "boundary-stratum",
            "each polygon names a stratum of the design, and each stratum has a polygon",
            "write the code of the stratum into the property that tract.stratum_property names"),
    BOUNDARY_OVERLAP(
            "boundary-overlap",
            "no ground lies in two polygons, and strata lie inside the outline where one is given",
            "cut the polygons along one line in a map program"),
    BOUNDARY_AREA(
            "boundary-area",
            "the area on the map agrees with the design's within 2 % (common practice, no source)",
            "find out which is right; with keep the design's area counts, and the difference is listed",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    BOUNDARY_ABSURD(
            "boundary-absurd",
            "the area on the map is between half and twice the design's",
            "check tract.crs and tract.unit, the order of the coordinates, and the area in the design"),
    BOUNDARY_READ(
            "boundary-read",
            "what is made of a boundary beyond what its file says is stated",
            "nothing, if it is right; else mend the file",
            Policy.KEEP,
            EnumSet.of(Policy.REFUSE, Policy.KEEP)),
    STAND_LIST(
            "stand-list",
            "each row of a list of stands names a design, none twice, and stands have names of their own",
            "write the path of the design as seen from the list; name stands apart; spell columns as \"combine --help\" does"),
    TREE_UNNUMBERED(
            "tree-unnumbered",
            "trees of permanent plots have numbers, each once in its plot at either date",
            "write the number of the tag; mend numbers that stand twice"),
    TREE_ABSENT(
            "tree-absent",
            "each tree of the earlier date is found again, living or dead, unless remeasurement.absent says what became of it",
            "enter the tree with its status, or say absent = \"cut\" or \"dead\" in [remeasurement]"),
    STEM_MAP(
            "stem-map",
            "a map of stems has stems, and is more than twice as wide and as long as the reach of the largest plot compared",
            "map more ground, or leave the larger plots and the smaller factors out of [plan.kinds]"),
    STEM_MAP_ROW(
            "stem-map-row",
            "each row of a map of stems has a position within its corners and a dbh above 0 and under 12 m, and stands once",
            "mend the row or plan.kinds.corners; take copies, and stems without a position or dbh, out of the map"),
    STRATUM_ONE_PLOT(
            "stratum-one-plot",
            "each stratum has two plots or more, where the design asks for that",
            "run another plot there, join the stratum with another, or write one_plot = \"collapse\""),
    STRATUM_WITHOUT_PLOTS(
            "stratum-without-plots", "each stratum has a plot", "run plots in it, or take its area out of the design");

    private final String code;
    private final String sentence;
    private final String remedy;
    private final Policy defaultPolicy;

    @SuppressWarnings("ImmutableEnumChecker") // a copy that nothing changes
    private final Set<Policy> allowed;

    Rule(String code, String sentence, String remedy, Policy... besidesRefuse) {
        this(code, sentence, remedy, Policy.REFUSE, Policy.refuseOr(besidesRefuse));
    }

    Rule(String code, String sentence, String remedy, Policy defaultPolicy, Set<Policy> allowed) {
        this.code = code;
        this.sentence = sentence;
        this.remedy = remedy;
        this.defaultPolicy = defaultPolicy;
        this.allowed = Set.copyOf(allowed);
    }

    /** The name used in {@code [policy]} and in {@code problems.csv}. */
    public String code() {
        return code;
    }

    /** The rule in one sentence. */
    public String sentence() {
        return sentence;
    }

    /** What the user can do. */
    public String remedy() {
        return remedy;
    }

    /** The policy where the design names none. */
    public Policy defaultPolicy() {
        return defaultPolicy;
    }

    /** The policies a design may choose; a row that cannot be used cannot be kept. */
    public Set<Policy> allowed() {
        return allowed;
    }
}
