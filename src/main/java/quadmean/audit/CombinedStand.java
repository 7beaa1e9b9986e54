package quadmean.audit;

import quadmean.cruise.CruiseResult;
import quadmean.model.ListedStand;

/**
 * A stand of a list worked through.
 *
 * @param listed the row of the list
 * @param cruise its cruise
 */
public record CombinedStand(ListedStand listed, CruiseResult cruise) {
    /** Its name, or that of its design. */
    public String name() {
        return listed.name().isEmpty() ? cruise.design().name() : listed.name();
    }
}
