package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;

/** The target attribute as it stood while plots came in. */
final class RunningEstimate {
    /** More steps than a picture can show. */
    private static final int MAX_STEPS = 400;

    private RunningEstimate() {}

    static List<RunningMean> of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        if (settings.plot() instanceof PlotDesign.Complete) {
            return List.of(); // parts of a stratum are no sample of it
        }
        ToDoubleFunction<SampledPlot> value = PlotValue.of(settings.plot(), settings.target(), stem -> true);
        int step = Math.max(1, plots.size() / MAX_STEPS);
        List<RunningMean> running = new ArrayList<>();
        for (int n = 1; n <= plots.size(); n++) {
            if (n % step != 0 && n != plots.size()) {
                continue;
            }
            String last = plots.get(n - 1).id();
            Sample sample = Sample.of(strata, plots.subList(0, n), settings);
            if (!sample.isComplete()) {
                running.add(new RunningMean(n, last, Double.NaN, Double.NaN, Double.NaN));
                continue;
            }
            MeanEstimate mean = sample.mean(value);
            Interval limits = RowLimits.byFormula(mean, settings);
            running.add(new RunningMean(n, last, mean.mean(), limits.lower(), limits.upper()));
        }
        return running;
    }
}
