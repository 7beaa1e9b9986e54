package quadmean.model;

/**
 * Errors that go into the error budget, and how it is worked out. What is not known is NaN, and left out with a word about it.
 *
 * @param budget how the budget is worked out
 * @param dbhSdCm standard deviation of the reading of one dbh (cm), 0 or more
 * @param heightSdPercent standard deviation of one height written down in the tally, in percent of it; heights from
 *     readings bring their own
 * @param heightBiasPercent standard deviation of the error that all heights share, from instrument and crew (percent)
 * @param dbhBiasPercent the same of all dbh (percent)
 * @param equationPercent standard deviation of the error that all volumes by the equations share (percent)
 */
public record ErrorRules(
        BudgetRule budget,
        double dbhSdCm,
        double heightSdPercent,
        double heightBiasPercent,
        double dbhBiasPercent,
        double equationPercent) {
    /** Standard deviation of one dbh (cm), 0.1 in: common practice, no source. */
    public static final double COMMON_DBH_SD_CM = 0.254;

    /** By formula, with the common dbh error, and nothing else known. */
    public static final ErrorRules STANDARD =
            new ErrorRules(BudgetRule.FORMULA, COMMON_DBH_SD_CM, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
