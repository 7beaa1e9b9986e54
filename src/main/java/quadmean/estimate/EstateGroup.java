package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
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
    private final String species;

    EstateGroup(EstateSample sample, List<Integer> members, String species) {
        this.sample = sample;
        this.species = species;
        this.members = members.stream().mapToInt(i -> i).toArray();
        this.sums = new MomentSums[this.members.length];
        this.weights = new double[this.members.length];
        double area = 0;
        for (int i : this.members) {
            area += sample.stand(i).areaHa();
        }
        for (int k = 0; k < weights.length; k++) {
            int i = this.members[k];
            sums[k] = sample.sums(i, species);
            weights[k] = sample.stand(i).areaHa() / area;
        }
    }

    /** Moments of something in a stand. */
    private interface InStand {
        Moments of(MomentSums sums, int plots);
    }

    /** Mean per hectare of an attribute. */
    MeanEstimate mean(int attribute) {
        return join((s, n) -> s.moments(attribute, n), attribute, Double.NaN);
    }

    /**
     * Ratio of basal area to trees. Its error is that of the mean of (G - ratio·N)/mean(N) (linearisation; Cochran 1977, section 2.11,
     * from memory).
     */
    MeanEstimate ratio(MeanEstimate trees, MeanEstimate basalArea) {
        double ratio = basalArea.mean() / trees.mean();
        MeanEstimate linear =
                join((s, n) -> s.beyond(ratio, n), EstateSample.BEYOND, ratio).times(1 / trees.mean());
        return new MeanEstimate(linear.n(), linear.df(), ratio, linear.se(), linear.sd());
    }

    /** Whether trees stand on too few of the plots for the error of a ratio. */
    boolean isOnFewPlots() {
        long with = 0;
        int plots = 0;
        for (int k = 0; k < members.length; k++) {
            MomentSums s = sums[k];
            with += s == null ? 0 : s.above();
            plots += sample.plots(members[k]);
        }
        return RowMaker.isOnFewPlots(with, plots);
    }

    private MeanEstimate join(InStand moments, int attribute, double ratio) {
        List<MeanEstimate> parts = new ArrayList<>(members.length);
        for (int k = 0; k < members.length; k++) {
            parts.add(part(members[k], moments(k, moments), attribute, ratio));
        }
        return parts.size() == 1 ? parts.get(0) : WeightedSum.of(weights, parts, sample.rule());
    }

    private Moments moments(int k, InStand moments) {
        MomentSums s = sums[k];
        int n = sample.plots(members[k]);
        return s == null ? EstateSample.nothing(n) : moments.of(s, n);
    }

    private MeanEstimate part(int stand, Moments m, int attribute, double ratio) {
        double room = sample.plotsIn(stand);
        if (m.n() > 1 || members.length == 1 || !sample.isPooled()) {
            return StratifiedMean.simple(m, room);
        }
        EstateSample.Pooled lent = sample.pooled(sample.stand(stand).stratum(), species, attribute, ratio);
        MeanEstimate e = StratifiedMean.simple(new Moments(1, m.mean(), lent.variance()), room);
        return new MeanEstimate(1, sample.lentDf(lent), e.mean(), e.se(), e.sd());
    }
}
