package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.plan.CruisePlan;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.CurvePoint;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.SampleKind;

/** What a plan trades: error against plots, error against cost, and how plots are shared among strata. */
public final class PlanCharts {
    private static final Color TARGET = new Color(0xA23B00);
    /** Told apart by people who see few colours, and by their brightness. */
    private static final List<Color> COLOURS = List.of(
            new Color(0x14532D),
            new Color(0x1D4ED8),
            new Color(0xC026A3),
            new Color(0x0E9AA7),
            new Color(0x8A5A00),
            new Color(0x555555),
            new Color(0x9B1C1C));

    private static final List<float[]> DASHES =
            List.of(new float[] {1, 0}, new float[] {9, 5}, new float[] {2, 4}, new float[] {12, 4, 2, 4});

    private final CruisePlan plan;

    private PlanCharts(CruisePlan plan) {
        this.plan = plan;
    }

    /** The charts of a plan, those that have something to show. */
    public static ChartSet of(CruisePlan plan) {
        return ChartSet.drawn(new PlanCharts(plan)::pictures);
    }

    private List<Picture> pictures() {
        List<Picture> pictures = new ArrayList<>();
        List<PlanOption> byPlots = drawn(o -> o.kind().isPlots());
        if (!byPlots.isEmpty()) {
            pictures.add(curves("plots", "Plots", byPlots, CurvePoint::plots, Size::plots));
        }
        List<PlanOption> all = drawn(o -> true);
        if (plan.costs().areStated() && !all.isEmpty()) {
            pictures.add(curves("cost", "Cost (" + plan.costs().unit() + ")", all, CurvePoint::cost, Size::cost));
        }
        List<PlanOption> shared = plan.options().stream()
                .filter(o -> o.kind() == SampleKind.STRATIFIED && o.isReachable())
                .toList();
        if (!shared.isEmpty()) {
            pictures.add(shares(shared));
        }
        return pictures;
    }

    private List<PlanOption> drawn(java.util.function.Predicate<PlanOption> wanted) {
        return plan.options().stream()
                .filter(o -> o.curve().size() > 1)
                .filter(wanted)
                .toList();
    }

    private Picture curves(
            String id,
            String axis,
            List<PlanOption> options,
            ToDoubleFunction<CurvePoint> x,
            ToDoubleFunction<Size> at) {
        XYChart chart = Drawing.listed(axis, "Expected sampling error (%)", options.size() + 2);
        double target = plan.target().errorPercent();
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(3 * target).setPlotGridVerticalLinesVisible(false);
        double from = Double.POSITIVE_INFINITY;
        double to = 0;
        for (int i = 0; i < options.size(); i++) {
            List<CurvePoint> points = options.get(i).curve().stream()
                    .filter(p -> p.errorPercent() <= 3 * target)
                    .toList();
            if (points.isEmpty()) {
                continue;
            }
            double[] xs = points.stream().mapToDouble(x).toArray();
            from = Math.min(from, xs[0]);
            to = Math.max(to, xs[xs.length - 1]);
            line(chart, options.get(i).name(), xs, points, i);
        }
        target(chart, from, to, target);
        List<Size> reached =
                options.stream().flatMap(o -> o.atTarget().stream()).toList();
        if (!reached.isEmpty()) {
            XYSeries marks = chart.addSeries(
                    "All targets reached",
                    reached.stream().mapToDouble(at).toArray(),
                    reached.stream().mapToDouble(Size::errorPercent).toArray());
            marks.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
            marks.setMarker(SeriesMarkers.DIAMOND).setMarkerColor(TARGET);
        }
        String title =
                "Sampling error to expect of the " + plan.target().attribute().label() + " at "
                        + Wording.confidence(plan.target().confidence()) + " confidence against "
                        + (id.equals("plots") ? "the number of plots" : "cost") + ". Dashed: the target of ±"
                        + Wording.percent(target) + "; diamonds: the plans that reach it.";
        return Drawing.picture(chart, "plan-" + id, title, alt(options, at, id));
    }

    private String alt(List<PlanOption> options, ToDoubleFunction<Size> at, String what) {
        List<String> words = options.stream()
                .map(o -> o.name() + ": "
                        + o.atTarget()
                                .map(s -> Wording.plain(Math.rint(at.applyAsDouble(s) * 10) / 10) + " "
                                        + (what.equals("plots")
                                                ? "plots"
                                                : plan.costs().unit()))
                                .orElse("out of reach"))
                .toList();
        return "Falling lines of the expected sampling error; the target of ±"
                + Wording.percent(plan.target().errorPercent()) + " takes: " + String.join("; ", words) + ".";
    }

    private static void line(XYChart chart, String name, double[] xs, List<CurvePoint> points, int i) {
        XYSeries line = chart.addSeries(
                Wording.capital(name),
                xs,
                points.stream().mapToDouble(CurvePoint::errorPercent).toArray());
        line.setMarker(SeriesMarkers.NONE).setLineColor(COLOURS.get(i % COLOURS.size()));
        line.setLineStyle(new BasicStroke(
                2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASHES.get(i % DASHES.size()), 0));
    }

    private static void target(XYChart chart, double from, double to, double percent) {
        if (!(from <= to)) {
            return;
        }
        XYSeries line = chart.addSeries("Target", new double[] {from, to}, new double[] {percent, percent});
        line.setMarker(SeriesMarkers.NONE).setLineColor(TARGET).setLineWidth(1.5f);
        line.setLineStyle(
                new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 5}, 0));
    }

    private Picture shares(List<PlanOption> options) {
        CategoryChart chart = Drawing.bars("Stratum", "Plots", options.size());
        for (int i = 0; i < options.size(); i++) {
            PlanOption o = options.get(i);
            String first = o.name().substring(0, o.name().indexOf(' '));
            chart.addSeries(Wording.capital(first), o.partNames(), o.plots())
                    .setFillColor(COLOURS.get(i % COLOURS.size()));
        }
        List<String> words = options.stream()
                .map(o -> o.name() + " " + o.parts(o.atTarget().orElseThrow()))
                .toList();
        String title = "Plots of each stratum where the targets are reached, by the way they are shared.";
        return Drawing.picture(
                chart, "plan-shares", title, "Bars of plots by stratum. " + String.join("; ", words) + ".");
    }
}
