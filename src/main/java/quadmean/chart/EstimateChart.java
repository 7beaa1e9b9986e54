package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** The target attribute by species, and by stratum where there are several, with confidence limits. */
final class EstimateChart {
    private static final Color STRATUM = new Color(0x5F7A6B);
    private static final int LEVEL_LABELS = 7;
    private static final int LONGEST_LABEL = 14;

    private EstimateChart() {}

    /** What is drawn, and how it is spoken of. */
    private record Drawn(Design design, double confidence, List<EstimateRow> rows, String remark) {
        UnitSystem units() {
            return design.units();
        }

        Attribute attribute() {
            return design.targetAttribute();
        }
    }

    static List<Picture> pictures(CruiseResult result, SpeciesColours colours) {
        boolean hasStrata = result.design().strata().size() > 1;
        List<EstimateRow> rows = result.estimate().wholeRows().stream()
                .filter(r -> hasStrata || r.stratum().equals(EstimateRow.ALL))
                .toList();
        return pictures(
                new Drawn(
                        result.design(),
                        result.estimate().confidence(),
                        rows,
                        Wording.targetRemark(result.design(), result.used())),
                colours);
    }

    static List<Picture> pictures(EstateResult result, SpeciesColours colours) {
        return pictures(
                new Drawn(
                        result.design(),
                        result.estimate().confidence(),
                        result.estimate().rows(),
                        Wording.targetRemark(result.design(), result.used())),
                colours);
    }

    private static List<Picture> pictures(Drawn drawn, SpeciesColours colours) {
        List<Picture> pictures = new ArrayList<>();
        List<EstimateRow> species = rows(drawn).stream()
                .filter(r -> r.stratum().equals(EstimateRow.ALL) && !r.species().equals(EstimateRow.ALL))
                .toList();
        if (!species.isEmpty()) {
            pictures.add(picture(drawn, species, "species", EstimateRow::species, r -> colours.colour(r.species())));
        }
        List<EstimateRow> strata = rows(drawn).stream()
                .filter(r -> !r.stratum().equals(EstimateRow.ALL) && r.species().equals(EstimateRow.ALL))
                .toList();
        if (!strata.isEmpty()) {
            pictures.add(picture(drawn, strata, "stratum", EstimateRow::stratum, r -> STRATUM));
        }
        return pictures;
    }

    /** The rows of the target attribute that have an estimate. */
    private static List<EstimateRow> rows(Drawn drawn) {
        Basis basis = Wording.comparable(drawn.attribute());
        return drawn.rows().stream()
                .filter(r -> r.attribute() == drawn.attribute() && r.basis() == basis && Double.isFinite(r.mean()))
                .toList();
    }

    private static Picture picture(
            Drawn drawn,
            List<EstimateRow> rows,
            String by,
            Function<EstimateRow, String> label,
            Function<EstimateRow, Color> colour) {
        UnitSystem units = drawn.units();
        Attribute attribute = drawn.attribute();
        List<String> labels = distinct(rows.stream().map(label).toList());
        CategoryChart chart = Drawing.bars(Wording.capital(by), Wording.axis(drawn.design(), attribute, units), 0);
        chart.getStyler().setOverlapped(true).setLegendVisible(false);
        chart.getStyler().setAvailableSpaceFill(Math.min(0.7, 0.12 * rows.size()));
        chart.getStyler().setXAxisLabelRotation(labels.size() > LEVEL_LABELS ? 60 : 0);
        for (int i = 0; i < rows.size(); i++) {
            EstimateRow row = rows.get(i);
            List<Double> means = alone(i, rows.size(), row.in(units, row.mean()));
            chart.addSeries("bar " + i, labels, means).setFillColor(colour.apply(row));
            whisker(chart, i, labels, row, units);
        }
        String id = "estimate-by-" + by;
        String limits = Wording.confidence(drawn.confidence()) + " confidence limits";
        String unknown = rows.stream().allMatch(r -> Double.isFinite(r.upper())) ? "" : " (no whisker: limits unknown)";
        String title = Wording.capital(Wording.perArea(attribute, units)) + " by " + by + ". Bar: estimate; whisker: "
                + limits + unknown + "." + drawn.remark();
        String alt = "Bars of " + Wording.perArea(attribute, units) + " for " + by + " " + String.join(", ", labels)
                + ", with " + limits + " as whiskers. The table by " + by + " has the numbers.";
        return Drawing.picture(chart, id, title, alt);
    }

    /** The limits about their own middle, for they need not lie evenly about the estimate; the library draws no other whiskers. */
    private static void whisker(CategoryChart chart, int i, List<String> labels, EstimateRow row, UnitSystem units) {
        List<Double> middle = alone(i, labels.size(), row.in(units, (row.lower() + row.upper()) / 2));
        List<Double> halves = alone(i, labels.size(), row.in(units, (row.upper() - row.lower()) / 2));
        CategorySeries series = chart.addSeries("limits " + i, labels, middle, halves);
        series.setChartCategorySeriesRenderStyle(CategorySeries.CategorySeriesRenderStyle.Scatter);
        series.setMarker(SeriesMarkers.NONE);
    }

    /** One value at its place, the rest unknown, so that each bar can have a colour of its own. */
    private static List<Double> alone(int at, int size, double value) {
        List<Double> values = new ArrayList<>(Collections.nCopies(size, Double.NaN));
        values.set(at, value);
        return values;
    }

    /** Labels short enough to stand side by side, and still distinct. */
    private static List<String> distinct(List<String> labels) {
        List<String> result = new ArrayList<>();
        for (String label : labels) {
            String cut = label.length() > LONGEST_LABEL ? label.substring(0, LONGEST_LABEL - 1) + "…" : label;
            result.add(result.contains(cut) ? cut + " (" + (result.size() + 1) + ")" : cut);
        }
        return result;
    }
}
