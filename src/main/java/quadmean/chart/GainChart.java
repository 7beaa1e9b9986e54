package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.GainPoint;
import quadmean.estimate.PlotShares;
import quadmean.estimate.PlotsNeeded;
import quadmean.stats.Allocation;

/** What more plots bring: the sampling error to expect against the number of plots, marked at now and at the target. */
final class GainChart {
    private static final Color BY_AREA = new Color(0x14532D);
    private static final Color BY_VARIATION = new Color(0x1D4ED8);
    private static final Color TARGET = new Color(0xA23B00);
    private static final int MARKS = 3;
    /** Drawing units between the numbers of plots, so that those of three digits stay apart. */
    private static final int TICKS_APART = 100;
    /** The line of the target reaches so many plots further: numbers at equal steps alone would bring ticks that run together. */
    private static final double BEYOND = 0.5;

    private GainChart() {}

    static Optional<Picture> picture(CruiseResult result) {
        if (result.estimate().needed().isEmpty()) {
            return Optional.empty();
        }
        PlotsNeeded needed = result.estimate().needed().get(0);
        List<PlotShares> shares =
                needed.shares().stream().filter(s -> s.gain().size() > 1).toList();
        if (shares.isEmpty()) {
            return Optional.empty();
        }
        XYChart chart = Drawing.xy("Plots in all", "Expected sampling error (%)", shares.size() + MARKS);
        chart.getStyler().setXAxisTickMarkSpacingHint(TICKS_APART);
        chart.getStyler().setYAxisMin(0.0).setPlotGridVerticalLinesVisible(false);
        shares.forEach(s -> curve(chart, s));
        target(chart, shares, result.design().targetErrorPercent());
        PlotShares first = shares.get(0);
        GainPoint now = first.gain().get(0);
        mark(chart, "Now", now.plots(), now.errorPercent(), SeriesMarkers.CIRCLE);
        if (first.more() > 0) {
            mark(chart, "At target", first.needed(), first.expectedErrorPercent(), SeriesMarkers.DIAMOND);
        }
        String what = Wording.capital(needed.attribute().label());
        String level = Wording.confidence(result.estimate().confidence());
        String error = "±" + Wording.percent(result.design().targetErrorPercent());
        String title = what + ": sampling error to expect at " + level
                + " confidence against the number of plots, if they vary like those already run. Dashed: the target of "
                + error + "." + Wording.targetRemark(result.design(), result.used());
        String alt = "Falling line of the expected sampling error of "
                + needed.attribute().label() + " from " + now.plots() + " plots now to "
                + first.gain().get(first.gain().size() - 1).plots() + " plots; the target of " + error
                + " as a dashed line, "
                + (first.more() > 0 ? "reached at " + first.needed() + " plots." : "reached now.");
        return Optional.of(Drawing.picture(chart, "gain", title, alt));
    }

    private static void curve(XYChart chart, PlotShares shares) {
        double[] x = shares.gain().stream().mapToDouble(GainPoint::plots).toArray();
        double[] y = shares.gain().stream().mapToDouble(GainPoint::errorPercent).toArray();
        String name = shares.strata().size() == 1
                ? "Expected error"
                : Wording.capital(shares.allocation().label());
        chart.addSeries(name, x, y)
                .setMarker(SeriesMarkers.NONE)
                .setLineColor(shares.allocation() == Allocation.NEYMAN ? BY_VARIATION : BY_AREA)
                .setLineWidth(2.5f);
    }

    private static void target(XYChart chart, List<PlotShares> shares, double percent) {
        double from = shares.get(0).gain().get(0).plots();
        double to = shares.stream()
                .flatMap(s -> s.gain().stream())
                .mapToDouble(GainPoint::plots)
                .max()
                .orElse(from);
        XYSeries line =
                chart.addSeries("Target", new double[] {from - BEYOND, to + BEYOND}, new double[] {percent, percent});
        line.setMarker(SeriesMarkers.NONE).setLineColor(TARGET).setLineWidth(1.5f);
        line.setLineStyle(
                new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 5}, 0));
    }

    private static void mark(XYChart chart, String name, double plots, double percent, Marker marker) {
        XYSeries point = chart.addSeries(name, new double[] {plots}, new double[] {percent});
        point.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        point.setMarker(marker).setMarkerColor(TARGET);
    }
}
