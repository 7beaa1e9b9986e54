package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import quadmean.model.EstimatorRules;
import quadmean.model.Stratum;
import quadmean.model.VarianceForm;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;

/**
 * The error of a stand's estimate by one of the variances of its estimator.
 *
 * @param attribute what is estimated, per unit area
 * @param variance the variance
 * @param df degrees of freedom; NaN without an error
 * @param se standard error (metric); NaN where the variance cannot be formed
 * @param samplingErrorPercent half width of the t interval, in percent of the estimate
 * @param reason why there is no error; empty if there is one
 */
public record OtherVariance(
        Attribute attribute, VarianceForm variance, double df, double se, double samplingErrorPercent, String reason) {

    /** All variances of the estimator, the one in use among them, for what is known; empty where it has only one. */
    static List<OtherVariance> of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        EstimatorRules rules = settings.rules().estimation();
        List<VarianceForm> forms = rules.estimator().variances().stream()
                .filter(v ->
                        !v.isOfGrid() || plots.stream().noneMatch(p -> p.facts().place() == null))
                .toList();
        List<OtherVariance> list = new ArrayList<>();
        if (forms.size() < 2) {
            return list;
        }
        for (Attribute attribute : settings.attributes()) {
            for (VarianceForm form : forms) {
                Sample sample = Sample.of(strata, plots, settings.with(rules.with(form)));
                MeanEstimate e = sample.mean(PlotValue.of(settings.plot(), attribute, s -> true));
                if (!Double.isNaN(e.mean())) {
                    list.add(of(attribute, form, e, sample, settings));
                }
            }
        }
        return list;
    }

    private static OtherVariance of(
            Attribute attribute, VarianceForm form, MeanEstimate e, Sample sample, EstimateSettings settings) {
        boolean known = e.hasError();
        return new OtherVariance(
                attribute,
                form,
                known ? e.df() : Double.NaN,
                known ? e.se() : Double.NaN,
                known ? e.samplingErrorPercent(settings.confidence()) : Double.NaN,
                known ? "" : sample.whyNoError());
    }
}
