package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** For the best equation of each group of felled trees: observed against fitted volume, and residuals against dbh. */
public final class VolumeFitCharts {
    private static final Color POINT = new Color(0x22, 0x2B, 0x26, 130);
    private static final Color INFLUENTIAL = new Color(0xD55E00);
    private static final Color LINE = new Color(0x0072B2);

    private final UnitSystem units;

    private VolumeFitCharts(UnitSystem units) {
        this.units = units;
    }

    /** Two charts for each group that has an equation. */
    public static ChartSet of(VolumeFits fits) {
        VolumeFitCharts charts = new VolumeFitCharts(fits.settings().units());
        return ChartSet.drawn(() -> charts.pictures(fits));
    }

    private List<Picture> pictures(VolumeFits fits) {
        List<Picture> pictures = new ArrayList<>();
        int number = 0;
        for (VolumeFitGroup group : fits.groups()) {
            Optional<VolumeFit> best = group.best();
            if (best.isPresent()) {
                number++;
                pictures.add(observed(group, best.get(), "observed-" + number));
                pictures.add(residuals(group, best.get(), "residuals-" + number));
            }
        }
        return pictures;
    }

    private Picture observed(VolumeFitGroup group, VolumeFit fit, String id) {
        String unit = units.volume().label();
        XYChart chart = Drawing.xy("Fitted volume (" + unit + ")", "Observed volume (" + unit + ")", 3);
        chart.getStyler().setXAxisMin(0.0).setYAxisMin(0.0);
        double[] fitted = volumes(fit.fitted());
        double[] observed =
                volumes(fit.trees().stream().mapToDouble(t -> t.volumeM3()).toArray());
        points(chart, fit, fitted, observed);
        double most = Math.max(max(fitted), max(observed));
        line(chart, "observed = fitted", new double[] {0, most}, new double[] {0, most});
        String title = name(group) + ": observed against fitted volume of "
                + group.trees().size() + " trees, " + fit.form().formula()
                + ". On the line the two agree; orange trees move the fit most.";
        return Drawing.picture(chart, id, title, "Scatter about the line of equality. " + title);
    }

    private Picture residuals(VolumeFitGroup group, VolumeFit fit, String id) {
        XYChart chart = Drawing.xy("Dbh (" + units.diameter().label() + ")", "Observed minus fitted (% of fitted)", 3);
        double[] dbh = fit.trees().stream()
                .mapToDouble(t -> Unit.CENTIMETRE.convert(t.dbhCm(), units.diameter()))
                .toArray();
        double[] residuals = IntStream.range(0, dbh.length)
                .mapToDouble(i -> 100 * (fit.trees().get(i).volumeM3() / fit.fitted()[i] - 1))
                .toArray();
        points(chart, fit, dbh, residuals);
        line(chart, "no residual", new double[] {min(dbh), max(dbh)}, new double[] {0, 0});
        String title = name(group)
                + ": residuals against dbh. A trend means the form does not fit, a fan that the weights do not.";
        return Drawing.picture(chart, id, title, "Scatter of residuals in percent about zero. " + title);
    }

    private static String name(VolumeFitGroup group) {
        return group.code().equals(VolumeFitGroup.ALL) ? "All trees" : group.code();
    }

    private double[] volumes(double[] cubicMetres) {
        return IntStream.range(0, cubicMetres.length)
                .mapToDouble(i -> Unit.CUBIC_METRE.convert(cubicMetres[i], units.volume()))
                .toArray();
    }

    private static void points(XYChart chart, VolumeFit fit, double[] x, double[] y) {
        List<Integer> influential = fit.influential();
        List<Integer> others = HeightChart.thinned(IntStream.range(0, x.length)
                .filter(i -> !influential.contains(i))
                .boxed()
                .toList());
        scatter(chart, "trees", others, x, y, POINT);
        scatter(chart, "influential", influential, x, y, INFLUENTIAL);
    }

    private static void scatter(
            XYChart chart, String name, List<Integer> members, double[] x, double[] y, Color colour) {
        if (members.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(
                name,
                members.stream().mapToDouble(i -> x[i]).toArray(),
                members.stream().mapToDouble(i -> y[i]).toArray());
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(SeriesMarkers.CIRCLE).setMarkerColor(colour);
    }

    private static void line(XYChart chart, String name, double[] x, double[] y) {
        XYSeries series = chart.addSeries(name, x, y);
        series.setMarker(SeriesMarkers.NONE).setLineColor(LINE).setLineWidth(2f);
    }

    private static double max(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .max()
                .orElseThrow();
    }

    private static double min(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .min()
                .orElseThrow();
    }
}
