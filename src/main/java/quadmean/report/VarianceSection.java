package quadmean.report;

import java.util.List;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.OtherVariance;
import quadmean.model.VarianceForm;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** What the variances that handbooks name for the estimator make of the same plots. */
final class VarianceSection {
    private VarianceSection() {}

    static boolean isShown(CruiseResult result) {
        return !result.estimate().alternatives().isEmpty();
    }

    static String markup(CruiseResult result) {
        if (!isShown(result)) {
            return "";
        }
        UnitSystem units = result.design().units();
        HtmlTable table = HtmlTable.of(
                EstimatorWords.heading(result.design()) + ": standard errors of the stand by every variance",
                List.of(
                        Cell.text("Attribute, per unit area"),
                        Cell.text("Variance"),
                        Cell.number("Standard error"),
                        Cell.number("df"),
                        Cell.number("Sampling error")));
        Footnotes notes = new Footnotes();
        VarianceForm used = result.design().estimation().estimation().variance();
        for (OtherVariance v : result.estimate().alternatives()) {
            Unit unit = v.attribute().unit(Basis.PER_AREA, units);
            double se = v.attribute().unit(Basis.PER_AREA, UnitSystem.METRIC).convert(v.se(), unit);
            table.row(List.of(
                    Cell.text(Wording.capital(v.attribute().label()) + ", " + unit.label()),
                    Cell.text(
                            v.variance().label() + (v.variance() == used ? " (in use)" : "") + notes.mark(v.reason())),
                    Cell.number(Rounding.significant(se, 3).text(se)),
                    Cell.number(Rounding.significant(v.df(), 3).text(v.df())),
                    Cell.number(Rounding.percent(v.samplingErrorPercent()))));
        }
        Html html = new Html().section("variances", "Other variances");
        html.element(
                "p",
                "The same plots and the same estimate; only what is taken for its error differs. The design chooses before the"
                        + " results are known: to pick the smallest afterwards makes an error that is too small.");
        html.raw(table.markup() + notes.markup());
        html.raw("<dl>\n");
        result.estimate().alternatives().stream()
                .map(OtherVariance::variance)
                .distinct()
                .forEach(v ->
                        html.element("dt", Wording.capital(v.label())).element("dd", EstimatorWords.assumption(v)));
        return html.raw("</dl>\n").endSection().toString();
    }
}
