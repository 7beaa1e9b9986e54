package quadmean.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quadmean.stats.MeanEstimate;
import quadmean.stats.MomentSums;
import quadmean.stats.Moments;
import quadmean.stats.StratifiedMean;
import quadmean.stats.WeightedSum;

/** Some stands of an estate, all with plots, seen by one species or by all: their sums side by side. */
final class EstateGroup {
    private final EstateSample sample;
    private final int[] members;
    private final @Nullable MomentSums[] sums;
    private final double[] weights;
    private final double areaHa;
    private final Map<Integer, MeanEstimate> means = new HashMap<>();

    EstateGroup(EstateSample sample, List<Integer> members, String species) {
        this.sample = sample;
        this.members = members.stream().mapToInt(i -> i).toArray();
        this.sums = new MomentSums[this.members.length];
        this.weights = new double[this.members.length];
        double area = 0;
        for (int i : this.members) {
            area += sample.stand(i).areaHa();
        }
        this.areaHa = area;
        for (int k = 0; k < weights.length; k++) {
            int i = this.members[k];
            sums[k] = sample.sums(i, species);
            weights[k] = sample.stand(i).areaHa() / area;
        }
    }

    /**
     * Variance between plots within the stands, which those with one plot borrow.
     *
     * @param variance Σ(n - 1)·s² / Σ(n - 1); NaN where every stand has one plot
     * @param df Σ(n - 1)
     */
    private record Pooled(double variance, double df) {}

    /** Moments of something in a stand. */
    private interface InStand {
        Moments of(MomentSums sums, int plots);
    }

    /** Area of the stands (ha). */
    double areaHa() {
        return areaHa;
    }

    /** Number of plots. */
    int plots() {
        int plots = 0;
        for (int i : members) {
            plots += sample.plots(i);
        }
        return plots;
    }

    /** Number of plots with trees. */
    long plotsWithTrees() {
        long with = 0;
        for (MomentSums s : sums) {
            with += s == null ? 0 : s.above();
        }
        return with;
    }

    /** Mean per hectare of an attribute. */
    MeanEstimate mean(int attribute) {
        return means.computeIfAbsent(attribute, a -> join((s, n) -> s.moments(a, n)));
    }

    /** Mean per hectare of basal area beyond a multiple of the trees. */
    MeanEstimate beyond(double ratio) {
        return join((s, n) -> s.beyond(ratio, n));
    }

    private MeanEstimate join(InStand ofStand) {
        Moments[] moments = new Moments[members.length];
        double squares = 0;
        double df = 0;
        for (int k = 0; k < members.length; k++) {
            int n = sample.plots(members[k]);
            MomentSums s = sums[k];
            Moments m = s == null ? nothing(n) : ofStand.of(s, n);
            moments[k] = m;
            if (n > 1) {
                squares += (n - 1) * m.variance();
                df += n - 1;
            }
        }
        Pooled lent = new Pooled(df == 0 ? Double.NaN : squares / df, df);
        List<MeanEstimate> parts = new ArrayList<>(members.length);
        for (int k = 0; k < members.length; k++) {
            parts.add(part(members[k], moments[k], lent));
        }
        return parts.size() == 1 ? parts.get(0) : WeightedSum.of(weights, parts, sample.rule());
    }

    /** Moments where no plot has any. */
    private static Moments nothing(int plots) {
        return new Moments(plots, 0, plots < 2 ? Double.NaN : 0);
    }

    private MeanEstimate part(int stand, Moments m, Pooled lent) {
        double room = sample.plotsIn(stand);
        if (m.n() > 1 || members.length == 1 || !sample.isPooled()) {
            return StratifiedMean.simple(m, room);
        }
        MeanEstimate e = StratifiedMean.simple(new Moments(1, m.mean(), lent.variance()), room);
        return new MeanEstimate(1, sample.lentDf(lent.df()), e.mean(), e.se(), e.sd());
    }
}
