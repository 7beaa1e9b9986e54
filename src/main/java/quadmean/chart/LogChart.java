package quadmean.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.knowm.xchart.CategoryChart;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** Net wood per unit area by product, and by place in the stem, stacked by species. */
final class LogChart {
    private final CruiseResult result;
    private final SpeciesColours colours;
    private final Attribute attribute;

    private LogChart(CruiseResult result, SpeciesColours colours) {
        this.result = result;
        this.colours = colours;
        boolean scaled = result.design().attributes().contains(Attribute.NET_BOARD_FEET);
        this.attribute = scaled ? Attribute.NET_BOARD_FEET : Attribute.NET_LOG_VOLUME;
    }

    static List<Picture> pictures(CruiseResult result, SpeciesColours colours) {
        LogChart chart = new LogChart(result, colours);
        List<Picture> pictures = new ArrayList<>();
        chart.picture("product", "product", p -> p.log() == 0, Part::product).ifPresent(pictures::add);
        chart.picture("log", "log from the butt", p -> p.log() > 0, Part::place).ifPresent(pictures::add);
        return pictures;
    }

    private Optional<Picture> picture(String by, String words, Predicate<Part> parts, Function<Part, String> label) {
        List<EstimateRow> rows = result.estimate().rows().stream()
                .filter(r -> r.attribute() == attribute
                        && r.basis() == Basis.PER_AREA
                        && r.stratum().equals(EstimateRow.ALL)
                        && !r.species().equals(EstimateRow.ALL)
                        && !r.part().equals(Part.ALL)
                        && parts.test(r.part())
                        && r.mean() > 0)
                .toList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        UnitSystem units = result.design().units();
        LinkedHashSet<String> distinct = new LinkedHashSet<>();
        rows.forEach(r -> distinct.add(label.apply(r.part())));
        List<String> labels = new ArrayList<>(distinct);
        List<String> species = colours.codes().stream()
                .filter(c -> rows.stream().anyMatch(r -> r.species().equals(c)))
                .toList();
        CategoryChart chart =
                Drawing.bars(Wording.capital(words), Wording.axis(result.design(), attribute, units), species.size());
        chart.getStyler().setStacked(true).setAvailableSpaceFill(Math.min(0.8, 0.16 * labels.size()));
        for (String code : species) {
            List<Double> heights = new ArrayList<>(Collections.nCopies(labels.size(), 0.0));
            rows.stream()
                    .filter(r -> r.species().equals(code))
                    .forEach(r -> heights.set(labels.indexOf(label.apply(r.part())), r.in(units, r.mean())));
            chart.addSeries(code, labels, heights).setFillColor(colours.colour(code));
        }
        String id = "wood-by-" + by;
        String what = Wording.capital(Wording.perArea(attribute, units)) + " by " + words;
        String standing = Wording.standing(result.used(), attribute, "*");
        String title = what + ", stacked by species."
                + (standing.isEmpty()
                        ? ""
                        : " " + Wording.capital(Wording.standsBehind(attribute)) + ": " + standing + ".");
        String alt = "Stacked bars: " + what + " " + String.join(", ", labels) + ", species "
                + String.join(", ", species) + ". The tables of logs have the numbers with their errors.";
        return Optional.of(Drawing.picture(chart, id, title, alt));
    }
}
