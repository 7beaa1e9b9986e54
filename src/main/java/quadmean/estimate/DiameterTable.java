package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import quadmean.units.Attribute;

/** Trees per hectare by diameter class and species. */
final class DiameterTable {
    /** A diameter this close (in classes) below a limit is on it: inches turned into centimetres must not slip. */
    private static final double ON_LIMIT = 1e-9;

    private DiameterTable() {}

    static List<DiameterClass> of(Sample sample, List<SampledPlot> plots, EstimateSettings settings) {
        double width = settings.diameterClassCm();
        SortedSet<String> species = new TreeSet<>();
        SortedSet<Integer> classes = new TreeSet<>();
        plots.stream().flatMap(p -> p.stems().stream()).forEach(stem -> {
            species.add(stem.species());
            classes.add(classOf(stem, width));
        });
        List<DiameterClass> table = new ArrayList<>();
        for (int k : classes) {
            for (String s : species) {
                double trees = sample.mean(PlotValue.of(
                                settings.plot(),
                                Attribute.TREES,
                                stem -> stem.species().equals(s) && classOf(stem, width) == k))
                        .mean();
                if (trees > 0) {
                    table.add(new DiameterClass(k * width, (k + 1) * width, s, trees));
                }
            }
        }
        return table;
    }

    private static int classOf(Stem stem, double width) {
        return (int) Math.floor(stem.dbhCm() / width + ON_LIMIT);
    }
}
