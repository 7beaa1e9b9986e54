package quadmean.stats;

import java.util.Set;

/**
 * Bootstrap confidence limits.
 *
 * @param limits the limits; NaN where the resamples have no spread
 * @param notes what to say beside them
 * @param undefined number of resamples that gave no value
 */
public record BootstrapInterval(Interval limits, Set<BootstrapNote> notes, int undefined) {}
