package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.estimate.RunningMean;
import quadmean.units.Attribute;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How the estimate and its confidence limits settled as plots came in. */
final class RunningMeanChart {
    private static final Color LINE = new Color(0x14532D);
    private static final Color BAND = new Color(0xCFE3D4);
    private static final Color TARGET = new Color(0xA23B00);
    private static final int MOST_POINTS = 600;

    private RunningMeanChart() {}

    static Optional<Picture> picture(CruiseResult result) {
        List<RunningMean> means = thinned(result.estimate().running().stream()
                .filter(m -> Double.isFinite(m.mean()))
                .toList());
        if (means.size() < 2) {
            return Optional.empty();
        }
        Design design = result.design();
        Attribute attribute = design.targetAttribute();
        XYChart chart = Drawing.xy("Plots so far", Wording.axis(result.design(), attribute, design.units()), 3);
        chart.getStyler()
                .setXAxisMin(Math.floor(means.get(0).plots() / 10.0) * 10)
                .setPlotGridVerticalLinesVisible(false);
        chart.getStyler().setxAxisTickLabelsFormattingFunction(RunningMeanChart::whole);
        String limits = Wording.confidence(result.estimate().confidence()) + " limits";
        addBand(chart, means, design, limits);
        addTarget(chart, means, design);
        double[] x = means.stream().mapToDouble(RunningMean::plots).toArray();
        double[] y = means.stream().mapToDouble(m -> shown(design, m.mean())).toArray();
        line(chart.addSeries("Estimate", x, y), LINE, 2.5f);
        String target = "±" + Wording.percent(design.targetErrorPercent());
        String what = Wording.perArea(attribute, design.units());
        String title = Wording.capital(what) + " as plots came in. Band: " + limits + "; dashed: target band of "
                + target + " about the final estimate." + byFormula(design)
                + Wording.targetRemark(result.design(), result.used());
        String alt = "Line of the estimate of " + what + " after each of "
                + means.get(means.size() - 1).plots()
                + " plots, its " + limits + " as a band, and the target band of " + target
                + " about the final estimate as dashed lines.";
        return Optional.of(Drawing.picture(chart, "running-mean", title, alt));
    }

    private static String byFormula(Design design) {
        return switch (design.estimation().interval()) {
            case STUDENT_T, LOG_SCALE -> "";
            case PERCENTILE, BCA -> " The band is by Student's t, not by the bootstrap of the report.";
        };
    }

    private static void addBand(XYChart chart, List<RunningMean> all, Design design, String limits) {
        List<RunningMean> means = all.stream()
                .filter(m -> Double.isFinite(m.lower()) && Double.isFinite(m.upper()))
                .toList();
        if (means.size() < 2) {
            return;
        }
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (RunningMean m : means) {
            x.add((double) m.plots());
            y.add(shown(design, m.lower()));
        }
        for (int i = means.size() - 1; i >= 0; i--) {
            x.add((double) means.get(i).plots());
            y.add(shown(design, means.get(i).upper()));
        }
        XYSeries band = chart.addSeries(limits, x, y);
        band.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        band.setFillColor(BAND).setLabel(limits);
        line(band, BAND, 1f);
        frame(chart, means, all, design);
    }

    /** Keeps the very wide limits after the first few plots from flattening all the rest. */
    private static void frame(XYChart chart, List<RunningMean> means, List<RunningMean> all, Design design) {
        List<RunningMean> settled = means.subList(Math.min(means.size() - 1, 3), means.size());
        double low = settled.stream().mapToDouble(RunningMean::lower).min().orElse(0);
        double high = settled.stream().mapToDouble(RunningMean::upper).max().orElse(0);
        low = Math.min(low, all.stream().mapToDouble(RunningMean::mean).min().orElse(low));
        high = Math.max(high, all.stream().mapToDouble(RunningMean::mean).max().orElse(high));
        chart.getStyler().setYAxisMin(shown(design, Math.max(0, low))).setYAxisMax(shown(design, high));
    }

    private static void addTarget(XYChart chart, List<RunningMean> means, Design design) {
        RunningMean last = means.get(means.size() - 1);
        double[] x = {means.get(0).plots(), last.plots()};
        for (int sign = -1; sign <= 1; sign += 2) {
            double edge = shown(design, last.mean() * (1 + sign * design.targetErrorPercent() / 100));
            XYSeries series = chart.addSeries("Target " + sign, x, new double[] {edge, edge});
            line(series, TARGET, 1.5f);
            series.setLineStyle(
                    new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 5}, 0));
            series.setShowInLegend(sign < 0);
            series.setLabel("Target band");
        }
    }

    private static void line(XYSeries series, Color colour, float width) {
        series.setMarker(SeriesMarkers.NONE).setLineColor(colour).setLineWidth(width);
    }

    private static double shown(Design design, double metric) {
        Attribute attribute = design.targetAttribute();
        Unit from = attribute.unit(Wording.comparable(attribute), UnitSystem.METRIC);
        return from.convert(metric, attribute.unit(Wording.comparable(attribute), design.units()));
    }

    private static String whole(double plots) {
        return plots == Math.rint(plots) ? Drawing.tick(plots) : "";
    }

    /** At most so many points, the last one among them. */
    private static List<RunningMean> thinned(List<RunningMean> means) {
        int step = (means.size() + MOST_POINTS - 1) / MOST_POINTS;
        List<RunningMean> kept = new ArrayList<>();
        for (int i = 0; i < means.size(); i++) {
            if ((means.size() - 1 - i) % Math.max(1, step) == 0) {
                kept.add(means.get(i));
            }
        }
        return kept;
    }
}
