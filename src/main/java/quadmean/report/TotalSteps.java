package quadmean.report;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.ExplainRequest;
import quadmean.cruise.Explanation;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.MeanWorking;
import quadmean.estimate.RatioWorking;
import quadmean.model.IntervalRule;
import quadmean.model.PlotDesign;
import quadmean.model.SelectionMethod;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StudentT;
import quadmean.stats.Working;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How a mean, a total or the quadratic mean diameter follows from plot values. */
final class TotalSteps {
    private final CruiseResult result;
    private final ExplainRequest request;
    private final UnitSystem units;
    private final Attribute attribute;
    private final Steps steps;

    TotalSteps(CruiseResult result, ExplainRequest request, Steps steps) {
        this.result = result;
        this.request = request;
        this.units = result.design().units();
        this.attribute = request.attribute();
        this.steps = steps;
    }

    void total(Explanation.OfTotal total) {
        EstimateRow row = total.perArea();
        Unit unit = row.unit(units);
        DoubleUnaryOperator shown = v -> row.in(units, v);
        title();
        mean(total.mean(), "value", shown, unit);
        limits(total.mean().mean(), row);
        double area = Unit.HECTARE.convert(total.mean().areaHa(), units.area());
        steps.say("Total: by the area of " + Steps.number(area) + " "
                + units.area().label());
        String sum = total.total().unit(units).label();
        for (String what : List.of("estimate", "lower limit", "upper limit")) {
            double each = pick(what, row);
            if (Double.isFinite(each)) {
                double all = total.total().in(units, pick(what, total.total()));
                steps.step(what, Steps.number(area) + " × " + Steps.term(shown.applyAsDouble(each)), all, sum);
            }
        }
        last(row, Wording.perArea(attribute, units));
        last(total.total(), attribute.label() + ", total");
    }

    void diameter(Explanation.OfDiameter diameter) {
        EstimateRow row = diameter.row();
        RatioWorking ratio = diameter.ratio();
        title();
        Unit unit = Attribute.BASAL_AREA.unit(Basis.TOTAL, units);
        DoubleUnaryOperator shown = v -> TreeSteps.shown(v, Attribute.BASAL_AREA, units);
        if (!ratio.own().isEmpty()) {
            steps.say("Ratio of basal area to trees, from the measured trees; numbers of trees per ha");
            new WorkingSteps(shown, units.area(), unit, unit, steps).write(ratio.own());
        }
        double each = shown.applyAsDouble(ratio.ratio().mean());
        double factor = shown.applyAsDouble(BasalArea.ofTree(units.diameter().convert(1, Unit.CENTIMETRE)));
        if (ratio.own().isEmpty()) {
            means(ratio, each, unit);
        }
        double qmd = row.in(units, row.mean());
        steps.step(
                "its diameter",
                "√(" + Steps.number(each) + " / " + Steps.number(factor) + ")",
                qmd,
                units.diameter().label());
        if (Double.isFinite(row.se())) {
            if (ratio.own().isEmpty()) {
                steps.say("Its error: that of the mean of (g - r·n) / mean(n), with g and n of each plot");
                mean(ratio.residuals(), "(g - r·n) / mean(n)", shown, unit);
            }
            double se = shown.applyAsDouble(ratio.ratio().se());
            String how = Steps.number(qmd) + " / (2 × " + Steps.number(each) + ") × " + Steps.number(se);
            steps.step(
                    "standard error of the diameter",
                    how,
                    row.in(units, row.se()),
                    units.diameter().label());
        }
        MeanEstimate mean = new MeanEstimate(row.n(), row.df(), row.mean(), row.se(), Double.NaN);
        limits(mean, row);
        last(row, attribute.label());
    }

    private void means(RatioWorking ratio, double each, Unit unit) {
        double g = per(Attribute.BASAL_AREA, ratio.numerator().mean());
        double n = per(Attribute.TREES, ratio.denominator().mean());
        steps.say(
                "Ratio of two means over plots: basal area over trees (total:basal_area and total:trees explain them)");
        steps.step("basal area of the mean tree, r", Steps.number(g) + " / " + Steps.number(n), each, unit.label());
    }

    private void title() {
        steps.say(Wording.capital(attribute.label()) + ": "
                + (request.stratum().equals(EstimateRow.ALL)
                        ? "whole stand"
                        : "stratum " + Names.stratum(result.design(), request.stratum()))
                + ", " + species());
        if (result.design().selection() == SelectionMethod.SYSTEMATIC) {
            steps.say("The sample is systematic and estimated as if plots were drawn at random.");
        }
    }

    private void mean(MeanWorking working, String what, DoubleUnaryOperator shown, Unit unit) {
        StrataSteps strata = new StrataSteps(result, working, shown, unit, steps);
        if (working.way() == MeanWorking.Way.STRATA) {
            strata.write(what);
            return;
        }
        if (result.design().plot().measuring().hasCounts()) {
            steps.say(
                    "Values are of the measured trees alone; trees that were counted or predicted come in afterwards.");
        }
        boolean isSum =
                result.design().plot() instanceof PlotDesign.Complete && attribute != Attribute.QUADRATIC_MEAN_DIAMETER;
        if (isSum) {
            DoubleUnaryOperator sums = v -> shown.applyAsDouble(v) * Unit.HECTARE.convert(1, units.area());
            new StrataSteps(result, working, sums, attribute.unit(Basis.TOTAL, units), steps)
                    .values("sum of its trees");
        } else {
            strata.values(what);
        }
        steps.say("From these to the estimate: " + EstimatorWords.way(result.design()));
        own(working.steps(), shown, unit);
        String mean = Steps.number(shown.applyAsDouble(working.mean().mean()));
        steps.say("  in all, mean = " + mean + " " + unit.label());
    }

    private void own(List<Working.Step> all, DoubleUnaryOperator shown, Unit unit) {
        new WorkingSteps(shown, units.area(), unit, attribute.unit(Basis.TOTAL, units), steps).write(all);
    }

    private void limits(MeanEstimate mean, EstimateRow row) {
        if (!Double.isFinite(row.se())) {
            steps.say("No limits: " + (row.reason().isEmpty() ? "the error is unknown" : row.reason()));
            return;
        }
        String level = Wording.confidence(result.estimate().confidence());
        steps.say("Limits at " + level + " confidence: " + LimitWords.rule(result.design()));
        if (!Double.isFinite(row.lower())) {
            steps.say("  none: " + (row.reason().isEmpty() ? "the rule gives none here" : row.reason()));
            return;
        }
        IntervalRule rule = result.design().estimation().interval();
        if (rule == IntervalRule.STUDENT_T) {
            byT(mean, row, level);
        } else if (rule == IntervalRule.LOG_SCALE) {
            onLogScale(mean, row, level);
        } else {
            String unit = row.unit(units).label();
            steps.say("  lower " + Steps.number(row.in(units, row.lower())) + " " + unit);
            steps.say("  upper " + Steps.number(row.in(units, row.upper())) + " " + unit);
            steps.say("  they come from resamples, not from a formula");
        }
    }

    private double critical(MeanEstimate mean, String level) {
        double t = StudentT.critical(result.estimate().confidence(), mean.df());
        steps.say("  Student's t for " + level + " and " + Steps.number(mean.df()) + " degrees of freedom: "
                + Steps.number(t));
        return t;
    }

    private void byT(MeanEstimate mean, EstimateRow row, String level) {
        double t = critical(mean, level);
        String unit = row.unit(units).label();
        String centre = Steps.number(row.in(units, row.mean()));
        String half = Steps.number(t) + " × " + Steps.number(row.in(units, row.se()));
        steps.step("lower", centre + " - " + half, row.in(units, row.lower()), unit);
        steps.step("upper", centre + " + " + half, row.in(units, row.upper()), unit);
        if (Double.isFinite(row.samplingErrorPercent())) {
            steps.step("sampling error", "100 × " + half + " / " + centre, row.samplingErrorPercent(), "%");
        }
    }

    private void onLogScale(MeanEstimate mean, EstimateRow row, String level) {
        double t = critical(mean, level);
        String unit = row.unit(units).label();
        String centre = Steps.number(row.in(units, row.mean()));
        double exponent = t * row.se() / row.mean();
        String se = Steps.number(row.in(units, row.se()));
        steps.step("t × SE / estimate, e", Steps.number(t) + " × " + se + " / " + centre, exponent, "");
        steps.say("  exp(e): " + Steps.number(Math.exp(exponent)));
        steps.step("lower", centre + " / " + Steps.number(Math.exp(exponent)), row.in(units, row.lower()), unit);
        steps.step("upper", centre + " × " + Steps.number(Math.exp(exponent)), row.in(units, row.upper()), unit);
        String width = Steps.number(row.in(units, row.upper())) + " - " + Steps.number(row.in(units, row.lower()));
        steps.step("sampling error", "100 × (" + width + ") / 2 / " + centre, row.samplingErrorPercent(), "%");
    }

    private void last(EstimateRow row, String what) {
        String reason = Double.isFinite(row.mean()) ? " " + row.unit(units).label() : " (" + row.reason() + ")";
        steps.say(what + " = " + Steps.exact(row.in(units, row.mean())) + reason);
    }

    private double per(Attribute of, double metric) {
        return of.unit(Basis.PER_AREA, UnitSystem.METRIC).convert(metric, of.unit(Basis.PER_AREA, units));
    }

    private static double pick(String what, EstimateRow row) {
        return switch (what) {
            case "estimate" -> row.mean();
            case "lower limit" -> row.lower();
            default -> row.upper();
        };
    }

    private String species() {
        return request.species().equals(EstimateRow.ALL)
                ? "all species"
                : Names.species(result.design(), request.species());
    }
}
