package quadmean.report;

import java.util.Locale;
import java.util.Optional;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The first screen: how much, how sure, and is it enough. */
final class Headline {
    private final CruiseResult result;
    private final Design design;
    private final UnitSystem units;
    private final UnitSystem other;

    private Headline(CruiseResult result) {
        this.result = result;
        this.design = result.design();
        this.units = design.units();
        this.other = RowText.other(units);
    }

    static String markup(CruiseResult result) {
        return new Headline(result).markup();
    }

    private String markup() {
        Html html = new Html().raw("<header class=\"head\">\n");
        html.element("p", "kind", "Timber cruise" + (design.date().isEmpty() ? "" : ", " + design.date()));
        html.element("h1", design.name());
        html.element(
                "p",
                "where",
                area(units) + " (" + area(other) + "), "
                        + count(result.tally().plots().size(), "plot") + ", "
                        + count(result.trees().size(), "tree") + " tallied");
        main().ifPresentOrElse(row -> answer(html, row), () -> html.element("p", "big", "No estimate."));
        return html.raw("</header>\n").toString();
    }

    private void answer(Html html, EstimateRow row) {
        RowText ours = RowText.of(result.design(), row, units);
        RowText theirs = RowText.of(result.design(), row, other);
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n");
        html.element("h2", "How much");
        html.element("p", "big", ours.estimate());
        html.element(
                "p",
                "small",
                "of " + row.attribute().label() + (row.basis() == Basis.TOTAL ? " on the whole stand" : "")
                        + otherUnits(row, theirs.estimate()));
        perArea(html);
        html.raw("</div>\n<div class=\"answer\">\n");
        html.element("h2", "How sure");
        html.element("p", "mid", ours.limits());
        if (RowText.hasLimits(row)) {
            String level = Wording.confidence(result.estimate().confidence());
            html.element("p", "small", level + " confidence limits" + otherUnits(row, theirs.limits()));
        } else {
            html.element("p", "small", "No confidence limits: " + why(row) + ".");
        }
        html.raw(RangeStrip.markup(row, design.targetErrorPercent()));
        html.raw("</div>\n<div class=\"answer\">\n");
        enough(html);
        html.raw("</div>\n</div>\n");
        plainWords(html, row);
    }

    private void perArea(Html html) {
        if (design.targetAttribute() == Attribute.QUADRATIC_MEAN_DIAMETER) {
            return;
        }
        stand(Basis.PER_AREA).ifPresent(row -> {
            RowText ours = RowText.of(result.design(), row, units);
            html.raw("<p class=\"mid\">").text(ours.estimate()).raw("</p>\n");
            RowText theirs = RowText.of(result.design(), row, other);
            String limits =
                    RowText.hasLimits(row) ? "; limits " + ours.limits() + otherUnits(row, theirs.limits()) : "";
            String first = otherUnits(row, theirs.estimate()).strip() + limits;
            html.element("p", "small", first.isEmpty() ? "per unit area" : first);
        });
    }

    private void enough(Html html) {
        html.element("h2", "Is it enough");
        Optional<PlotsNeeded> found = result.estimate().needed().stream()
                .filter(n -> n.attribute() == design.targetAttribute())
                .findFirst();
        if (found.isEmpty()) {
            html.element("p", "mid", "Unknown");
            return;
        }
        PlotsNeeded needed = found.get();
        String verdict = verdict(needed);
        html.raw("<p class=\"verdict " + needed.verdict().name().toLowerCase(Locale.ROOT) + "\">")
                .text(verdict)
                .raw("</p>\n");
        html.element("p", "small", achieved(result, needed));
        html.element("p", "small", more(needed));
    }

    static String verdict(PlotsNeeded needed) {
        return verdict(needed.verdict());
    }

    static String verdict(PlotsNeeded.Verdict verdict) {
        return switch (verdict) {
            case MET -> "Target met";
            case MISSED -> "Target missed";
            case UNKNOWN -> "Target: cannot tell";
        };
    }

    static String achieved(CruiseResult result, PlotsNeeded needed) {
        Design design = result.design();
        String target = "the target is ±" + Wording.percent(design.targetErrorPercent()) + " or better at "
                + Wording.confidence(design.confidence()) + " confidence.";
        return Double.isFinite(needed.achievedPercent())
                ? "Sampling error ±" + Rounding.percent(needed.achievedPercent()) + "; " + target
                : "Sampling error unknown: " + EstimateJson.reason(result, needed.attribute()) + "; " + target;
    }

    static String more(PlotsNeeded needed) {
        if (needed.needed().isEmpty()) {
            boolean isExplained = needed.verdict() != PlotsNeeded.Verdict.UNKNOWN
                    && !needed.remark().isEmpty();
            return "How many plots would reach it is unknown" + (isExplained ? ": " + needed.remark() : "") + ".";
        }
        int more = needed.more().orElseThrow();
        if (more == 0 && needed.verdict() == PlotsNeeded.Verdict.MISSED) {
            return "How many more plots would reach it is unknown: " + count(needed.plots(), "plot")
                    + " run would be enough by Student's t, but the limits in use are wider.";
        }
        return more == 0
                ? "No more plots needed: " + count(needed.plots(), "plot") + " run, "
                        + Rounding.count(needed.needed().getAsInt()) + " expected to be enough."
                : "About " + count(more, "more plot") + " should reach it, "
                        + Rounding.count(needed.needed().getAsInt())
                        + " in all, if they vary like those already run.";
    }

    private void plainWords(Html html, EstimateRow row) {
        boolean complete = design.plot() instanceof PlotDesign.Complete;
        if (complete && !design.plot().measuring().hasCounts()) {
            html.element(
                    "p",
                    "plain",
                    "In plain words: every tree was tallied, so that nothing was left to chance. Mistakes in measuring or"
                            + " counting remain, and so do the errors of equations, stem profiles and height curves.");
        } else if (RowText.hasLimits(row)) {
            html.element(
                    "p",
                    "plain",
                    "In plain words: had " + (complete ? "other trees been drawn" : "the plots fallen elsewhere")
                            + ", the estimate would have come out somewhat different."
                            + " Of many cruises laid out like this one, about "
                            + Wording.plain(100 * result.estimate().confidence())
                            + " in 100 would give limits with the true value between them. The limits cover the chance of "
                            + (complete ? "which trees were drawn" : "where plots fell")
                            + ". They do not cover mistakes in measuring or counting, nor the errors of"
                            + " equations, stem profiles and height curves."
                            + (result.budgets().isEmpty()
                                    ? ""
                                    : " The error budget below adds what is known of those errors."));
        }
        String standing = Facts.standing(result, row);
        if (!standing.isEmpty()) {
            html.element(
                    "p",
                    "warn",
                    Wording.capital(Wording.standsBehind(row.attribute())) + " in use: " + standing + ". "
                            + standingMeaning(standing)
                            + " See Volume equations below before any use of these figures.");
        }
        html.element("p", "warn", "An estimate is no appraisal and no scale.");
    }

    /** What a standing that is short of verified means. */
    static String standingMeaning(String standing) {
        String invented = standing.contains("invented") ? "Invented coefficients are made up for demonstration. " : "";
        String memory = standing.contains("from memory")
                ? "Coefficients from memory were not checked against a printed source. "
                : "";
        String fitted = standing.contains("fitted")
                ? "Fitted coefficients are as good as the felled trees that their source names; their own error is not in"
                        + " the limits."
                : "";
        return (invented + memory + fitted).strip();
    }

    private Optional<EstimateRow> main() {
        return stand(design.targetAttribute() == Attribute.QUADRATIC_MEAN_DIAMETER ? Basis.RATIO : Basis.TOTAL);
    }

    private Optional<EstimateRow> stand(Basis basis) {
        return result.estimate().row(EstimateRow.ALL, EstimateRow.ALL, design.targetAttribute(), basis);
    }

    private static String why(EstimateRow row) {
        return row.reason().isEmpty() ? "the error is unknown" : row.reason();
    }

    /** The same in the other unit system, where that is another unit at all. */
    private String otherUnits(EstimateRow row, String text) {
        boolean same = row.unit(units) == row.unit(other);
        return same || text.equals(Rounding.UNKNOWN) ? "" : " (" + text + ")";
    }

    private String area(UnitSystem system) {
        double shown = Unit.HECTARE.convert(design.areaHa(), system.area());
        return Rounding.significant(shown, 4).text(shown) + " " + system.area().label();
    }

    static String count(long number, String thing) {
        return Rounding.count(number) + " " + thing + (number == 1 ? "" : "s");
    }
}
