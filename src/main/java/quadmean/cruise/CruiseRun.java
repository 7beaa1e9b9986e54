package quadmean.cruise;

import org.jspecify.annotations.Nullable;
import quadmean.model.Tally;

/**
 * What came of working through a cruise.
 *
 * @param tally the tally with every problem found on the way
 * @param result the result; null if a problem refused it
 */
public record CruiseRun(Tally tally, @Nullable CruiseResult result) {}
