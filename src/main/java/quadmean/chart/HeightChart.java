package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
import quadmean.model.HeightSource;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Heights from the field against dbh, with the curves that fill the rest. */
final class HeightChart {
    private static final int MOST_POINTS = 2000;
    private static final int STEPS = 60;

    private HeightChart() {}

    static Optional<Picture> picture(CruiseResult result, SpeciesColours colours) {
        List<HeightedTree> measured = result.trees().stream()
                .filter(t -> t.source() == HeightSource.MEASURED || t.source() == HeightSource.READING)
                .toList();
        List<HeightedTree> shown = thinned(measured);
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        UnitSystem units = result.design().units();
        Map<String, HeightCurve> own = ownCurves(result);
        XYChart chart = Drawing.xy(
                "Dbh (" + units.diameter().label() + ")",
                "Height (" + units.length().label() + ")",
                own.size() + 2);
        chart.getStyler().setXAxisMin(0.0).setYAxisMin(0.0);
        own.forEach((species, curve) -> {
            points(chart, species, of(shown, species), units, colours.colour(species), colours.marker(species));
            curve(chart, species, curve, units, colours.colour(species));
        });
        List<HeightedTree> others =
                shown.stream().filter(t -> !own.containsKey(t.tree().species())).toList();
        points(chart, "other species", others, units, SpeciesColours.POOLED, SeriesMarkers.CROSS);
        String grey = pooled(chart, result, units);
        String count = shown.size() < measured.size() ? ", " + shown.size() + " of " + measured.size() + " shown" : "";
        String title = "Heights from the field against dbh" + count
                + ". Line: curve of the species, over the diameters it was fitted to" + grey + ".";
        String alt = "Scatter of " + shown.size() + " heights against dbh with a curve for species "
                + String.join(", ", own.keySet()) + grey + ". The table of height curves has the parameters.";
        return Optional.of(Drawing.picture(chart, "heights", title, alt));
    }

    /** The curves of species that have one of their own. */
    private static Map<String, HeightCurve> ownCurves(CruiseResult result) {
        Map<String, HeightCurve> own = new TreeMap<>();
        for (SpeciesCurve search : result.curves().species()) {
            HeightCurve curve = search.chosen();
            if (curve != null && search.isOwn()) {
                own.put(search.species(), curve);
            }
        }
        return own;
    }

    private static String pooled(XYChart chart, CruiseResult result, UnitSystem units) {
        HeightCurve curve = result.curves().pooled().chosen();
        if (curve == null) {
            return "";
        }
        curve(chart, "all species", curve, units, SpeciesColours.POOLED);
        return "; grey: all species together";
    }

    private static List<HeightedTree> of(List<HeightedTree> trees, String species) {
        return trees.stream().filter(t -> t.tree().species().equals(species)).toList();
    }

    private static void points(
            XYChart chart, String name, List<HeightedTree> trees, UnitSystem units, Color colour, Marker marker) {
        if (trees.isEmpty()) {
            return;
        }
        double[] x = trees.stream()
                .mapToDouble(t -> Unit.CENTIMETRE.convert(t.tree().dbhCm(), units.diameter()))
                .toArray();
        double[] y = trees.stream()
                .mapToDouble(t -> Unit.METRE.convert(t.heightM(), units.length()))
                .toArray();
        XYSeries series = chart.addSeries("points " + name, x, y);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(marker).setMarkerColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 150));
        series.setLabel(name);
    }

    private static void curve(XYChart chart, String name, HeightCurve curve, UnitSystem units, Color colour) {
        double[] x = new double[STEPS + 1];
        double[] y = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double dbh = curve.minDbhCm() + (curve.maxDbhCm() - curve.minDbhCm()) * i / STEPS;
            x[i] = Unit.CENTIMETRE.convert(dbh, units.diameter());
            y[i] = Unit.METRE.convert(curve.heightMetres(dbh), units.length());
        }
        XYSeries series = chart.addSeries("curve " + name, x, y);
        series.setMarker(SeriesMarkers.NONE).setLineColor(colour).setLineWidth(2.5f);
        series.setShowInLegend(colour.equals(SpeciesColours.POOLED));
        series.setLabel(name);
    }

    static <T> List<T> thinned(List<T> trees) {
        int step = Math.max(1, (trees.size() + MOST_POINTS - 1) / MOST_POINTS);
        List<T> kept = new ArrayList<>();
        for (int i = 0; i < trees.size(); i += step) {
            kept.add(trees.get(i));
        }
        return kept;
    }
}
