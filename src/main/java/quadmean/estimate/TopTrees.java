package quadmean.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import quadmean.model.PlotDesign;
import quadmean.model.TopHeight;
import quadmean.units.Attribute;

/**
 * The thickest trees of a plot. Trees are taken from the thickest down until those they stand for reach the number of the rule; the
 * last may count in part, and trees of one dbh share what is left.
 *
 * @param meanHeightM their mean height (m); NaN without trees
 * @param treesPerHa how many they stand for (trees/ha); fewer than the rule says where a plot has no more
 * @param thickestPerHa how many the thickest tree alone stands for (trees/ha)
 */
record TopTrees(double meanHeightM, double treesPerHa, double thickestPerHa) {

    static TopTrees of(PlotDesign design, TopHeight rule, SampledPlot plot) {
        NavigableMap<Double, List<Stem>> byDbh = new TreeMap<>(Comparator.reverseOrder());
        plot.stems().stream()
                .filter(s -> s.counts().contains(Attribute.TREES))
                .forEach(s ->
                        byDbh.computeIfAbsent(s.dbhCm(), d -> new ArrayList<>()).add(s));
        double taken = 0;
        double heights = 0;
        double thickest = 0;
        for (List<Stem> alike : byDbh.values()) {
            double trees = 0;
            double sum = 0;
            for (Stem stem : alike) {
                double w = PlotValue.treesPerHa(design, plot, stem);
                trees += w;
                sum += w * stem.heightM();
                thickest = thickest == 0 ? w / stem.count() : thickest;
            }
            double room = Math.min(trees, rule.treesPerHa() - taken);
            if (room > 0) {
                taken += room;
                heights += room * sum / trees;
            }
        }
        return new TopTrees(heights / taken, taken, thickest);
    }

    boolean isEmpty() {
        return treesPerHa == 0;
    }
}
