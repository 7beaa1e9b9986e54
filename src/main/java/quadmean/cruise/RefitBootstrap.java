package quadmean.cruise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import quadmean.design.Design;
import quadmean.estimate.Resampling;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.height.CurveTable;
import quadmean.height.HeightSettings;
import quadmean.model.Plot;
import quadmean.model.Progress;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;
import quadmean.stats.Bootstrap;
import quadmean.stats.BootstrapSample;
import quadmean.stats.ResampledStratum;
import quadmean.stats.UnitStatistic;

/**
 * The mean of the stand from resampled plots, with the height curves as they are and with curves fitted again to the trees of the
 * resampled plots: what the second varies more than the first is the error of the curves, with its tie to the plots.
 */
final class RefitBootstrap implements UnitStatistic {
    private final Design design;
    private final HeightSettings settings;
    private final CurveTable curves;
    private final StandMean mean;
    private final Resampling resampling;
    private final List<Plot> plots = new ArrayList<>();
    private final double[] fixed;
    private final Progress progress;
    private final AtomicInteger done = new AtomicInteger();

    private RefitBootstrap(
            Design design,
            HeightSettings settings,
            CurveTable curves,
            StandMean mean,
            Resampling resampling,
            List<Plot> tally,
            Progress progress) {
        this.design = design;
        this.settings = settings;
        this.curves = curves;
        this.mean = mean;
        this.resampling = resampling;
        this.progress = progress;
        Map<String, Plot> byId = new HashMap<>();
        tally.forEach(p -> byId.put(key(p.stratum(), p.id()), p));
        for (SampledPlot p : resampling.plots()) {
            plots.add(byId.get(key(p.stratum(), p.id())));
        }
        this.fixed = resampling.plots().stream().mapToDouble(mean::value).toArray();
    }

    private static String key(String stratum, String id) {
        return stratum + "\n" + id;
    }

    /** The resamples: output 0 with the curves held, output 1 with curves fitted again. */
    static BootstrapSample run(
            Design design,
            HeightSettings settings,
            CurveTable curves,
            StandMean mean,
            Resampling resampling,
            List<Plot> tally,
            Progress progress) {
        RefitBootstrap statistic = new RefitBootstrap(design, settings, curves, mean, resampling, tally, progress);
        return Bootstrap.run(resampling.strata(), statistic, design.estimation().replicates(), design.seed());
    }

    @Override
    public int outputs() {
        return 2;
    }

    @Override
    public Evaluator evaluator() {
        WoodBooks books = WoodBooks.of(design);
        return (weights, out) -> {
            CurveTable refitted = curves.refit(trees(weights), settings);
            Woods woods = new Woods(design, books, refitted);
            double[] shares = resampling.weights().apply(weights);
            out[0] = 0;
            out[1] = 0;
            for (int i = 0; i < shares.length; i++) {
                // a share of no number makes the resample one without a value; one of zero asks for no tree
                if (shares[i] != 0) {
                    out[0] += shares[i] * fixed[i];
                    out[1] += shares[i] * mean.value(filled(i, refitted, woods));
                }
            }
            progress.report(
                    Progress.Work.REFITS,
                    Math.min(done.incrementAndGet(), design.estimation().replicates()),
                    design.estimation().replicates());
        };
    }

    private SampledPlot filled(int i, CurveTable refitted, Woods woods) {
        SampledPlot as = resampling.plots().get(i);
        return new SampledPlot(
                as.id(),
                as.stratum(),
                plots.get(i).trees().stream()
                        .map(t -> woods.stem(Cruise.fill(design, refitted, t)))
                        .toList(),
                as.inside(),
                as.facts());
    }

    /** The trees of the drawn plots; a plot drawn twice comes twice, as two plots. */
    private List<Tree> trees(double[] weights) {
        long[] times = new long[weights.length];
        int first = 0;
        for (ResampledStratum s : resampling.strata()) {
            for (int i = first; i < first + s.units(); i++) {
                times[i] = times(s, weights[i]);
            }
            first += s.units();
        }
        List<Tree> trees = new ArrayList<>();
        Map<Plot, Integer> copies = new HashMap<>();
        for (int i = 0; i < plots.size(); i++) {
            for (long k = 0; k < times[resampling.weights().unit(i)]; k++) {
                add(plots.get(i), copies.merge(plots.get(i), 1, Integer::sum) - 1, trees);
            }
        }
        return trees;
    }

    /** How often a unit was drawn, from its weight W/n·(1-s) + times·W·s/(n-1), s being the shrinkage √(1-n/N). */
    private static long times(ResampledStratum s, double weight) {
        double shrinkage = Math.sqrt(Math.max(0, 1 - s.units() / s.populationUnits()));
        if (s.units() == 1 || shrinkage == 0) {
            return 1;
        }
        double kept = s.weight() / s.units() * (1 - shrinkage);
        return Math.max(0, Math.round((weight - kept) / (s.weight() * shrinkage / (s.units() - 1))));
    }

    private static void add(Plot plot, int copy, List<Tree> trees) {
        String id = copy == 0 ? plot.id() : plot.id() + "\n" + copy;
        for (Tree t : plot.trees()) {
            Tree whole = t.detail().top() == Top.BROKEN ? t.withoutHeight() : t;
            trees.add(
                    copy == 0
                            ? whole
                            : new Tree(
                                    whole.file(),
                                    whole.row(),
                                    id,
                                    whole.number(),
                                    whole.species(),
                                    whole.dbhCm(),
                                    whole.height(),
                                    whole.detail()));
        }
    }
}
