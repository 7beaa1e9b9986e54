package quadmean.report;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.MeanWorking;
import quadmean.estimate.StratumWorking;
import quadmean.model.DegreesRule;
import quadmean.model.Estimator;
import quadmean.model.PlotFacts;
import quadmean.stats.MeanEstimate;
import quadmean.units.Unit;

/** Plot values to a mean with its standard error, stratum by stratum. */
final class StrataSteps {
    private final CruiseResult result;
    private final MeanWorking working;
    private final DoubleUnaryOperator shown;
    private final String unit;
    private final Steps steps;

    StrataSteps(CruiseResult result, MeanWorking working, DoubleUnaryOperator shown, Unit unit, Steps steps) {
        this.result = result;
        this.working = working;
        this.shown = shown;
        this.unit = unit.label();
        this.steps = steps;
    }

    /** Values, means and variances of each stratum, and what they come to. */
    void write(String what) {
        for (StratumWorking s : working.strata()) {
            values(s, what);
            stratum(s);
        }
        if (working.strata().size() > 1) {
            steps.say("All strata, weighted by area");
            steps.step("mean", joined(s -> weight(s) + " × " + Steps.term(mean(s))), mean(), unit);
        } else {
            steps.say("Mean and error");
            steps.say("  mean = " + Steps.number(mean()) + " " + unit);
        }
        if (!working.mean().hasError()) {
            return;
        }
        double se = shown.applyAsDouble(working.mean().se());
        String inside = working.strata().size() > 1
                ? joined(s -> weight(s) + " × " + weight(s) + " × " + Steps.number(variance(s)))
                : joined(s -> Steps.number(variance(s)));
        steps.step("standard error", "√(" + inside + ")", se, unit);
        degrees();
    }

    /** The plot values alone. */
    void values(String what) {
        working.strata().forEach(s -> values(s, what));
    }

    private void values(StratumWorking s, String what) {
        Unit area = result.design().units().area();
        steps.say("Stratum " + Names.stratum(result.design(), s.stratum()) + ": "
                + Steps.number(Unit.HECTARE.convert(s.areaHa(), area)) + " " + area.label() + ", "
                + Headline.count(s.values().size(), "plot"));
        if (working.strata().size() > 1) {
            double all = Unit.HECTARE.convert(working.areaHa(), area);
            steps.step(
                    "weight",
                    Steps.number(Unit.HECTARE.convert(s.areaHa(), area)) + " / " + Steps.number(all),
                    s.weight(),
                    "");
        }
        for (int i = 0; i < s.values().size(); i++) {
            steps.say("  plot " + s.plots().get(i) + ", " + what + ": "
                    + Steps.number(shown.applyAsDouble(s.values().get(i))) + " " + unit
                    + facts(s.facts().get(i)));
        }
    }

    /** What the design's estimator needs of a plot besides its value. */
    private String facts(PlotFacts f) {
        Estimator estimator = result.design().estimation().estimation().estimator();
        PlotFacts.Place place = f.place();
        return (estimator.needsAuxiliary() ? ", auxiliary " + Steps.number(f.auxiliary()) : "")
                + (estimator.needsGroup() ? ", class " + f.group() : "")
                + (estimator.isClustered() ? ", cluster " + f.cluster() : "")
                + (estimator == Estimator.TWO_STAGE ? " of size " + Steps.number(f.clusterSize()) : "")
                + (estimator.needsChance() ? ", chance " + Steps.number(f.chance()) : "")
                + (f.draws() > 1 ? ", drawn " + f.draws() + " times" : "")
                + (place != null && working.way() == MeanWorking.Way.OTHER
                        ? ", row " + place.row() + ", column " + place.column()
                        : "");
    }

    private void stratum(StratumWorking s) {
        int n = s.values().size();
        double sum = shown.applyAsDouble(s.sum());
        steps.step("mean", Steps.number(sum) + " / " + n, mean(s), unit);
        if (n < 2) {
            steps.say("  one plot shows no variation: no standard error");
            return;
        }
        double variance = square(s.mean().sd());
        steps.say("  variance between plots, sum of (value - mean)² over " + (n - 1) + ": " + Steps.number(variance));
        String unseen = "";
        if (s.isCorrected()) {
            unseen = " × (1 - " + n + " / " + Steps.number(s.populationUnits()) + ")";
            steps.say("  with the finite population correction: " + n + " of " + Steps.number(s.populationUnits())
                    + " plots that fit into it");
        }
        steps.step("variance of the mean", Steps.number(variance) + " / " + n + unseen, variance(s), "");
    }

    private void degrees() {
        MeanEstimate m = working.mean();
        int strata = working.strata().size();
        if (result.design().degreesRule() == DegreesRule.SATTERTHWAITE && strata > 1 && m.se() > 0) {
            double all = square(m.se());
            String parts = joined(s -> "(" + weight(s) + " × " + weight(s) + " × " + Steps.number(variance(s)) + ")²"
                    + " / " + (s.values().size() - 1));
            String how = Steps.number(all) + "² / (" + parts + ")";
            steps.step("degrees of freedom by Satterthwaite", how, m.df(), "");
            return;
        }
        steps.step("degrees of freedom, plots less strata", m.n() + " - " + strata, m.df(), "");
    }

    private double mean() {
        return shown.applyAsDouble(working.mean().mean());
    }

    private double mean(StratumWorking s) {
        return shown.applyAsDouble(s.mean().mean());
    }

    private double variance(StratumWorking s) {
        return square(s.mean().se());
    }

    private double square(double metric) {
        double value = shown.applyAsDouble(metric);
        return value * value;
    }

    private static String weight(StratumWorking s) {
        return Steps.number(s.weight());
    }

    private String joined(Function<StratumWorking, String> term) {
        return working.strata().stream().map(term).collect(Collectors.joining(" + "));
    }
}
