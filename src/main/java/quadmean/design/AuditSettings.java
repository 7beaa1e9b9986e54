package quadmean.design;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The {@code [audit]} table: a second tally of some plots by a checker.
 *
 * @param tallies the checker's tally files, at least one
 * @param chosen how the check plots were chosen
 * @param marginPercent largest mean difference of plot values that does not matter, fixed beforehand (percent)
 * @param matchPercent largest difference in dbh of trees that are matched by size (percent)
 * @param confidence confidence level of one-sided bounds, in (0.5, 1)
 * @param tolerances limits of the readings
 */
public record AuditSettings(
        List<TallyFile> tallies,
        Chosen chosen,
        OptionalDouble marginPercent,
        double matchPercent,
        double confidence,
        Tolerances tolerances) {
    public AuditSettings {
        tallies = List.copyOf(tallies);
    }

    /** How check plots were chosen. */
    public enum Chosen {
        /** At random from all plots: they speak for the others. */
        RANDOM("random"),
        /** For any other reason: they speak for themselves. */
        JUDGEMENT("judgement");

        private final String id;

        Chosen(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }
}
