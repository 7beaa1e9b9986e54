package quadmean.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.DiameterClass;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Trees per unit area by diameter class, stacked by species. */
final class DiameterChart {
    private static final int LEVEL_LABELS = 7;
    private static final int MOST_LABELS = 24;

    private DiameterChart() {}

    static Optional<Picture> picture(CruiseResult result, SpeciesColours colours) {
        List<DiameterClass> classes = result.estimate().diameters();
        if (classes.isEmpty()) {
            return Optional.empty();
        }
        UnitSystem units = result.design().units();
        Unit perArea = units == UnitSystem.METRIC ? Unit.TREES_PER_HECTARE : Unit.TREES_PER_ACRE;
        double low = classes.stream().mapToDouble(DiameterClass::lowerCm).min().orElseThrow();
        double width = classes.get(0).upperCm() - classes.get(0).lowerCm();
        List<String> labels = labels(classes, low, width, units);
        int entries = (int) classes.stream()
                .filter(c -> c.treesPerHa() > 0)
                .map(DiameterClass::species)
                .distinct()
                .count();
        CategoryChart chart = Drawing.bars(
                "Dbh class (" + units.diameter().label() + ")", "Trees (" + perArea.label() + ")", entries);
        chart.getStyler().setStacked(true).setAvailableSpaceFill(0.94);
        chart.getStyler().setXAxisLabelRotation(labels.size() > LEVEL_LABELS ? 90 : 0);
        if (labels.size() > MOST_LABELS) {
            chart.getStyler().setXAxisMaxLabelCount(MOST_LABELS);
        }
        List<String> species = new ArrayList<>();
        for (String code : colours.codes()) {
            List<Double> trees = new ArrayList<>(Collections.nCopies(labels.size(), 0.0));
            for (DiameterClass c : classes) {
                if (c.species().equals(code)) {
                    trees.set(at(c, low, width), Unit.TREES_PER_HECTARE.convert(c.treesPerHa(), perArea));
                }
            }
            if (trees.stream().anyMatch(t -> t > 0)) {
                species.add(code);
                CategorySeries series = chart.addSeries(code, labels, trees);
                series.setFillColor(colours.colour(code));
            }
        }
        if (species.isEmpty()) {
            return Optional.empty();
        }
        String area = units == UnitSystem.METRIC ? "hectare" : "acre";
        String title = "Trees per " + area + " by dbh class, stacked by species."
                + " The lower limit belongs to a class, the upper to the next.";
        String alt = "Stacked bars of trees per " + area + " in " + labels.size() + " dbh classes from "
                + labels.get(0) + " to " + labels.get(labels.size() - 1) + " "
                + units.diameter().label()
                + ", by species " + String.join(", ", species) + ". The table of diameter classes has the numbers.";
        return Optional.of(new Picture("diameters", title, alt, Drawing.svg(chart, "diameters")));
    }

    private static int at(DiameterClass c, double low, double width) {
        return (int) Math.round((c.lowerCm() - low) / width);
    }

    /** A label for every class from the smallest to the largest, empty ones among them. */
    private static List<String> labels(List<DiameterClass> classes, double low, double width, UnitSystem units) {
        int count = 1 + classes.stream().mapToInt(c -> at(c, low, width)).max().orElseThrow();
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            labels.add(limit(low + i * width, units) + "–" + limit(low + (i + 1) * width, units));
        }
        return labels;
    }

    private static String limit(double cm, UnitSystem units) {
        double shown = Unit.CENTIMETRE.convert(cm, units.diameter());
        return Wording.plain(Math.round(shown * 100) / 100.0);
    }
}
