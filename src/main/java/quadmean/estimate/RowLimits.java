package quadmean.estimate;

import java.util.List;
import quadmean.model.IntervalRule;
import quadmean.model.Stratum;
import quadmean.stats.Interval;
import quadmean.stats.LogInterval;
import quadmean.stats.MeanEstimate;

/** Confidence limits of rows by the rule of the design, and the sampling error that follows from them. */
final class RowLimits {
    /** Said of rows whose sampling design has no bootstrap. */
    static final String NO_BOOTSTRAP = "the bootstrap knows no such sampling design; take interval = \"t\" or \"log\"";

    private RowLimits() {}

    /** Limits by formula: on the log scale where the design asks for it, by Student's t otherwise. */
    static Interval byFormula(MeanEstimate e, EstimateSettings settings) {
        return settings.rules().interval() == IntervalRule.LOG_SCALE
                ? LogInterval.of(e, settings.confidence())
                : e.interval(settings.confidence());
    }

    /**
     * Rows with the limits that the design asks for.
     *
     * @param rows rows with limits by t
     * @param seed seed of the resamples
     * @param notes receives what a reader should know
     */
    static List<EstimateRow> apply(
            List<EstimateRow> rows,
            List<Stratum> strata,
            List<SampledPlot> plots,
            EstimateSettings settings,
            long seed,
            List<String> notes) {
        IntervalRule rule = settings.rules().interval();
        return switch (rule) {
            case STUDENT_T -> rows;
            case LOG_SCALE -> rows.stream().map(r -> onLogScale(r, settings)).toList();
            case PERCENTILE, BCA ->
                Sample.of(strata, plots, settings) instanceof CensusSample
                        ? rows
                        : new BootstrapLimits(strata, plots, settings, seed).apply(rows, notes);
        };
    }

    private static EstimateRow onLogScale(EstimateRow row, EstimateSettings settings) {
        MeanEstimate e = new MeanEstimate(row.n(), row.df(), row.mean(), row.se(), Double.NaN);
        EstimateRow with = with(row, LogInterval.of(e, settings.confidence()));
        boolean isBelow = row.mean() < 0 && row.reason().isEmpty();
        return isBelow ? withReason(with, "a log scale needs an estimate above 0") : with;
    }

    /** The row with other limits; its sampling error is half their width in percent of the estimate. */
    static EstimateRow with(EstimateRow row, Interval limits) {
        double half = (limits.upper() - limits.lower()) / 2;
        double percent = row.mean() == 0 ? Double.NaN : 100 * half / Math.abs(row.mean());
        return copy(row, limits, percent, row.reason());
    }

    static EstimateRow withReason(EstimateRow row, String reason) {
        return copy(row, new Interval(row.lower(), row.upper()), row.samplingErrorPercent(), reason);
    }

    private static EstimateRow copy(EstimateRow row, Interval limits, double percent, String reason) {
        return new EstimateRow(
                row.stratum(),
                row.species(),
                row.part(),
                row.attribute(),
                row.basis(),
                row.n(),
                row.df(),
                row.mean(),
                row.se(),
                row.cvPercent(),
                limits.lower(),
                limits.upper(),
                percent,
                reason);
    }
}
