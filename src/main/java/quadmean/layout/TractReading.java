package quadmean.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.model.Problem;

/**
 * What came of reading a boundary.
 *
 * @param tract the tract; null if a problem refuses it
 * @param problems everything found, also what was kept
 */
public record TractReading(@Nullable Tract tract, List<Problem> problems) {
    public TractReading {
        problems = List.copyOf(problems);
    }
}
