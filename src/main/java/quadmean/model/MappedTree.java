package quadmean.model;

/**
 * A tree of a forest in which every tree is known.
 *
 * @param row line of the file it came from, or its number in a generated forest
 * @param x place on the map, to the east (m)
 * @param y place on the map, to the north (m)
 * @param species species code
 * @param dbhCm diameter at breast height (cm), above zero
 * @param heightM total height (m); NaN if it is not known
 */
public record MappedTree(long row, double x, double y, String species, double dbhCm, double heightM) {
    /** The same tree with a height. */
    public MappedTree withHeight(double metres) {
        return new MappedTree(row, x, y, species, dbhCm, metres);
    }
}
