package quadmean.audit;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.design.RemeasurementSettings;

/**
 * Permanent plots at two dates.
 *
 * @param before the earlier date worked through
 * @param after the later date worked through
 * @param settings what the design says of them
 * @param plots plots measured at both
 * @param areaHa area that the means stand for (ha)
 * @param attributes growth by attribute, the target first
 * @param findings trees to look at again, in sentences
 * @param notes what a reader should know, in sentences
 */
public record Growth(
        CruiseResult before,
        CruiseResult after,
        RemeasurementSettings settings,
        int plots,
        double areaHa,
        List<AttributeGrowth> attributes,
        List<String> findings,
        List<String> notes) {
    /** Whether trees come in on a plot that were large enough before. */
    public boolean hasOngrowth() {
        return TreeFates.hasOngrowth(after.design());
    }

    public Growth {
        attributes = List.copyOf(attributes);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
