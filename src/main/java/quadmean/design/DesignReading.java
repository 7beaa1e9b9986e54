package quadmean.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.model.Problem;

/**
 * What came of reading a design file.
 *
 * @param design the design; null if there are problems
 * @param problems everything wrong with the file
 */
public record DesignReading(@Nullable Design design, List<Problem> problems) {
    public DesignReading {
        problems = List.copyOf(problems);
    }
}
