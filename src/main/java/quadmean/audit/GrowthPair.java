package quadmean.audit;

import org.jspecify.annotations.Nullable;
import quadmean.estimate.Stem;
import quadmean.model.Tree;

/**
 * A tree of a permanent plot at two dates.
 *
 * @param plot plot number
 * @param before the tree at the earlier date; null if it is new
 * @param stemBefore the same as the estimate sees it
 * @param after the tree at the later date; null if it is not there
 * @param stemAfter the same as the estimate sees it
 */
record GrowthPair(
        String plot,
        @Nullable Tree before,
        @Nullable Stem stemBefore,
        @Nullable Tree after,
        @Nullable Stem stemAfter) {
    /** Plot and tree number. */
    String label() {
        return before != null ? before.label() : after != null ? after.label() : plot;
    }
}
