package quadmean.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quadmean.model.DegreesRule;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.MomentSums;
import quadmean.stats.Moments;
import quadmean.stats.StratifiedMean;
import quadmean.stats.WeightedSum;

/** The plots of an estate, as sums stand by stand. */
final class EstateSample {
    private final List<EstateStand> stands;
    private final List<@Nullable StandSums> sums;
    private final EstimateSettings settings;
    private final EstateOnePlot onePlot;
    private final Map<Question, Pooled> pooled = new HashMap<>();

    private record Question(String stratum, String species, int attribute) {}

    /**
     * Variance between plots within the stands of a stratum.
     *
     * @param variance Σ(n - 1)·s² / Σ(n - 1); NaN where every stand has one plot
     * @param df Σ(n - 1)
     */
    private record Pooled(double variance, double df) {}

    EstateSample(
            List<EstateStand> stands,
            List<@Nullable StandSums> sums,
            EstimateSettings settings,
            EstateOnePlot onePlot) {
        this.stands = stands;
        this.sums = sums;
        this.settings = settings;
        this.onePlot = onePlot;
    }

    @Nullable
    StandSums sums(int stand) {
        return sums.get(stand);
    }

    int plots(int stand) {
        StandSums s = sums.get(stand);
        return s == null ? 0 : s.plots();
    }

    /** Mean per hectare of an attribute over some stands, all of which have plots. */
    MeanEstimate mean(List<Integer> members, String species, int attribute) {
        return join(
                members,
                i -> moments(i, species, attribute),
                i -> pooled(stands.get(i).stratum(), species, attribute));
    }

    /**
     * Ratio of basal area to trees. Its error is that of the mean of (G - ratio·N)/mean(N) (linearisation; Cochran 1977, section 2.11,
     * from memory); stands with one plot have no part in it.
     */
    MeanEstimate ratio(List<Integer> members, String species) {
        double trees = mean(members, species, 0).mean();
        double ratio = mean(members, species, 1).mean() / trees;
        MeanEstimate linear = join(members, i -> beyond(i, species, ratio), i -> new Pooled(0, 0))
                .times(1 / trees);
        return new MeanEstimate(linear.n(), linear.df(), ratio, linear.se(), linear.sd());
    }

    private interface OfStand<R> {
        R of(int stand);
    }

    private MeanEstimate join(List<Integer> members, OfStand<Moments> moments, OfStand<Pooled> lent) {
        double area = members.stream().mapToDouble(i -> stands.get(i).areaHa()).sum();
        double[] weights = new double[members.size()];
        List<MeanEstimate> parts = new ArrayList<>(members.size());
        boolean isAlone = members.size() == 1;
        for (int k = 0; k < weights.length; k++) {
            int i = members.get(k);
            double areaHa = stands.get(i).areaHa();
            weights[k] = areaHa / area;
            Moments m = moments.of(i);
            boolean isLent = m.n() == 1 && !isAlone && onePlot == EstateOnePlot.POOL;
            Pooled other = isLent ? lent.of(i) : new Pooled(Double.NaN, 0);
            Moments used = isLent ? new Moments(1, m.mean(), other.variance()) : m;
            MeanEstimate e =
                    StratifiedMean.simple(used, settings.finitePopulation().plotsIn(settings.plot(), areaHa));
            parts.add(isLent ? new MeanEstimate(1, lentDf(other), e.mean(), e.se(), e.sd()) : e);
        }
        return isAlone ? parts.get(0) : WeightedSum.of(weights, parts, rule());
    }

    /** A borrowed variance brings no degrees of freedom of its own; Satterthwaite's count asks how well it is known. */
    private double lentDf(Pooled other) {
        return rule() == DegreesOfFreedom.SATTERTHWAITE ? other.df() : 0;
    }

    private DegreesOfFreedom rule() {
        return settings.degreesRule() == DegreesRule.SATTERTHWAITE
                ? DegreesOfFreedom.SATTERTHWAITE
                : DegreesOfFreedom.UNITS_MINUS_STRATA;
    }

    private Pooled pooled(String stratum, String species, int attribute) {
        return pooled.computeIfAbsent(new Question(stratum, species, attribute), q -> {
            double squares = 0;
            double df = 0;
            for (int i = 0; i < stands.size(); i++) {
                if (plots(i) > 1 && stands.get(i).stratum().equals(stratum)) {
                    Moments m = moments(i, species, attribute);
                    squares += (m.n() - 1) * m.variance();
                    df += m.n() - 1;
                }
            }
            return new Pooled(df == 0 ? Double.NaN : squares / df, df);
        });
    }

    private Moments moments(int stand, String species, int attribute) {
        MomentSums s = of(stand, species);
        int n = plots(stand);
        return s == null ? new Moments(n, 0, n < 2 ? Double.NaN : 0) : s.moments(attribute, n);
    }

    private Moments beyond(int stand, String species, double ratio) {
        MomentSums s = of(stand, species);
        int n = plots(stand);
        return s == null ? new Moments(n, 0, n < 2 ? Double.NaN : 0) : s.beyond(ratio, n);
    }

    private @Nullable MomentSums of(int stand, String species) {
        StandSums s = sums.get(stand);
        if (s == null) {
            return null;
        }
        return species.equals(EstimateRow.ALL) ? s.all() : s.of(species);
    }

    String onePlotNote(int n) {
        return onePlot == EstateOnePlot.POOL
                ? n + (n == 1 ? " stand has" : " stands have") + " a single plot and no error of "
                        + (n == 1 ? "its" : "their")
                        + " own; in the errors of strata and of the estate such a plot is taken to"
                        + " vary as plots do within the other stands of its stratum (common practice, no source)."
                : n + (n == 1 ? " stand has" : " stands have")
                        + " a single plot: no error is given for the strata with such stands and for the estate.";
    }
}
