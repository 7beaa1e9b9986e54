package quadmean.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import quadmean.chart.ChartSet;
import quadmean.chart.KindsChart;
import quadmean.chart.PlanCharts;
import quadmean.design.Design;
import quadmean.layout.FieldPlan;
import quadmean.plan.CruisePlan;
import quadmean.plan.KindComparison;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.SampleKind;
import quadmean.plan.StratumOutlook;

/** The files that a plan is written to. */
public final class PlanOutputs {
    private static final List<String> HEADER = List.of(
            "option",
            "kind",
            "size_for",
            "part",
            "area_ha",
            "expected_cv_percent",
            "units",
            "plots",
            "cost",
            "cost_unit",
            "expected_error_percent");

    private PlanOutputs() {}

    /** Content by file name: {@code plan.html}, {@code plan.json} and {@code plan.csv}; with the kinds of plot compared and the layout, if any. */
    public static Map<String, Content> of(
            Design design, CruisePlan plan, Optional<KindComparison> kinds, Optional<FieldPlan> field) {
        Map<String, Content> files = new LinkedHashMap<>();
        ChartSet charts = PlanCharts.of(plan);
        files.put("plan.html", PlanPage.of(design, plan, charts, kinds, field));
        ObjectNode root = PlanJson.tree(design, plan);
        kinds.ifPresent(k -> root.set("kinds", KindsJson.node(k, design.units())));
        field.ifPresent(f -> root.set("layout", LayoutJson.of(design, f)));
        files.put("plan.json", JsonFile.of(root));
        files.put(
                "plan.csv",
                Csv.seeded(Csv.of(HEADER, plan.options().stream().flatMap(o -> rows(plan, o))), design.seed()));
        files.putAll(ChartFiles.of(charts.pictures()));
        kinds.filter(k -> charts.missing().isEmpty())
                .ifPresent(k -> files.putAll(ChartFiles.of(List.of(KindsChart.picture(k, design.units())))));
        return files;
    }

    private static Stream<List<String>> rows(CruisePlan plan, PlanOption option) {
        List<List<String>> rows = new ArrayList<>();
        option.atTarget().ifPresent(s -> add(rows, plan, option, "target", s));
        option.surer()
                .forEach(p -> p.size().ifPresent(s -> {
                    String what = Math.round(100 * p.probability()) + " % assurance, spread "
                            + p.spread().id();
                    add(rows, plan, option, what, s);
                }));
        option.inBudget().ifPresent(s -> add(rows, plan, option, "budget", s));
        if (rows.isEmpty()) {
            rows.add(List.of(option.name(), option.kind().id(), "target", "*", "", "", "", "", "", "", ""));
        }
        return rows.stream();
    }

    private static void add(List<List<String>> rows, CruisePlan plan, PlanOption option, String what, Size size) {
        boolean strata = option.kind() == SampleKind.STRATIFIED;
        for (int i = 0; i < option.partNames().size(); i++) {
            StratumOutlook s = strata ? plan.outlook().get(i) : null;
            rows.add(List.of(
                    option.name(),
                    option.kind().id(),
                    what,
                    option.partNames().get(i),
                    s == null ? "" : Csv.number(s.areaHa()),
                    s == null ? "" : Csv.number(s.cvPercent()),
                    Integer.toString(size.units().get(i)),
                    "",
                    "",
                    "",
                    ""));
        }
        rows.add(List.of(
                option.name(),
                option.kind().id(),
                what,
                "*",
                Csv.number(plan.targets().get(0).areaHa()),
                Csv.number(plan.targets().get(0).cvPercent()),
                "",
                Integer.toString(size.plots()),
                plan.costs().areStated() ? Csv.number(size.cost()) : "",
                plan.costs().areStated() ? plan.costs().unit() : "",
                Csv.number(size.errorPercent())));
    }
}
