package quadmean.model;

import java.util.List;

/**
 * What a file says of a forest: a map of its trees, or a stand table.
 *
 * @param file name of the file
 * @param kind which of the two it is
 * @param trees the trees of a map, in file order
 * @param classes the lines of a stand table, in file order
 * @param rows the account of rows
 * @param problems everything wrong with it; any of them refuses it
 */
public record ForestData(
        String file,
        Kind kind,
        List<MappedTree> trees,
        List<StandClass> classes,
        RowCount rows,
        List<Problem> problems) {
    public ForestData {
        trees = List.copyOf(trees);
        classes = List.copyOf(classes);
        problems = List.copyOf(problems);
    }

    /** Kinds of file. */
    public enum Kind {
        /** Each row is a tree with its place. */
        MAP,
        /** Each row is a class of trees with their number per area. */
        STAND_TABLE,
        /** Each row is a class of trees with their height. */
        HEIGHTS
    }
}
