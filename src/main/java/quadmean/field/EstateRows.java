package quadmean.field;

import java.util.List;
import quadmean.model.Problem;

/**
 * The account of the rows of a range.
 *
 * @param used rows used
 * @param dropped rows left out
 * @param kept rows used that are listed in spite of a problem
 * @param problems everything wrong with them, in the order of the file
 */
public record EstateRows(long used, long dropped, long kept, List<Problem> problems) {
    public EstateRows {
        problems = List.copyOf(problems);
    }
}
