package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StandStatistic;
import quadmean.estimate.StandStructure;
import quadmean.estimate.Statistic;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.UnitSystem;

/** Stand statistics, each with its error, its rule and its source. */
final class StatisticSection {
    private final CruiseResult result;
    private final StandStructure structure;
    private final UnitSystem units;
    private final Footnotes notes = new Footnotes();

    private StatisticSection(CruiseResult result) {
        this.result = result;
        this.structure = result.estimate().structure();
        this.units = result.design().units();
    }

    static String markup(CruiseResult result) {
        return result.estimate().structure().statistics().isEmpty() ? "" : new StatisticSection(result).section();
    }

    private String section() {
        Html html = new Html().section("statistics", "Stand statistics");
        html.raw(whole());
        html.raw(notes.markup());
        html.element(
                "p",
                "notes",
                "Mean, Lorey and top height are three different heights of one stand: compare like with like. Standard errors"
                        + " are those between plots, by linearisation; errors of heights and of volume equations come on top.");
        if (result.design().strata().size() > 1) {
            html.details("By stratum").raw(byStratum()).endDetails();
        }
        html.raw(rules());
        return html.endSection().toString();
    }

    /** How each is made and who it is from; w is what a tree stands for. */
    private String rules() {
        Html html = new Html().element("h3", "How each is made").raw("<dl>\n");
        whole(s -> html.element("dt", s.statistic().label())
                .element("dd", Wording.capital(s.rule()) + " (" + s.statistic().source() + ")." + standing(s)));
        return html.element("dt", "w")
                .element("dd", "Trees per unit area that a tallied tree stands for.")
                .raw("</dl>\n")
                .toString();
    }

    private String standing(StandStatistic s) {
        String standing = Facts.standing(result, s);
        return standing.isEmpty() ? "" : " Volume equations: " + standing + ".";
    }

    private void whole(Consumer<StandStatistic> what) {
        structure.statistics().stream()
                .filter(s -> s.stratum().equals(EstimateRow.ALL))
                .forEach(what);
    }

    private String whole() {
        String level = Wording.confidence(result.estimate().confidence());
        HtmlTable table = HtmlTable.of(
                "Stand statistics, all species",
                List.of(
                        Cell.text("Statistic"),
                        Cell.number("Estimate"),
                        Cell.number("Standard error"),
                        Cell.number("Sampling error at " + level),
                        Cell.number(RowText.other(units) == UnitSystem.METRIC ? "Metric" : "US")));
        whole(s -> table.row(List.of(
                Cell.text(s.statistic().label() + notes.mark(s.reason())),
                Cell.number(text(s, units, s.value())),
                Cell.number(text(s, units, s.se())),
                Cell.number(error(s)),
                Cell.number(text(s, RowText.other(units), s.value())))));
        return table.markup();
    }

    private String byStratum() {
        List<String> strata = structure.statistics().stream()
                .map(StandStatistic::stratum)
                .distinct()
                .toList();
        List<Cell> header = new ArrayList<>(List.of(Cell.text("Statistic")));
        strata.forEach(s -> header.add(Cell.number(Names.stratum(result.design(), s))));
        HtmlTable table = HtmlTable.of("Stand statistics by stratum, with sampling error", header);
        Footnotes own = new Footnotes();
        for (Statistic statistic : Statistic.values()) {
            List<Cell> cells = new ArrayList<>(List.of(Cell.text(statistic.label())));
            strata.forEach(code -> cells.add(structure
                    .statistic(code, statistic)
                    .map(s -> Cell.number(text(s, units, s.value()), (error(s) + own.mark(s.reason())).strip()))
                    .orElse(Cell.number(Rounding.UNKNOWN))));
            table.row(cells);
        }
        return table.markup() + own.markup();
    }

    private static String error(StandStatistic s) {
        String percent = Rounding.percent(s.samplingErrorPercent());
        return percent.equals(Rounding.UNKNOWN) ? percent : "±" + percent;
    }

    private static String text(StandStatistic s, UnitSystem system, double metric) {
        String number =
                Rounding.of(s.in(system, s.value()), s.in(system, s.se())).text(s.in(system, metric));
        String unit = s.statistic().unit(system).label();
        return number.equals(Rounding.UNKNOWN) || unit.isEmpty() ? number : number + "\u00a0" + unit;
    }
}
