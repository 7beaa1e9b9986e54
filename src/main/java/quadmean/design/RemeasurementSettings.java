package quadmean.design;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The {@code [remeasurement]} table: permanent plots measured at an earlier date too.
 *
 * @param tallies tally files of the earlier date, at least one
 * @param years years between the dates, above 0
 * @param absent what became of trees that the later tally does not have
 * @param largestGrowthCm largest growth in dbh between the dates (cm): a new tree that is larger than the smallest dbh and this was
 *     there before
 */
public record RemeasurementSettings(
        List<TallyFile> tallies, double years, Absent absent, OptionalDouble largestGrowthCm) {
    public RemeasurementSettings {
        tallies = List.copyOf(tallies);
    }

    /** What became of trees that the later tally does not have. */
    public enum Absent {
        /** Nobody knows, so that each of them is a mistake. */
        REFUSE("refuse"),
        CUT("cut"),
        DEAD("dead");

        private final String id;

        Absent(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }
}
