package quadmean.cruise;

import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.estimate.StandSums;
import quadmean.field.EstateRows;
import quadmean.units.Attribute;

/**
 * What came of a range of an estate's tally.
 *
 * @param rows the account of its rows
 * @param sums sums of its plots by number of the stand
 * @param plots where each plot starts
 * @param remarks how many trees there is something to remark on, by what it is
 * @param missing for attributes that are not known of every tree, why
 */
record EstatePart(
        EstateRows rows,
        Map<Integer, StandSums> sums,
        List<PlotStart> plots,
        Map<String, Long> remarks,
        Map<Attribute, Set<String>> missing) {

    /**
     * The first row of a plot.
     *
     * @param stand number of the stand
     * @param plot plot number as written
     * @param line its line
     */
    record PlotStart(int stand, String plot, long line) {}
}
