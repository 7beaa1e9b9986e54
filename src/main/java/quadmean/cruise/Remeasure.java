package quadmean.cruise;

import java.util.List;
import quadmean.height.HeightedTree;

/**
 * A tree that the crew should measure again, and what it is worth.
 *
 * @param tree the tree with the height in use
 * @param doubtM how far its height may be off (m): its standard error, or that of the curve with its scatter where a height
 *     was set aside or could not be read; NaN where the height is not in doubt
 * @param effectM3 what that does to the volume of the whole stand (m³); NaN where volumes are not known
 * @param effectPercent the same in percent of the stand's volume
 * @param problems problems of its row, in sentences
 * @param remarks what is doubtful in its readings, each a code, a colon and a sentence, or a sentence alone
 */
public record Remeasure(
        HeightedTree tree,
        double doubtM,
        double effectM3,
        double effectPercent,
        List<String> problems,
        List<String> remarks) {
    public Remeasure {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
    }
}
