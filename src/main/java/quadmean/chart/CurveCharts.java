package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CurvesRun;
import quadmean.height.CurveScope;
import quadmean.height.HeightBand;
import quadmean.height.HeightCurve;
import quadmean.height.SpeciesCurve;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** For every curve fitted: heights with the curve and its bands, and residuals against dbh. */
public final class CurveCharts {
    private static final int STEPS = 60;
    private static final double BEYOND = 1.25;
    private static final Color POINT = new Color(0x22, 0x2B, 0x26, 110);
    private static final Color CURVE = new Color(0x0072B2);
    private static final Color CONFIDENCE = new Color(0x009E73);
    private static final Color PREDICTION = new Color(0xD55E00);
    private static final float[] DASHES = {7, 5};

    private final UnitSystem units;
    private final double confidence;

    private CurveCharts(UnitSystem units, double confidence) {
        this.units = units;
        this.confidence = confidence;
    }

    /** Two charts for each species, group and all species together that has a curve of its own. */
    public static ChartSet of(CurvesRun.Result result) {
        CurveCharts charts =
                new CurveCharts(result.design().units(), result.design().confidence());
        return ChartSet.drawn(() -> charts.pictures(result));
    }

    private List<Picture> pictures(CurvesRun.Result result) {
        List<Picture> pictures = new ArrayList<>();
        int number = 0;
        for (SpeciesCurve search : result.curves().searches()) {
            HeightCurve curve = search.chosen();
            if (curve != null && search.isOwn()) {
                List<Tree> trees = measured(result, search);
                number++;
                pictures.add(heights(search, curve, trees, "curve-" + number));
                pictures.add(residuals(search, curve, trees, "residuals-" + number));
            }
        }
        return pictures;
    }

    private static List<Tree> measured(CurvesRun.Result result, SpeciesCurve search) {
        return result.trees().stream()
                .filter(t -> t.height() != null && belongs(result, search, t))
                .toList();
    }

    private static boolean belongs(CurvesRun.Result result, SpeciesCurve search, Tree tree) {
        return switch (search.scope()) {
            case POOLED -> true;
            case SPECIES -> tree.species().equals(search.species());
            case GROUP -> {
                var entry = result.design().species().get(tree.species());
                yield entry != null && entry.group().equals(search.species());
            }
        };
    }

    private Picture heights(SpeciesCurve search, HeightCurve curve, List<Tree> trees, String id) {
        XYChart chart = Drawing.xy(dbhTitle(), "Height (" + units.length().label() + ")", 4);
        chart.getStyler().setXAxisMin(0.0).setYAxisMin(0.0);
        points(chart, trees, t -> heightM(t));
        line(chart, "curve", curve, HeightBand::metres, CURVE);
        dashed(line(chart, "confidence", curve, b -> b.metres() - b.curveHalf(), CONFIDENCE));
        dashed(line(chart, "confidence above", curve, b -> b.metres() + b.curveHalf(), CONFIDENCE))
                .setShowInLegend(false);
        dashed(line(chart, "prediction", curve, b -> Math.max(0, b.metres() - b.treeHalf()), PREDICTION));
        dashed(line(chart, "prediction above", curve, b -> b.metres() + b.treeHalf(), PREDICTION))
                .setShowInLegend(false);
        String title = name(search) + ": " + trees.size() + " heights, curve of "
                + curve.form().label() + " with " + Wording.confidence(confidence)
                + " confidence and prediction bands.";
        String alt = "Scatter of heights against dbh with a fitted curve and two bands. " + title;
        return Drawing.picture(chart, id, title, alt);
    }

    private Picture residuals(SpeciesCurve search, HeightCurve curve, List<Tree> trees, String id) {
        XYChart chart =
                Drawing.xy(dbhTitle(), "Height minus curve (" + units.length().label() + ")", 1);
        chart.getStyler().setXAxisMin(0.0).setLegendVisible(false);
        points(chart, trees, t -> heightM(t) - curve.heightMetres(t.dbhCm()));
        double[] ends = {0, Unit.CENTIMETRE.convert(curve.maxDbhCm(), units.diameter())};
        XYSeries zero = chart.addSeries("zero", ends, new double[] {0, 0});
        zero.setMarker(SeriesMarkers.NONE).setLineColor(CURVE).setLineWidth(2f);
        String title =
                name(search) + ": residuals against dbh. A trend means the form does not fit, a fan that the scatter"
                        + " grows with dbh.";
        return Drawing.picture(chart, id, title, "Scatter of residuals against dbh about zero. " + title);
    }

    private static String name(SpeciesCurve search) {
        return search.scope() == CurveScope.POOLED
                ? "All species"
                : (search.scope() == CurveScope.GROUP ? "Group " : "") + search.species();
    }

    private String dbhTitle() {
        return "Dbh (" + units.diameter().label() + ")";
    }

    private static double heightM(Tree tree) {
        FieldHeight height = Objects.requireNonNull(tree.height(), "a measured tree");
        return height.metres();
    }

    private void points(XYChart chart, List<Tree> trees, ToDoubleFunction<Tree> metres) {
        List<Tree> shown = HeightChart.thinned(trees);
        double[] x = shown.stream()
                .mapToDouble(t -> Unit.CENTIMETRE.convert(t.dbhCm(), units.diameter()))
                .toArray();
        double[] y = shown.stream()
                .mapToDouble(t -> Unit.METRE.convert(metres.applyAsDouble(t), units.length()))
                .toArray();
        XYSeries series = chart.addSeries("heights", x, y);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(SeriesMarkers.CIRCLE).setMarkerColor(POINT);
    }

    private XYSeries line(
            XYChart chart, String name, HeightCurve curve, ToDoubleFunction<HeightBand> metres, Color colour) {
        double[] x = new double[STEPS + 1];
        double[] y = new double[STEPS + 1];
        double low = curve.minDbhCm() / 2;
        double high = BEYOND * curve.maxDbhCm();
        for (int i = 0; i <= STEPS; i++) {
            double dbh = low + (high - low) * i / STEPS;
            x[i] = Unit.CENTIMETRE.convert(dbh, units.diameter());
            y[i] = Unit.METRE.convert(metres.applyAsDouble(curve.band(dbh, confidence)), units.length());
        }
        XYSeries series = chart.addSeries(name, x, y);
        series.setMarker(SeriesMarkers.NONE).setLineColor(colour).setLineWidth(2.5f);
        return series;
    }

    private static XYSeries dashed(XYSeries series) {
        series.setLineStyle(new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASHES, 0));
        return series;
    }
}
