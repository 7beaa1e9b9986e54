package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.model.Boundary;
import quadmean.model.PlotDesign;
import quadmean.model.TreeStatus;
import quadmean.units.Attribute;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;

/** What the design says of the field work, as items of the methods. */
final class FieldworkItems {
    private FieldworkItems() {}

    /**
     * An item of a list of terms.
     *
     * @param term the term
     * @param words what it means here
     */
    record Item(String term, String words) {}

    static List<Item> of(Design design) {
        List<Item> items = new ArrayList<>();
        who(design, items);
        if (design.plot() instanceof PlotDesign.Point) {
            DistanceTo part = design.plotRules().limitTo();
            if (part != null) {
                items.add(new Item("Limiting distances", "To the " + part.id() + " of the stem, horizontally."));
            }
        } else if (!(design.plot() instanceof PlotDesign.Complete)) {
            items.add(new Item(
                    "On slopes", Wording.capital(design.plotRules().onSlope().label()) + "."));
        }
        if (design.plotRules().boundary() != Boundary.NOT_STATED) {
            items.add(new Item("At the boundary", design.plotRules().boundary().note()));
        }
        items.add(new Item("What counts", counts(design)));
        return items;
    }

    private static void who(Design design, List<Item> items) {
        List<String> parts = new ArrayList<>();
        add(parts, "crew: ", design.notes().crew());
        add(parts, "place: ", design.notes().place());
        add(parts, "date: ", design.date());
        design.notes()
                .declinationDegrees()
                .ifPresent(d ->
                        parts.add("declination set: " + Wording.plain(Math.abs(d)) + "° " + (d < 0 ? "west" : "east")));
        if (!parts.isEmpty()) {
            items.add(new Item("Field work", Wording.capital(String.join("; ", parts)) + "."));
        }
    }

    private static void add(List<String> parts, String what, String text) {
        if (!text.isEmpty()) {
            parts.add(what + text);
        }
    }

    private static String counts(Design design) {
        String trees = statuses(design, Attribute.TREES);
        String basalArea = statuses(design, Attribute.BASAL_AREA);
        String volume = statuses(design, Attribute.VOLUME);
        double smallest = design.counting().minMerchantableCm();
        String from = smallest > 0
                ? ", from a dbh of "
                        + Rounding.constant(
                                Unit.CENTIMETRE.convert(smallest, design.units().diameter())) + " "
                        + design.units().diameter().label()
                : "";
        return "As trees: " + trees + ". As basal area: " + basalArea + ". As volume: " + volume + from
                + ". Trees without a status are taken as live.";
    }

    private static String statuses(Design design, Attribute attribute) {
        Set<TreeStatus> set = design.counting().statuses().getOrDefault(attribute, Set.of());
        return set.isEmpty()
                ? "none"
                : String.join(
                        ", ", new TreeSet<>(set).stream().map(TreeStatus::id).toList());
    }
}
