package quadmean.audit;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Adds up what became of trees, plot by plot. */
final class PlotGrowth {
    private PlotGrowth() {}

    /** The components of each plot, per hectare; a plot without trees has none. */
    static Map<String, Map<Component, Double>> byPlot(List<String> plots, List<GrowthTree> trees) {
        Map<String, Map<Component, Double>> sums = new LinkedHashMap<>();
        plots.forEach(p -> sums.put(p, new EnumMap<>(Component.class)));
        for (GrowthTree t : trees) {
            Map<Component, Double> own = sums.computeIfAbsent(t.plot(), p -> new EnumMap<>(Component.class));
            add(own, Component.START, t.before());
            add(own, Component.END, t.after());
            add(own, Component.CHANGE, t.after() - t.before());
            switch (t.fate()) {
                case SURVIVOR -> {
                    add(own, Component.SURVIVORS, t.growth());
                    add(own, Component.REWEIGHTING, t.after() - t.before() - t.growth());
                    add(own, Component.GROSS, t.growth());
                    add(own, Component.NET, t.growth());
                }
                case INGROWTH -> {
                    add(own, Component.INGROWTH, t.after());
                    add(own, Component.GROSS, t.after());
                    add(own, Component.NET, t.after());
                }
                case ONGROWTH -> add(own, Component.ONGROWTH, t.after());
                case MORTALITY -> {
                    add(own, Component.MORTALITY, t.before());
                    add(own, Component.NET, -t.before());
                }
                case REMOVAL -> add(own, Component.REMOVALS, t.before());
                case NONE -> {}
            }
            add(
                    own,
                    Component.NET_BY_DATES,
                    t.after() - t.before() + (t.fate() == GrowthTree.Fate.REMOVAL ? t.before() : 0));
        }
        return sums;
    }

    private static void add(Map<Component, Double> sums, Component component, double value) {
        sums.merge(component, value, Double::sum);
    }
}
