package quadmean.audit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import quadmean.cruise.ErrorPart.Source;
import quadmean.stats.MeanEstimate;

/**
 * A stand, or several together, in one attribute: totals in its metric unit.
 *
 * @param name what to call it
 * @param areaHa area (ha)
 * @param plots plots run
 * @param sampling total with its sampling error; sums have those of independent stands added up
 * @param shared standard errors of what stands share by source: those of one group of stands add up, those of several are
 *     independent; NaN where it is not known for a stand
 * @param otherVariance variance of what each stand has for itself besides sampling
 */
public record StandTotal(
        String name,
        double areaHa,
        int plots,
        MeanEstimate sampling,
        Map<Source, Double> shared,
        double otherVariance) {
    public StandTotal {
        Map<Source, Double> copy = new EnumMap<>(Source.class);
        copy.putAll(shared);
        shared = Collections.unmodifiableMap(copy);
    }

    /** Standard error with every part that is known. */
    public double totalSe() {
        double variance = sampling.variance() + otherVariance;
        for (double se : shared.values()) {
            variance += Double.isNaN(se) ? 0 : se * se;
        }
        return Math.sqrt(Math.max(0, variance));
    }

    /** The total with that error; degrees of freedom after Satterthwaite, the shared parts taken as known exactly. */
    public MeanEstimate withAll() {
        double se = totalSe();
        double ratio = se * se / sampling.variance();
        double df = sampling.hasError() && sampling.variance() > 0 ? ratio * ratio * sampling.df() : sampling.df();
        return new MeanEstimate(sampling.n(), df, sampling.mean(), se, sampling.sd());
    }
}
