package quadmean.report;

import java.util.Locale;
import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstateEstimate.Extent;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The first screen of an estate: how much, how sure, and is it enough. */
final class EstateHeadline {
    private final EstateResult result;
    private final Design design;
    private final UnitSystem units;
    private final UnitSystem other;

    private EstateHeadline(EstateResult result) {
        this.result = result;
        this.design = result.design();
        this.units = design.units();
        this.other = RowText.other(units);
    }

    static String markup(EstateResult result) {
        return new EstateHeadline(result).markup();
    }

    private String markup() {
        Html html = new Html().raw("<header class=\"head\">\n");
        html.element("p", "kind", "Timber cruise of an estate" + (design.date().isEmpty() ? "" : ", " + design.date()));
        html.element("h1", design.name());
        html.element("p", "where", where(result));
        EstimateRow total = row(result, Basis.TOTAL);
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n");
        much(html, total);
        html.raw("</div>\n<div class=\"answer\">\n");
        sure(html, total);
        html.raw("</div>\n<div class=\"answer\">\n");
        Verdict verdict = verdict(result);
        html.element("h2", "Is it enough");
        html.raw("<p class=\"verdict " + verdict.name().toLowerCase(Locale.ROOT) + "\">")
                .text(Headline.verdict(verdict))
                .raw("</p>\n");
        html.element("p", "small", achieved(result));
        html.element("p", "small", "The target is set for the estate; single stands are known much less well.");
        html.raw("</div>\n</div>\n");
        words(html, total);
        return html.raw("</header>\n").toString();
    }

    /** What was cruised, in a line. */
    static String where(EstateResult result) {
        Extent extent = result.estimate().stands();
        UnitSystem units = result.design().units();
        return Headline.count(extent.stands(), "stand") + " with plots, " + area(extent.areaHa(), units) + ", "
                + Headline.count(extent.plots(), "plot");
    }

    /** An area in both systems, that of the design first. */
    static String area(double areaHa, UnitSystem units) {
        return area(areaHa, units.area()) + " ("
                + area(areaHa, RowText.other(units).area()) + ")";
    }

    private static String area(double areaHa, Unit unit) {
        double shown = Unit.HECTARE.convert(areaHa, unit);
        return Rounding.significant(shown, 4).text(shown) + "\u00a0" + unit.label();
    }

    static EstimateRow row(EstateResult result, Basis basis) {
        return result.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, result.design().targetAttribute(), basis)
                .orElseThrow();
    }

    static Verdict verdict(EstateResult result) {
        return result.estimate()
                .verdict(result.design().targetAttribute(), result.design().targetErrorPercent());
    }

    static String achieved(EstateResult result) {
        EstimateRow row = row(result, Basis.TOTAL);
        String target = "the target is ±" + Wording.percent(result.design().targetErrorPercent()) + " or better at "
                + Wording.confidence(result.estimate().confidence()) + " confidence.";
        return Double.isFinite(row.samplingErrorPercent())
                ? "Sampling error ±" + Rounding.percent(row.samplingErrorPercent()) + "; " + target
                : "Sampling error unknown: " + row.reason() + "; " + target;
    }

    private void much(Html html, EstimateRow total) {
        RowText ours = RowText.of(design, total, units);
        html.element("h2", "How much");
        html.element("p", "big", ours.estimate());
        html.element(
                "p",
                "small",
                "of " + total.attribute().label() + " on all stands with plots"
                        + otherUnits(total, RowText.of(design, total, other).estimate()));
        EstimateRow mean = row(result, Basis.PER_AREA);
        html.element("p", "mid", RowText.of(design, mean, units).estimate());
        String inOther =
                otherUnits(mean, RowText.of(design, mean, other).estimate()).strip();
        html.element("p", "small", inOther.isEmpty() ? "per unit area" : inOther);
    }

    private void sure(Html html, EstimateRow total) {
        html.element("h2", "How sure");
        html.element("p", "mid", RowText.of(design, total, units).limits());
        if (RowText.hasLimits(total)) {
            html.element(
                    "p",
                    "small",
                    Wording.confidence(result.estimate().confidence()) + " confidence limits"
                            + otherUnits(total, RowText.of(design, total, other).limits()));
        } else {
            html.element("p", "small", "No confidence limits: " + total.reason() + ".");
        }
        html.raw(RangeStrip.markup(total, design.targetErrorPercent()));
    }

    private void words(Html html, EstimateRow total) {
        if (RowText.hasLimits(total)) {
            html.element(
                    "p",
                    "plain",
                    "In plain words: had the plots fallen elsewhere in their stands, the estimate would have come out somewhat"
                            + " different. Of many cruises like this one, about "
                            + Wording.plain(100 * result.estimate().confidence())
                            + " in 100 would give limits with the true value between them. The limits cover the chance of where"
                            + " plots fell. They do not cover mistakes in measuring, nor the errors of equations and height"
                            + " curves, which all stands share and which many plots do not average out.");
        }
        int without = result.estimate().stands().withoutPlots();
        if (without > 0) {
            html.element(
                    "p",
                    "warn",
                    Headline.count(without, "stand") + " of "
                            + area(result.estimate().stands().areaWithoutHa(), units)
                            + (without == 1 ? " has no plots and is" : " have no plots and are")
                            + " in no number here.");
        }
        String standing = shownStanding(total);
        if (!standing.isEmpty()) {
            html.element(
                    "p",
                    "warn",
                    Wording.capital(Wording.standsBehind(total.attribute())) + " in use: " + standing + ". "
                            + Headline.standingMeaning(standing)
                            + " See Volume equations below before any use of these figures.");
        }
        html.element("p", "warn", "An estimate is no appraisal and no scale.");
    }

    private String shownStanding(EstimateRow row) {
        return Wording.standing(result.used(), row.attribute(), row.species());
    }

    /** The same in the other unit system, where that is another unit at all. */
    private String otherUnits(EstimateRow row, String text) {
        boolean same = row.unit(units) == row.unit(other);
        return same || text.equals(Rounding.UNKNOWN) ? "" : " (" + text + ")";
    }
}
