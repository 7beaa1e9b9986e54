package quadmean.model;

import java.util.List;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * A table of felled trees as it was read.
 *
 * @param file name of the table
 * @param columns what stands in which column and unit, in words
 * @param dbhUnit unit of dbh in the table
 * @param heightUnit unit of height in the table
 * @param volumeUnit unit of volume in the table; where it has none, the one that goes with its heights
 * @param volumes how the volumes came about, in words; empty where the table gives them
 * @param stems measured stems whose volumes have to be summed; empty where the table gives volumes
 * @param trees the trees used, in the order of the table
 * @param rows the account of its rows
 * @param problems what is wrong with it
 */
public record FelledData(
        String file,
        List<String> columns,
        Unit dbhUnit,
        Unit heightUnit,
        Unit volumeUnit,
        String volumes,
        List<FelledStem> stems,
        List<FelledTree> trees,
        RowCount rows,
        List<Problem> problems) {
    public FelledData {
        columns = List.copyOf(columns);
        stems = List.copyOf(stems);
        trees = List.copyOf(trees);
        problems = List.copyOf(problems);
    }

    /** The same table with trees whose volumes were summed. */
    public FelledData summed(String how, List<FelledTree> sums, RowCount account, List<Problem> all) {
        return new FelledData(file, columns, dbhUnit, heightUnit, volumeUnit, how, stems, sums, account, all);
    }

    /** Whether a problem stops the run. */
    public boolean isRefused() {
        return problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
    }

    /** The system that most of its three units belong to. */
    public UnitSystem units() {
        int us = (dbhUnit == Unit.INCH ? 1 : 0)
                + (heightUnit == Unit.FOOT ? 1 : 0)
                + (volumeUnit == Unit.CUBIC_FOOT ? 1 : 0);
        return us > 1 ? UnitSystem.US : UnitSystem.METRIC;
    }
}
