package quadmean.report;

import java.util.List;
import quadmean.design.Design;
import quadmean.model.PlotDesign;
import quadmean.plan.KindComparison;
import quadmean.plan.KindName;
import quadmean.plan.KindOption;
import quadmean.units.UnitSystem;

/** Kinds of plot compared, as {@code kinds.csv}. */
public final class KindsCsv {
    private KindsCsv() {}

    /** The table, with numbers unrounded and the size in the unit named beside it. */
    public static Content of(Design design, KindComparison kinds) {
        List<String> header = List.of(
                "kind",
                "size",
                "unit",
                "trees_per_plot",
                "cv_by_rule_percent",
                "cv_by_map_percent",
                "cv_by_pilot_percent",
                "plots",
                "walk_m",
                "walking_h",
                "setup_h",
                "trees_h",
                "total_h",
                "remark");
        return Csv.seeded(Csv.of(header, kinds.options().stream().map(o -> row(o, design.units()))), design.seed());
    }

    private static List<String> row(KindOption o, UnitSystem units) {
        KindOption.Work w = o.work();
        return List.of(
                kind(o),
                Csv.number(KindName.size(o.plot(), units)),
                KindName.unit(o.plot(), units).symbol(),
                Csv.number(o.treesPerPlot()),
                Csv.number(o.cvByRulePercent()),
                Csv.number(o.cvByMapPercent()),
                Csv.number(o.cvByPilotPercent()),
                o.plots().isPresent() ? "" + o.plots().getAsInt() : "",
                Csv.number(w.walkM()),
                Csv.number(w.walkingHours()),
                Csv.number(w.setUpHours()),
                Csv.number(w.treeHours()),
                Csv.number(w.hours()),
                KindsPart.remark(o));
    }

    /** The word for a kind that designs use. */
    static String kind(KindOption o) {
        return o.plot() instanceof PlotDesign.Point ? "point" : "fixed";
    }
}
