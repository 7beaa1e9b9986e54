package quadmean.audit;

import java.util.List;
import quadmean.units.Attribute;

/**
 * Stands added up.
 *
 * @param attribute what was added up
 * @param confidence confidence level of the limits, in (0, 1)
 * @param stands the stands, in the order of the list
 * @param totals one for each stand
 * @param groups one for each group of the list, in the order of their names
 * @param strata one for each stratum that stands have in common by its code; sampling errors alone
 * @param all all stands together
 * @param averagedSe what the standard error of all would be if shared errors averaged out, to compare with
 * @param notes what a reader should know, in sentences
 */
public record Combined(
        Attribute attribute,
        double confidence,
        List<CombinedStand> stands,
        List<StandTotal> totals,
        List<StandTotal> groups,
        List<StandTotal> strata,
        StandTotal all,
        double averagedSe,
        List<String> notes) {
    public Combined {
        stands = List.copyOf(stands);
        totals = List.copyOf(totals);
        groups = List.copyOf(groups);
        strata = List.copyOf(strata);
        notes = List.copyOf(notes);
    }
}
