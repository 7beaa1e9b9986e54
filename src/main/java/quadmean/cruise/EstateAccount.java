package quadmean.cruise;

import java.util.Map;
import quadmean.model.Policy;
import quadmean.model.RowCount;
import quadmean.model.Rule;

/**
 * The account of a run over an estate, refused or not.
 *
 * @param rows the account of rows; all zero if none was read
 * @param problems number of problems by rule and policy
 */
public record EstateAccount(RowCount rows, Map<Rule, Map<Policy, Long>> problems) {
    /** The account before anything is read. */
    public static final EstateAccount NONE = new EstateAccount(new RowCount(0, 0, 0, 0), Map.of());
}
