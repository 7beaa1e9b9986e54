package quadmean.stats;

import java.util.Arrays;

/**
 * When a sample that grows by whole subsets may stop because its limits are narrow enough. Looking at the limits to decide when to
 * stop makes them hold less often than they say: samples that happen to vary little stop early.
 */
public enum FixedWidth {
    /**
     * Stop at the first whole subset, from the minimum on, where half the width of the usual limits is at or below the target (Chow
     * and Robbins 1965, from memory). The limits then hold somewhat less often than they say.
     */
    SEQUENTIAL("sequential"),
    /**
     * The units of the first stage alone say how many are needed in all; limits keep their standard deviation and degrees of freedom
     * (Stein 1945, from memory). For a fixed width and normal values they hold at least as often as they say; for a width in percent of
     * the mean, and values that are not normal, nearly.
     */
    TWO_STAGE("two_stage");

    private final String id;

    FixedWidth(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** Rule of a name. */
    public static FixedWidth of(String id) {
        return Arrays.stream(values())
                .filter(r -> r.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no rule " + id));
    }

    /**
     * Units in all that the first stage asks for: n·(t·SE/(target·mean))², subsets being laid out alike, and at least its own.
     *
     * @param first estimate from the first stage
     * @param targetPercent allowed half width in percent of the mean, above 0
     * @param confidence confidence level, in (0, 1)
     * @return NaN without an error
     */
    public static double unitsNeeded(MeanEstimate first, double targetPercent, double confidence) {
        double ratio = first.samplingErrorPercent(confidence) / Arguments.positive(targetPercent, "target");
        return Double.isNaN(ratio) ? Double.NaN : Math.max(first.n(), first.n() * ratio * ratio);
    }

    /** The estimate of all units with the error that the rule reports: two stages keep the deviation of the first. */
    public MeanEstimate reported(MeanEstimate first, MeanEstimate now) {
        if (this == SEQUENTIAL) {
            return now;
        }
        double se = first.se() * Math.sqrt((double) first.n() / now.n());
        return new MeanEstimate(now.n(), first.df(), now.mean(), se, first.sd());
    }

    /**
     * Whether a whole subset may be the last.
     *
     * @param first estimate from the first stage, the first subsets that together reach the minimum
     * @param now estimate from all whole subsets
     */
    public boolean mayStop(MeanEstimate first, MeanEstimate now, double targetPercent, double confidence) {
        return switch (this) {
            case SEQUENTIAL -> now.samplingErrorPercent(confidence) <= targetPercent;
            case TWO_STAGE -> now.n() >= unitsNeeded(first, targetPercent, confidence);
        };
    }
}
