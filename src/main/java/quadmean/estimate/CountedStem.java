package quadmean.estimate;

import java.util.Set;
import quadmean.units.Attribute;

/**
 * Trees of a row that were counted, or predicted, and not measured.
 *
 * @param species species code
 * @param count number of trees, each as often as the treatment of the boundary has it
 * @param counts attributes that they count in, of trees and basal area
 * @param prediction what 3P sampling foretold of each; 0 if nothing
 */
public record CountedStem(String species, int count, Set<Attribute> counts, double prediction) {
    public CountedStem {
        counts = Set.copyOf(counts);
    }
}
