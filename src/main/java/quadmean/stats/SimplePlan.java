package quadmean.stats;

/**
 * Units drawn at random from all: SE = CV·√((1 - n/N)/n) in percent of the mean, on n - 1 degrees of freedom.
 *
 * @param cvPercent coefficient of variation between units (percent), above 0
 * @param populationUnits units in the population N, above 0; infinity for no correction. Need not be whole: a census takes the next
 *     whole number
 * @param most the largest size
 */
public record SimplePlan(double cvPercent, double populationUnits, int most) implements PlannedSample {
    /** Refuses what is no spread or no population. */
    public SimplePlan {
        Arguments.positive(cvPercent, "CV");
        Arguments.positive(Math.min(SampleSize.LARGEST, populationUnits), "units in the population");
    }

    /** A sample of any size up to a census; fewer than two units are too few for an error. */
    public SimplePlan(double cvPercent, double populationUnits) {
        this(
                cvPercent,
                populationUnits,
                populationUnits < 2 ? 1 : (int) Math.min(SampleSize.LARGEST, Math.ceil(populationUnits)));
    }

    @Override
    public int least() {
        return 2;
    }

    @Override
    public int[] parts(int n) {
        return new int[] {n};
    }

    @Override
    public MeanEstimate expected(int[] parts) {
        double unseen = Math.max(0, 1 - parts[0] / populationUnits);
        return new MeanEstimate(parts[0], parts[0] - 1, 100, cvPercent * Math.sqrt(unseen / parts[0]), cvPercent);
    }
}
