package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
import quadmean.model.HeightSource;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How far heights from the field lie off the curves in use. */
final class ResidualChart {
    private ResidualChart() {}

    static Optional<Picture> picture(CruiseResult result, SpeciesColours colours) {
        Map<String, HeightCurve> curves = new TreeMap<>();
        for (SpeciesCurve search : result.curves().species()) {
            HeightCurve curve = search.chosen();
            if (curve != null) {
                curves.put(search.species(), curve);
            }
        }
        Map<String, List<HeightedTree>> trees = trees(result, curves);
        if (trees.isEmpty()) {
            return Optional.empty();
        }
        UnitSystem units = result.design().units();
        XYChart chart = Drawing.xy(
                "Dbh (" + units.diameter().label() + ")",
                "Height minus curve (" + units.length().label() + ")",
                trees.size());
        chart.getStyler().setXAxisMin(0.0);
        zero(chart, trees, units);
        trees.forEach((species, own) -> {
            ToDoubleFunction<HeightedTree> off = t -> t.heightM()
                    - Objects.requireNonNull(curves.get(species))
                            .heightMetres(t.tree().dbhCm());
            points(chart, species, own, off, units, colours);
        });
        int count = trees.values().stream().mapToInt(List::size).sum();
        String title =
                "Heights from the field minus the curve of their species, against dbh. A trend means that the curve"
                        + " does not fit; a fan, that heights scatter more on thick trees.";
        String alt = "Scatter of " + count + " residuals of heights against dbh about zero, species "
                + String.join(", ", trees.keySet()) + ". trees.csv has the heights.";
        return Optional.of(Drawing.picture(chart, "residuals", title, alt));
    }

    private static Map<String, List<HeightedTree>> trees(CruiseResult result, Map<String, HeightCurve> curves) {
        List<HeightedTree> measured = result.trees().stream()
                .filter(t -> t.source() == HeightSource.MEASURED || t.source() == HeightSource.READING)
                .filter(t -> curves.containsKey(t.tree().species()))
                .toList();
        Map<String, List<HeightedTree>> trees = new TreeMap<>();
        HeightChart.thinned(measured)
                .forEach(t -> trees.computeIfAbsent(t.tree().species(), s -> new ArrayList<>())
                        .add(t));
        return trees;
    }

    private static void zero(XYChart chart, Map<String, List<HeightedTree>> trees, UnitSystem units) {
        double widest = trees.values().stream()
                .flatMap(List::stream)
                .mapToDouble(t -> t.tree().dbhCm())
                .max()
                .orElse(0);
        XYSeries line = chart.addSeries(
                "curve", new double[] {0, Unit.CENTIMETRE.convert(widest, units.diameter())}, new double[] {0, 0});
        line.setMarker(SeriesMarkers.NONE).setLineColor(Drawing.INK).setLineWidth(1.5f);
        line.setShowInLegend(false);
    }

    private static void points(
            XYChart chart,
            String species,
            List<HeightedTree> trees,
            ToDoubleFunction<HeightedTree> off,
            UnitSystem units,
            SpeciesColours colours) {
        double[] x = trees.stream()
                .mapToDouble(t -> Unit.CENTIMETRE.convert(t.tree().dbhCm(), units.diameter()))
                .toArray();
        double[] y = trees.stream()
                .mapToDouble(t -> Unit.METRE.convert(off.applyAsDouble(t), units.length()))
                .toArray();
        Color colour = colours.colour(species);
        XYSeries series = chart.addSeries("points " + species, x, y);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(colours.marker(species))
                .setMarkerColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 210));
        series.setLabel(species);
    }
}
