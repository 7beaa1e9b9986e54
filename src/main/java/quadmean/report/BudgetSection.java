package quadmean.report;

import java.util.List;
import quadmean.chart.BudgetChart;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.ErrorBudget;
import quadmean.cruise.ErrorPart;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.design.Design;
import quadmean.model.BudgetRule;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.report.HtmlTable.Cell;

/** The whole error of the stand's estimates as far as it is known, part by part. */
final class BudgetSection {
    private BudgetSection() {}

    static String markup(CruiseResult result) {
        Html html = new Html().section("budget", "Error budget");
        if (result.budgets().isEmpty()) {
            html.element("p", "No error budget: " + why(result) + ".");
            return html.endSection().toString();
        }
        html.element(
                "p",
                "The limits above hold the variation between plots and nothing else. Independent errors of reading the sampled"
                        + " trees are already in it; they are shown as a share and not counted again. What plots have in common they"
                        + " do not show: those parts are added, as independent of it and of each other.");
        for (ErrorBudget budget : result.budgets()) {
            budget(html, budget);
        }
        return html.endSection().toString();
    }

    private static String why(CruiseResult result) {
        Design design = result.design();
        if (design.estimation().errors().budget() == BudgetRule.NONE) {
            return "the design asks for none";
        }
        if (design.plot().measuring() instanceof Measuring.ThreeP) {
            return "3P sampling weighs each measured tree in its own way, which the parts of a budget do not follow";
        }
        return design.plot() instanceof PlotDesign.Complete
                ? "every tree was tallied, so that there is no sampling error to set the other parts against"
                : "there is no standard error to begin from";
    }

    private static void budget(Html html, ErrorBudget budget) {
        html.element("h3", Wording.capital(budget.attribute().label()));
        html.element("p", summary(budget));
        html.element("p", budget.advice());
        if (!budget.offsets().isEmpty()) {
            html.element("p", budget.offsets());
        }
        html.raw("<div class=\"charts\">\n")
                .raw(ChartSection.figure(BudgetChart.picture(budget)))
                .raw("</div>\n");
        HtmlTable table = HtmlTable.of(
                "Error budget of " + budget.attribute().label() + ", whole stand",
                List.of(
                        Cell.text("Part"),
                        Cell.text("Counted"),
                        Cell.number("Standard error (% of the estimate)"),
                        Cell.number("Share of the total variance"),
                        Cell.text("What it rests on")));
        for (ErrorPart part : budget.parts()) {
            table.row(List.of(
                    Cell.text(Wording.capital(budget.label(part))),
                    Cell.text(counted(part.kind())),
                    part.variance() < 0 ? Cell.text("none: see its share") : Cell.number(relative(budget, part.se())),
                    Cell.number(share(budget, part)),
                    Cell.text(part.words())));
        }
        table.total(List.of(
                Cell.text("Total"),
                Cell.text(""),
                Cell.number(relative(budget, budget.totalSe())),
                Cell.number("100\u00a0%"),
                Cell.text("Root of the sum of the variances that count.")));
        html.raw(table.markup());
    }

    private static String share(ErrorBudget budget, ErrorPart part) {
        double percent = 100 * budget.share(part);
        return percent < 0 ? "takes off " + Rounding.percent(-percent) : Rounding.percent(percent);
    }

    private static String counted(Kind kind) {
        return switch (kind) {
            case SAMPLING -> "yes";
            case INSIDE -> "no: inside the first";
            case ADDED -> "yes: added";
            case UNKNOWN -> "no: not known";
        };
    }

    private static String relative(ErrorBudget budget, double se) {
        double percent = JsonBudget.percent(budget, se);
        return percent > 0 && percent < 0.05
                ? Rounding.significant(percent, 1).text(percent) + "\u00a0%"
                : Rounding.percent(percent);
    }

    /** The total beside the error between plots alone, and what is not in it. */
    static String summary(ErrorBudget budget) {
        String total =
                "Total error of " + budget.attribute().label() + " ±" + Rounding.percent(budget.totalErrorPercent())
                        + " at " + Wording.confidence(budget.confidence()) + " confidence, between " + budget.units()
                        + " alone ±"
                        + Rounding.percent(budget.sampling().samplingErrorPercent(budget.confidence())) + " (t·SE).";
        String unknown = budget.notKnown();
        return unknown.isEmpty() ? total : total + " Not known and not in the total: " + unknown + ".";
    }
}
