package quadmean.simulate;

import java.util.List;
import java.util.Optional;
import quadmean.model.IntervalRule;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * What many cruises made of one attribute, in metric units.
 *
 * @param attribute the attribute
 * @param basis per unit area, or ratio
 * @param truth its true value in the forest
 * @param estimates cruises that had an estimate
 * @param without cruises that had none
 * @param mean mean of the estimates
 * @param sd standard deviation of the estimates: the true standard error
 * @param sdError Monte Carlo standard error of {@code sd}
 * @param skewness skewness of the estimates
 * @param meanSe mean of the standard errors that cruises estimated for themselves
 * @param meanVariance mean of their squares
 * @param correlation correlation of estimate and estimated standard error
 * @param coverages how often limits held the truth, for each way to make them
 * @param histogram how the estimates were spread
 */
public record AttributeOutcome(
        Attribute attribute,
        Basis basis,
        double truth,
        long estimates,
        long without,
        double mean,
        double sd,
        double sdError,
        double skewness,
        double meanSe,
        double meanVariance,
        double correlation,
        List<Coverage> coverages,
        Histogram histogram) {
    public AttributeOutcome {
        coverages = List.copyOf(coverages);
    }

    /** Mean of the estimates minus the truth. */
    public double bias() {
        return mean - truth;
    }

    /** Monte Carlo standard error of the bias. */
    public double biasError() {
        return sd / Math.sqrt((double) estimates);
    }

    /** The bias in percent of the truth. */
    public double biasPercent() {
        return 100 * bias() / truth;
    }

    /** Root mean square of what estimates are off by. */
    public double rootMeanSquareError() {
        return Math.hypot(sd, bias());
    }

    /** How often the limits of a rule held the truth. */
    public Optional<Coverage> coverage(IntervalRule rule) {
        return coverages.stream().filter(c -> c.rule() == rule).findFirst();
    }
}
