package quadmean.audit;

import java.util.List;
import java.util.Optional;
import quadmean.design.Tolerances.Limit;
import quadmean.stats.ClusteredShare;
import quadmean.stats.Interval;
import quadmean.stats.Proportion;

/**
 * A share of readings within its limit, held against the share that is asked for.
 *
 * @param what what was compared, in words
 * @param unit what is counted, as a plural: trees or plots
 * @param limit the limit; empty if the design has none, so that nothing is judged
 * @param within readings within it
 * @param n readings compared
 * @param plots plots that they lie on
 * @param exact one-sided exact binomial bounds, each at the confidence of the design, as if readings were independent; NaN without
 *     readings
 * @param clustered the same with what trees of a plot have in common; NaN on a single plot; for plots those of {@code exact}
 * @param verdict what came of it
 */
public record Judgement(
        String what,
        String unit,
        Optional<Limit> limit,
        int within,
        int n,
        int plots,
        Interval exact,
        Interval clustered,
        Verdict verdict) {
    private static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);

    /** Whether the share is large enough, and whether so few readings show it. */
    public enum Verdict {
        PASSES("passes", "passes, and the bound shows it"),
        PASSES_BARELY("passes_not_shown", "passes, but the sample is too small to show it"),
        FAILS_BARELY("fails_not_shown", "fails, but the sample is too small to show it"),
        FAILS("fails", "fails, and the bound shows it"),
        NOT_JUDGED("not_judged", "not judged: the design has no limit"),
        NOTHING("nothing_compared", "nothing to compare");

        private final String id;
        private final String words;

        Verdict(String id, String words) {
            this.id = id;
            this.words = words;
        }

        /** The name used in JSON and CSV. */
        public String id() {
            return id;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** Whether the share fell short. */
        public boolean isFailure() {
            return this == FAILS || this == FAILS_BARELY;
        }
    }

    /** Share within; NaN without readings. */
    public double share() {
        return (double) within / n;
    }

    /** Of trees on plots. */
    static Judgement ofTrees(String what, Optional<Limit> limit, List<ClusteredShare.Count> plots, double confidence) {
        int n = plots.stream().mapToInt(ClusteredShare.Count::n).sum();
        int within = plots.stream().mapToInt(ClusteredShare.Count::having).sum();
        if (n == 0) {
            return new Judgement(what, "trees", limit, 0, 0, 0, UNKNOWN, UNKNOWN, Verdict.NOTHING);
        }
        double both = 2 * confidence - 1;
        ClusteredShare share = ClusteredShare.of(plots, both);
        Interval exact = new Proportion(within, n).exact(both);
        Interval clustered = share.limits(both);
        return new Judgement(
                what,
                "trees",
                limit,
                within,
                n,
                share.clusters(),
                exact,
                clustered,
                verdict(limit, (double) within / n, clustered));
    }

    /** Of plots, each of which counts for itself. */
    static Judgement ofPlots(String what, Optional<Limit> limit, int within, int n, double confidence) {
        if (n == 0) {
            return new Judgement(what, "plots", limit, 0, 0, 0, UNKNOWN, UNKNOWN, Verdict.NOTHING);
        }
        Interval exact = new Proportion(within, n).exact(2 * confidence - 1);
        return new Judgement(
                what, "plots", limit, within, n, n, exact, exact, verdict(limit, (double) within / n, exact));
    }

    private static Verdict verdict(Optional<Limit> limit, double share, Interval bounds) {
        if (limit.isEmpty()) {
            return Verdict.NOT_JUDGED;
        }
        double asked = limit.get().share();
        if (share >= asked) {
            return bounds.lower() >= asked ? Verdict.PASSES : Verdict.PASSES_BARELY;
        }
        return bounds.upper() < asked ? Verdict.FAILS : Verdict.FAILS_BARELY;
    }
}
