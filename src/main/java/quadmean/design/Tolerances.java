package quadmean.design;

import java.util.Locale;
import java.util.Optional;

/**
 * How near a cruise must come to its check, reading by reading. What has no limit is described and not judged.
 *
 * @param source where the limits come from, in words
 * @param dbh limit of the dbh (cm)
 * @param height limit of the height (percent of the checker's)
 * @param species share of trees whose species must agree
 * @param count share of plots whose trees must be the checker's, none missed and none too many
 * @param defect limit of the defect (percentage points)
 */
public record Tolerances(
        String source,
        Optional<Limit> dbh,
        Optional<Limit> height,
        Optional<Limit> species,
        Optional<Limit> count,
        Optional<Limit> defect) {

    /** What the differences of a limit are taken of. */
    public enum Scale {
        /** The same for every tree. */
        FIXED,
        /** So much for each started step of the checker's value. */
        STEPS,
        /** A percentage of the checker's value. */
        PERCENT
    }

    /**
     * One limit.
     *
     * @param within largest difference allowed, 0 where values must agree
     * @param scale what it is taken of
     * @param step the step, in the unit of the value; NaN unless the scale has steps
     * @param share share of the readings that must be within, in (0, 1]
     */
    public record Limit(double within, Scale scale, double step, double share) {
        /** Half a hair, so that a difference of a tenth between two numbers with one decimal is a tenth. */
        private static final double HAIR = 1e-9;

        public Limit {
            if (!(within >= 0) || !(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("no limit: " + within + ", share " + share);
            }
        }

        /** A share of readings that must agree. */
        public static Limit agreement(double share) {
            return new Limit(0, Scale.FIXED, Double.NaN, share);
        }

        /** The largest difference allowed from a value of the checker. */
        public double allowed(double checked) {
            return switch (scale) {
                case FIXED -> within;
                case STEPS -> within * Math.max(1, Math.ceil(checked / step * (1 - HAIR)));
                case PERCENT -> within / 100 * checked;
            };
        }

        /** Whether a reading of the cruise is near enough to the checker's. */
        public boolean holds(double cruised, double checked) {
            return Math.abs(cruised - checked) <= allowed(checked) * (1 + HAIR) + HAIR * Math.abs(checked);
        }

        /** The share that must be within, in words. */
        public String demand() {
            return String.format(Locale.ROOT, "%s %%", Section.show(Math.rint(1e6 * share) / 1e4));
        }
    }

    /** Nothing is judged. */
    public static final Tolerances NONE = new Tolerances(
            "none stated", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
