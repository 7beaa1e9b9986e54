package quadmean.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.DiameterClass;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** An attribute per unit area by diameter class: stacked by species, the limits of all species together as whiskers. */
final class DiameterChart {
    private static final int LEVEL_LABELS = 7;
    private static final int MOST_LABELS = 24;
    /** The legend of many species leaves room for the whiskers too, which have no entry. */
    private static final int MANY_ENTRIES = 8;

    private static final int HIDDEN_ENTRIES = 2;
    private static final String CURVE = "Weibull";
    private static final String WHISKERS = "limits of all species";

    private final CruiseResult result;
    private final SpeciesColours colours;
    private final UnitSystem units;
    private final Attribute attribute;
    private final List<ClassRow> rows;
    private final List<DiameterClass> sizes;
    private final List<String> labels;

    private DiameterChart(CruiseResult result, SpeciesColours colours, Attribute attribute) {
        this.result = result;
        this.colours = colours;
        this.units = result.design().units();
        this.attribute = attribute;
        this.rows = result.estimate().structure().rows(attribute, Basis.PER_AREA);
        this.sizes = rows.stream().map(ClassRow::size).distinct().toList();
        this.labels = sizes.stream().map(this::label).toList();
    }

    /** Trees, with the fitted distribution over them, and the stock: volume. */
    static List<Picture> pictures(CruiseResult result, SpeciesColours colours) {
        List<Picture> pictures = new ArrayList<>();
        new DiameterChart(result, colours, Attribute.TREES).picture("diameters").ifPresent(pictures::add);
        new DiameterChart(result, colours, Attribute.VOLUME).picture("stock").ifPresent(pictures::add);
        return pictures;
    }

    private Optional<Picture> picture(String id) {
        List<String> species = colours.codes().stream()
                .filter(code -> values(code).stream().anyMatch(v -> v > 0))
                .toList();
        if (species.isEmpty()) {
            return Optional.empty();
        }
        List<Double> curve = curve();
        int entries = species.size() + (curve.isEmpty() ? 0 : 1);
        CategoryChart chart = Drawing.bars(
                "Dbh class (" + units.diameter().label() + ")",
                Wording.axis(result.design(), attribute, units),
                entries > MANY_ENTRIES ? entries + HIDDEN_ENTRIES : entries);
        chart.getStyler().setStacked(true).setAvailableSpaceFill(0.94);
        chart.getStyler().setXAxisLabelRotation(labels.size() > LEVEL_LABELS ? 90 : 0);
        if (labels.size() > MOST_LABELS) {
            chart.getStyler().setXAxisMaxLabelCount(MOST_LABELS);
        }
        species.forEach(code -> chart.addSeries(code, labels, values(code)).setFillColor(colours.colour(code)));
        if (!curve.isEmpty()) {
            line(chart.addSeries(CURVE, labels, curve)).setLineColor(Drawing.INK);
        }
        List<Double> halves = halves();
        if (halves.stream().anyMatch(h -> h > 0)) {
            line(chart.addSeries(WHISKERS, labels, values(EstimateRow.ALL), halves))
                    .setLineStyle(org.knowm.xchart.style.lines.SeriesLines.NONE)
                    .setShowInLegend(false);
        }
        chart.getStyler().setYAxisMax(highest(curve, halves));
        return Optional.of(Drawing.picture(chart, id, title(!curve.isEmpty(), halves), alt(species, !curve.isEmpty())));
    }

    /** A little above the tallest bar, whisker or point of the curve. */
    private double highest(List<Double> curve, List<Double> halves) {
        List<Double> all = values(EstimateRow.ALL);
        double highest = curve.stream().mapToDouble(v -> v).max().orElse(0);
        for (int i = 0; i < all.size(); i++) {
            highest = Math.max(highest, all.get(i) + halves.get(i));
        }
        return 1.04 * highest;
    }

    private static CategorySeries line(CategorySeries series) {
        series.setChartCategorySeriesRenderStyle(CategorySeries.CategorySeriesRenderStyle.Line);
        series.setMarker(SeriesMarkers.NONE);
        series.setOverlapped(true); // at its own height, not on top of the stack
        return series;
    }

    private String title(boolean hasCurve, List<Double> halves) {
        boolean hasLimits = halves.stream().anyMatch(h -> h > 0);
        String standing = Wording.standing(result.used(), attribute, EstimateRow.ALL);
        return Wording.capital(Wording.perArea(attribute, units)) + " by dbh class, stacked by species."
                + (hasLimits
                        ? " Whiskers: " + Wording.confidence(result.estimate().confidence())
                                + " limits of all species together."
                        : "")
                + (hasCurve ? " Line: the fitted Weibull distribution." : "")
                + " The lower limit belongs to a class, the upper to the next."
                + (standing.isEmpty()
                        ? ""
                        : " " + Wording.capital(Wording.standsBehind(attribute)) + ": " + standing + ".");
    }

    private String alt(List<String> species, boolean hasCurve) {
        return "Stacked bars of " + Wording.perArea(attribute, units) + " in " + labels.size() + " dbh classes from "
                + labels.get(0) + " to " + labels.get(labels.size() - 1) + " "
                + units.diameter().label() + ", by species " + String.join(", ", species)
                + (hasCurve ? ", with the fitted Weibull distribution as a line" : "")
                + ". The stand and stock tables have the numbers.";
    }

    /** Values by class in the design's units; what is unknown is drawn as nothing. */
    private List<Double> values(String species) {
        List<Double> values = new ArrayList<>(Collections.nCopies(sizes.size(), 0.0));
        of(species).forEach(c -> {
            double value = c.row().in(units, c.row().mean());
            values.set(sizes.indexOf(c.size()), Double.isFinite(value) ? value : 0);
        });
        return values;
    }

    /** Half widths of the limits of all species. */
    private List<Double> halves() {
        List<Double> halves = new ArrayList<>(Collections.nCopies(sizes.size(), 0.0));
        of(EstimateRow.ALL).forEach(c -> {
            double half = c.row().in(units, (c.row().upper() - c.row().lower()) / 2);
            halves.set(sizes.indexOf(c.size()), Double.isFinite(half) ? half : 0);
        });
        return halves;
    }

    private List<ClassRow> of(String species) {
        return rows.stream().filter(c -> c.row().species().equals(species)).toList();
    }

    /** Trees that the fitted distribution puts into each class. */
    private List<Double> curve() {
        if (attribute != Attribute.TREES) {
            return List.of();
        }
        Unit perArea = attribute.unit(Basis.PER_AREA, units);
        return result.estimate()
                .structure()
                .diameters()
                .map(fit -> sizes.stream()
                        .map(size -> Unit.TREES_PER_HECTARE.convert(fit.treesPerHa(size), perArea))
                        .collect(Collectors.toList()))
                .orElse(List.of());
    }

    private String label(DiameterClass size) {
        return limit(size.lowerCm()) + "–" + limit(size.upperCm());
    }

    private String limit(double cm) {
        double shown = Unit.CENTIMETRE.convert(cm, units.diameter());
        return Wording.plain(Math.round(shown * 100) / 100.0);
    }
}
