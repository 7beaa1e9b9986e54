package quadmean.design;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.model.HeightFilling;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;

/** Whether a design asks of an estate only what an estate offers: everything that a plot can give by itself, in one pass. */
final class EstateChecks {
    /** Tables that need the plots of a stand side by side, or say of one stand what the table of stands says of each. */
    private static final Map<String, String> NOT_OFFERED = new TreeMap<>(Map.ofEntries(
            Map.entry("stratum", "the table of stands has a column for the stratum"),
            Map.entry("tract", "an estate has no map"),
            Map.entry("layout", "an estate has no map"),
            Map.entry("plan", "plan stands one by one"),
            Map.entry("simulate", "simulate stands one by one"),
            Map.entry("audit", "audit stands one by one"),
            Map.entry("crew", "audit stands one by one"),
            Map.entry("progress", "follow stands one by one"),
            Map.entry("remeasurement", "remeasure stands one by one"),
            Map.entry("estimate", "each stand of an estate is a simple random sample, its limits are by Student's t"),
            Map.entry("errors", "the error budget is worked out of stands one by one"),
            Map.entry("logs", "stems are cut into logs of stands one by one"),
            Map.entry("product", "stems are cut into logs of stands one by one"),
            Map.entry("price", "stems are cut into logs of stands one by one"),
            Map.entry("prices", "stems are cut into logs of stands one by one"),
            Map.entry("threep", "3P sampling is worked out of stands one by one")));

    private static final List<String> OF_ONE_STAND =
            List.of("plots", "plot_list", "not_reached", "cut", "method", "spacing");

    private EstateChecks() {}

    static void check(Section root, Section cruise, Section selection, Design design) {
        boolean isEstate = design.estate().isPresent();
        for (TallyFile tally : design.tallies()) {
            if (isEstate != tally.columns().containsKey(ColumnRole.STAND)) {
                root.problem(
                        isEstate ? Rule.DESIGN_MISSING : Rule.DESIGN_VALUE,
                        "tally",
                        tally.name(),
                        isEstate
                                ? "the tally of an estate names the stand of each row: add stand to [tally.columns]"
                                : "a column for the stand is of use in an estate only: take stand out of"
                                        + " [tally.columns], or describe the stands in [estate]");
            }
        }
        if (isEstate) {
            NOT_OFFERED.forEach((table, why) -> refuse(root, table, why));
            OF_ONE_STAND.forEach(key -> refuse(selection, key, "an estate has plots in every stand"));
            refuse(cruise, "area", "the table of stands has the areas");
            checkPlot(root, design);
        }
    }

    private static void refuse(Section s, String key, String why) {
        if (s.has(key)) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    key,
                    "",
                    "an estate does not take " + key + ": " + why + "; take it out, or work the stands one by one");
        }
    }

    private static void checkPlot(Section root, Design design) {
        PlotDesign plot = design.plot();
        boolean isOffered = plot instanceof PlotDesign.Fixed
                || plot instanceof PlotDesign.Nested
                || plot instanceof PlotDesign.Point;
        if (!isOffered || !(plot.measuring() instanceof Measuring.All)) {
            root.problem(
                    Rule.DESIGN_VALUE,
                    "plot",
                    "",
                    "an estate has fixed or nested plots, or points, on which every tree is measured");
        }
        if (design.height().curves().filling() == HeightFilling.DRAWN) {
            root.problem(
                    Rule.DESIGN_VALUE,
                    "height",
                    HeightFilling.DRAWN.id(),
                    "an estate fills heights with the mean of the curve: take fill out of [height]");
        }
    }
}
