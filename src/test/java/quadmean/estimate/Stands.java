package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.units.Attribute;

/** Stands for tests. */
final class Stands {
    static final List<Stratum> TWO_STRATA = List.of(new Stratum("A", "a", 30), new Stratum("B", "b", 10));
    private static final String[] SPECIES = {"X", "Y", "Z"};

    private Stands() {}

    static EstimateSettings settings(PlotDesign plot) {
        return new EstimateSettings(
                plot, FinitePopulation.IGNORE, DegreesRule.PLOTS_MINUS_STRATA, 0.95, 10, Attribute.VOLUME, 5, "");
    }

    /** Random plots: 12 in stratum A, 7 in B, some of them empty. */
    static List<SampledPlot> random(long seed) {
        Random random = new Random(seed);
        List<SampledPlot> plots = new ArrayList<>();
        for (int i = 0; i < 19; i++) {
            List<Stem> stems = new ArrayList<>();
            int n = random.nextInt(8);
            for (int k = 0; k < n; k++) {
                double d = 8 + 50 * random.nextDouble();
                stems.add(new Stem(SPECIES[random.nextInt(3)], d, 3 + 0.4 * d, 0.0004 * Math.pow(d, 2.3)));
            }
            plots.add(new SampledPlot(String.valueOf(i + 1), i < 12 ? "A" : "B", stems));
        }
        return plots;
    }

    /** A plot of equal stems, one centimetre of which holds a cubic metre. */
    static SampledPlot plot(String id, String stratum, double... dbhCm) {
        List<Stem> stems = new ArrayList<>();
        for (double d : dbhCm) {
            stems.add(new Stem("X", d, d));
        }
        return new SampledPlot(id, stratum, stems);
    }
}
