package quadmean.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;

/** What a reader should know of a layout and its walk, in sentences. */
final class LayoutNotes {
    /** Legs or clusters that a sentence names; files hold all. */
    private static final int MOST_NAMED = 40;

    private final Design design;
    private final LayoutSettings settings;
    private final LengthText lengths;

    LayoutNotes(Design design, LayoutSettings settings, LengthText lengths) {
        this.design = design;
        this.settings = settings;
        this.lengths = lengths;
    }

    List<String> of(Layout layout, Route route, SheetSet set) {
        List<String> notes = new ArrayList<>(List.of(laid(layout)));
        if (settings.subsets() > 1) {
            notes.add("The plots make " + settings.subsets()
                    + " subsets, each over the whole ground with a random start of its"
                    + " own, and walked to its end before the next begins: after a whole subset the plots run are a sample of"
                    + " the tract, and the cruise may stop if quadmean progress says so.");
        }
        notes.addAll(layout.notes());
        single(layout).ifPresent(notes::add);
        settings.cluster().ifPresent(c -> clusters(notes, layout, c.plots()));
        notes.add("The walk is " + lengths.of(route.lengthM(), 0) + " long on the map, the serpentine "
                + lengths.of(route.serpentineM(), 0) + ", the ways to and from each day's plots included.");
        ways(
                notes,
                set,
                SheetRoute.Way.AROUND,
                " water or excluded land: walk around, which is longer than the walk above.");
        ways(notes, set, SheetRoute.Way.OUTSIDE, " ground outside the tract: walk around, or cross only with leave.");
        LayoutSettings.Slopes slopes = settings.walking().slopes();
        if (slopes.isKnown()) {
            notes.add("Lengths along the ground are for " + slope(slopes)
                    + " that the design states, as if each leg ran straight up or down: along the contour the ground is level."
                    + " Horizontal distances decide.");
        }
        notes.addAll(route.notes());
        return notes;
    }

    /** How many were asked for and laid out, and from which seed. */
    private String laid(Layout layout) {
        boolean clusters = settings.cluster().isPresent();
        String what = clusters ? " clusters" : "";
        List<String> parts = new ArrayList<>();
        for (Layout.Ground g : layout.grounds()) {
            String of = layout.asked() > 0 ? ", " + g.asked() + what + " asked for" : "";
            if (layout.grounds().size() > 1) {
                parts.add(g.stratum() + " " + g.laid() + of);
            }
        }
        int plots = layout.plots().size();
        String whole =
                plots + (plots == 1 ? " plot" : " plots") + (clusters ? " of " + clusters(layout) + " clusters" : "")
                        + " laid out"
                        + (layout.asked() > 0
                                ? ", " + layout.asked() + what + " asked for"
                                : ", the number following from the spacing")
                        + (parts.isEmpty() ? "" : " (" + String.join("; ", parts) + ")")
                        + ", pattern " + settings.pattern().id() + ", seed " + design.seed() + ".";
        boolean varies = settings.pattern().isGrid() && layout.asked() > 0 && !clusters;
        return whole + (varies ? " With a random start the number on a grid varies around the one asked for." : "");
    }

    /** Grounds with too few plots to tell a standard error. */
    private Optional<String> single(Layout layout) {
        List<String> few = layout.grounds().stream()
                .filter(g -> g.laid() == 1)
                .map(g -> layout.grounds().size() == 1 ? "the tract" : "stratum " + g.stratum())
                .toList();
        return few.isEmpty()
                ? Optional.empty()
                : Optional.of("A single plot in " + String.join(", ", few)
                        + ": it takes two to tell a standard error; ask for more plots.");
    }

    private static long clusters(Layout layout) {
        return layout.plots().stream()
                .map(p -> p.cluster().orElse(0))
                .distinct()
                .count();
    }

    private void clusters(List<String> notes, Layout layout, int size) {
        if (settings.plots().isEmpty() && settings.spacingM().isEmpty()) {
            notes.add("The plots of the plan are run in clusters of " + size + ", rounded up.");
        }
        if (layout.leftOut().isEmpty()) {
            return;
        }
        Map<Integer, List<String>> byCluster = new LinkedHashMap<>();
        layout.leftOut()
                .forEach(l -> byCluster
                        .computeIfAbsent(l.cluster(), k -> new ArrayList<>())
                        .add(Integer.toString(l.plot())));
        notes.add(layout.leftOut().size()
                + " plots of clusters lie beyond the line and are left out, not moved: "
                + byCluster.entrySet().stream()
                        .limit(MOST_NAMED)
                        .map(e -> "cluster " + e.getKey() + " its plot"
                                + (e.getValue().size() > 1 ? "s " : " ") + String.join(" and ", e.getValue()))
                        .collect(Collectors.joining("; "))
                + (byCluster.size() > MOST_NAMED
                        ? "; and of " + (byCluster.size() - MOST_NAMED) + " more clusters, which plan.json names"
                        : "")
                + " (of " + size + ", counted " + order() + ").");
    }

    private String order() {
        return settings.cluster().orElseThrow().shape() == LayoutSettings.Shape.LINE
                ? "along the line"
                : "clockwise around the ring";
    }

    private static void ways(List<String> notes, SheetSet set, SheetRoute.Way way, String words) {
        List<String> legs = set.route().legs().stream()
                .filter(l -> l.way() == way)
                .map(l -> l.from() + " to " + l.to())
                .toList();
        if (legs.isEmpty()) {
            return;
        }
        int more = legs.size() - MOST_NAMED;
        notes.add((legs.size() == 1 ? "The leg " : "The legs ")
                + legs.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more, marked in legs.csv," : "")
                + (legs.size() == 1 ? " crosses" : " cross")
                + words);
    }

    private static String slope(LayoutSettings.Slopes slopes) {
        return slopes.mean().isPresent()
                ? "the mean slope of " + plain(slopes.mean().getAsDouble()) + " %"
                : "the slopes of the strata ("
                        + new TreeMap<>(slopes.byStratum())
                                .entrySet().stream()
                                        .map(e -> e.getKey() + " " + plain(e.getValue()) + " %")
                                        .collect(Collectors.joining(", "))
                        + "), half a leg on that of either end,";
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
