package quadmean.audit;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quadmean.model.Problem;
import quadmean.model.Tally;

/**
 * What came of a check.
 *
 * @param cruise the tally of the cruise
 * @param check the checker's tally
 * @param result the check; null if a problem of either tally refuses it
 */
public record AuditRun(Tally cruise, Tally check, @Nullable CheckCruise result) {
    /** What is wrong with both tallies. */
    public List<Problem> problems() {
        return Stream.concat(cruise.problems().stream(), check.problems().stream())
                .toList();
    }
}
