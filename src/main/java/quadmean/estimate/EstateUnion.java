package quadmean.estimate;

import java.util.List;
import java.util.function.Function;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.WeightedSum;

/**
 * Groups of stands together, weighted by area. That gives what all their stands give in one sum: means and variances add up, and so do
 * degrees of freedom by either rule, as Σv²/df of a group is the v²/df of its sum (by algebra).
 */
final class EstateUnion {
    private static final int TREES = 0;
    private static final int BASAL_AREA = 1;

    private final List<EstateGroup> groups;
    private final double[] weights;
    private final double areaHa;
    private final DegreesOfFreedom rule;

    /** A single group. */
    EstateUnion(EstateGroup group, DegreesOfFreedom rule) {
        this(List.of(group), rule);
    }

    EstateUnion(List<EstateGroup> groups, DegreesOfFreedom rule) {
        this.groups = groups;
        this.rule = rule;
        double area = 0;
        for (EstateGroup group : groups) {
            area += group.areaHa();
        }
        this.areaHa = area;
        this.weights = new double[groups.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = groups.get(i).areaHa() / area;
        }
    }

    /** Area of all stands (ha). */
    double areaHa() {
        return areaHa;
    }

    /** Mean per hectare of an attribute. */
    MeanEstimate mean(int attribute) {
        return join(g -> g.mean(attribute));
    }

    /**
     * Ratio of basal area to trees. Its error is that of the mean of (G - ratio·N)/mean(N) (linearisation; Cochran 1977, section 2.11,
     * from memory).
     */
    MeanEstimate ratio() {
        double trees = mean(TREES).mean();
        double ratio = mean(BASAL_AREA).mean() / trees;
        MeanEstimate linear = join(g -> g.beyond(ratio)).times(1 / trees);
        return new MeanEstimate(linear.n(), linear.df(), ratio, linear.se(), linear.sd());
    }

    /** Whether trees stand on too few of the plots for the error of a ratio. */
    boolean isOnFewPlots() {
        long with = 0;
        int plots = 0;
        for (EstateGroup group : groups) {
            with += group.plotsWithTrees();
            plots += group.plots();
        }
        return RowMaker.isOnFewPlots(with, plots);
    }

    private MeanEstimate join(Function<EstateGroup, MeanEstimate> of) {
        return groups.size() == 1
                ? of.apply(groups.get(0))
                : WeightedSum.of(weights, groups.stream().map(of).toList(), rule);
    }
}
