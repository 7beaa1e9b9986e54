package quadmean.report;

import java.util.List;
import java.util.Locale;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.OtherEstimate;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Both estimates of 3P sampling side by side. */
final class ThreePSection {
    private ThreePSection() {}

    static String markup(CruiseResult result) {
        List<OtherEstimate> both = result.estimate().otherEstimates();
        if (both.isEmpty()) {
            return "";
        }
        HtmlTable table = HtmlTable.of(
                "3P sampling: the adjusted and the unadjusted estimate of the stand",
                List.of(
                        Cell.text("Attribute, per unit area"),
                        Cell.text("Estimate"),
                        Cell.number("Mean"),
                        Cell.number("Standard error"),
                        Cell.number("Sampling error")));
        for (OtherEstimate e : both) {
            Attribute attribute = e.attribute();
            MeanEstimate m = shown(result, e);
            Unit unit = attribute.unit(Basis.PER_AREA, result.design().units());
            table.row(List.of(
                    Cell.text(Wording.capital(attribute.label()) + ", " + unit.label()),
                    Cell.text(e.estimator().id() + (isInUse(both, e) ? " (in use)" : "")),
                    Cell.number(Rounding.significant(m.mean(), 4).text(m.mean())),
                    Cell.number(Rounding.significant(m.se(), 3).text(m.se())),
                    Cell.number(Rounding.percent(
                            m.samplingErrorPercent(result.estimate().confidence())))));
        }
        Html html = new Html().section("threep", "Both 3P estimates");
        html.element(
                "p",
                "The same trees, added up in two ways. Far apart they tell that the draw brought in more or fewer trees than the"
                        + " predictions led to expect, or that the predictions are poor; the design chooses before the results"
                        + " are known.");
        return html.raw(table.markup()).endSection().toString();
    }

    /** One line for the console: the estimate that is not in use. */
    static List<String> line(CruiseResult result) {
        List<OtherEstimate> both = result.estimate().otherEstimates();
        return both.stream()
                .filter(e -> e.attribute() == result.design().targetAttribute() && !isInUse(both, e))
                .map(e -> {
                    MeanEstimate m = shown(result, e);
                    Unit unit =
                            e.attribute().unit(Basis.PER_AREA, result.design().units());
                    double half = m.halfWidth(result.estimate().confidence());
                    return String.format(
                            Locale.ROOT,
                            "By the %s 3P estimate from the same trees: %s %s ± %s %s.",
                            e.estimator().id(),
                            e.attribute().label(),
                            Rounding.significant(m.mean(), 4).text(m.mean()),
                            Rounding.significant(half, 3).text(half),
                            unit.label());
                })
                .toList();
    }

    private static boolean isInUse(List<OtherEstimate> both, OtherEstimate e) {
        return e.estimator() == both.get(0).estimator();
    }

    private static MeanEstimate shown(CruiseResult result, OtherEstimate e) {
        Unit unit = e.attribute().unit(Basis.PER_AREA, result.design().units());
        return e.mean()
                .times(e.attribute().unit(Basis.PER_AREA, UnitSystem.METRIC).convert(1, unit));
    }
}
