package quadmean.stats;

/**
 * Quantiles of resamples (Davison and Hinkley 1997, equations 5.8 and 5.21; from memory).
 *
 * @param sorted finite values in rising order, at least one
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record ReplicateLimits(double[] sorted) {

    /** The level that takes the place of a tail probability: Φ(z0 + (z0 + z)/(1 - a(z0 + z))); 0 or 1 where z0 is infinite. */
    static double corrected(double level, double bias, double acceleration) {
        if (Double.isInfinite(bias)) {
            return bias > 0 ? 1 : 0;
        }
        double z = bias + NormalCurve.quantile(level);
        return NormalCurve.lowerTail(bias + z / (1 - acceleration * z));
    }

    /** The normal value of the share of resamples below the estimate, those equal to it counted half. */
    double bias(double estimate) {
        int below = 0;
        int equal = 0;
        for (double v : sorted) {
            below += v < estimate ? 1 : 0;
            equal += v == estimate ? 1 : 0;
        }
        return NormalCurve.quantile((below + 0.5 * equal) / sorted.length);
    }

    /** Whether a level lies between the first and the last resample. */
    boolean holds(double level) {
        double rank = (sorted.length + 1) * level;
        return rank >= 1 && rank <= sorted.length;
    }

    /** The value at rank (R+1)·level, between two resamples on the normal scale; the first or last beyond them. */
    double quantile(double level) {
        int r = sorted.length;
        double rank = (r + 1) * level;
        if (!(rank > 1)) {
            return sorted[0];
        }
        if (rank >= r) {
            return sorted[r - 1];
        }
        int k = (int) rank;
        double low = NormalCurve.quantile(k / (r + 1.0));
        double high = NormalCurve.quantile((k + 1) / (r + 1.0));
        double share = (NormalCurve.quantile(level) - low) / (high - low);
        return sorted[k - 1] + share * (sorted[k] - sorted[k - 1]);
    }
}
