package quadmean.estimate;

import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.number;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import quadmean.model.Stratum;

/**
 * The mapped longleaf pines (Platt, Evans and Rathbun 1988, as in R spatstat.data) on 64 quadrats of 25 m x 25 m as plots. Their
 * heights are made up: 1.3 + 28·(1 - exp(-0.035·d)) m.
 */
final class Longleaf {
    static final double QUADRAT_HA = 0.0625;
    static final List<Stratum> WHOLE = List.of(new Stratum("stand", "stand", 4));
    static final List<Stratum> QUARTERS = List.of(
            new Stratum("SW", "SW", 1),
            new Stratum("SE", "SE", 1),
            new Stratum("NW", "NW", 1),
            new Stratum("NE", "NE", 1));

    private Longleaf() {}

    /** All quadrats as plots of one stratum, with the trees of some size and more. */
    static List<SampledPlot> all(double smallestCm) {
        return plots(IntStream.rangeClosed(1, 64).asDoubleStream().toArray(), WHOLE, smallestCm);
    }

    static List<SampledPlot> plots(double[] ids, List<Stratum> strata) {
        return plots(ids, strata, 0);
    }

    private static List<SampledPlot> plots(double[] ids, List<Stratum> strata, double smallestCm) {
        Map<Integer, List<Stem>> stems = new TreeMap<>();
        for (NamedCsvRecord tree : csv("longleaf.csv")) {
            int column = (int) Math.min(7, Math.floor(number(tree, "x_m") / 25));
            int row = (int) Math.min(7, Math.floor(number(tree, "y_m") / 25));
            double d = number(tree, "dbh_cm");
            if (d >= smallestCm) {
                stems.computeIfAbsent(1 + column + 8 * row, k -> new ArrayList<>())
                        .add(new Stem("longleaf pine", d, 1.3 + 28 * (1 - Math.exp(-0.035 * d)), Double.NaN));
            }
        }
        List<NamedCsvRecord> quadrats = csv("longleaf-quadrats.csv");
        List<SampledPlot> plots = new ArrayList<>();
        for (double id : ids) {
            String stratum =
                    strata.size() == 1 ? "stand" : quadrats.get((int) id - 1).getField("stratum");
            plots.add(new SampledPlot(String.valueOf((int) id), stratum, stems.getOrDefault((int) id, List.of())));
        }
        return plots;
    }
}
