package quadmean.model;

/**
 * A row of trees that were counted, or predicted, and not measured.
 *
 * @param file tally file it came from
 * @param row line in that file
 * @param species species code after recodes
 * @param detail number of trees, status, times that they count, and prediction
 */
public record CountedTrees(String file, long row, String species, TreeDetail detail) {}
