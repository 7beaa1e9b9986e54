package quadmean.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.model.CurveForm;

/**
 * A species of the design.
 *
 * @param code code used in outputs
 * @param name name for people
 * @param group group it belongs to, empty if none
 * @param recodeFrom codes in the tally that mean this species
 * @param curve height curve form asked for, null for automatic choice
 */
public record SpeciesEntry(
        String code,
        String name,
        String group,
        List<String> recodeFrom,
        @Nullable CurveForm curve) {
    public SpeciesEntry {
        recodeFrom = List.copyOf(recodeFrom);
    }
}
