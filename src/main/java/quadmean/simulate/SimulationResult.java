package quadmean.simulate;

import java.util.List;
import java.util.Optional;
import quadmean.design.Design;
import quadmean.units.Attribute;

/**
 * What came of cruising a known forest many times by one design.
 *
 * @param design the design on the ground of the forest
 * @param plots plots (or clusters) asked for; 0 where a spacing or a complete tally decides
 * @param cruises number of cruises
 * @param seed seed of all of them
 * @param attributes what was estimated, the target first
 * @param cost what one cruise takes
 * @param notes what a reader should know, in sentences
 */
public record SimulationResult(
        Design design,
        int plots,
        long cruises,
        long seed,
        List<AttributeOutcome> attributes,
        Cost cost,
        List<String> notes) {
    public SimulationResult {
        attributes = List.copyOf(attributes);
        notes = List.copyOf(notes);
    }

    /** The target attribute of the design, if it could be estimated. */
    public Optional<AttributeOutcome> target() {
        return outcome(design.targetAttribute());
    }

    /** What came of an attribute. */
    public Optional<AttributeOutcome> outcome(Attribute attribute) {
        return attributes.stream().filter(a -> a.attribute() == attribute).findFirst();
    }
}
