package quadmean.audit;

import org.jspecify.annotations.Nullable;
import quadmean.model.Tally;

/**
 * What came of looking at a cruise under way.
 *
 * @param tally the tally so far
 * @param report the report; null if a problem refuses the tally
 */
public record ProgressRun(Tally tally, @Nullable ProgressReport report) {}
