package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.PlotShares;
import quadmean.estimate.PlotsNeeded;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.Allocation;

/** Plots that the target attribute needs, stratum by stratum, and how sure they are to be enough. */
final class PlotsTable {
    private PlotsTable() {}

    static String markup(CruiseResult result) {
        PlotsNeeded needed = result.estimate().needed().get(0);
        if (needed.shares().isEmpty()) {
            return "";
        }
        Html html = new Html();
        if (needed.shares().size() > 1) {
            html.raw(table(result, needed));
        }
        needed.shares().forEach(s -> html.element("p", "notes", sentence(result, s)));
        return html.toString();
    }

    private static String table(CruiseResult result, PlotsNeeded needed) {
        List<Cell> header = new ArrayList<>(List.of(Cell.text("Stratum"), Cell.number("Plots run")));
        for (PlotShares s : needed.shares()) {
            header.add(Cell.number("Needed, " + s.allocation().label()));
            header.add(Cell.number("Still to run"));
        }
        HtmlTable table = HtmlTable.of(
                "Plots needed by stratum for the target in "
                        + needed.attribute().label() + "; plots already run stay where they are",
                header);
        List<PlotShares> shares = needed.shares();
        for (int h = 0; h < shares.get(0).strata().size(); h++) {
            int stratum = h;
            table.row(row(
                    Names.stratum(result.design(), shares.get(0).strata().get(h).stratum()),
                    shares.get(0).strata().get(h).run(),
                    shares.stream()
                            .flatMap(s ->
                                    List.of(
                                            s.strata().get(stratum).needed(),
                                            s.strata().get(stratum).more())
                                            .stream())
                            .toList()));
        }
        table.total(row(
                "All strata",
                shares.get(0).run(),
                shares.stream()
                        .flatMap(s -> List.of(s.needed(), s.more()).stream())
                        .toList()));
        return table.markup();
    }

    private static List<Cell> row(String name, int run, List<Integer> numbers) {
        List<Cell> row = new ArrayList<>(List.of(Cell.text(name), Cell.number(Rounding.count(run))));
        numbers.forEach(n -> row.add(Cell.number(Rounding.count(n))));
        return row;
    }

    /** How far a number of plots can be relied on. */
    static String sentence(CruiseResult result, PlotShares s) {
        String way = s.strata().size() == 1
                ? ""
                : Wording.capital(s.allocation().label())
                        + (s.allocation() == Allocation.NEYMAN ? " (by area and variation): " : " (by area): ");
        String now = s.more() == 0
                ? "the plots run are expected to reach the target"
                : Headline.count(s.needed(), "plot") + " in all are expected to reach the target";
        String target = "±" + Wording.percent(result.design().targetErrorPercent());
        String words = way + now + ": a sampling error of ±" + Rounding.percent(s.expectedErrorPercent()) + " against "
                + target + ". A cruise of that size comes out at or below " + target + " in about "
                + Rounding.decimals(0).text(100 * s.assurance())
                + " of 100 cases, for the variation that it will show is left to chance; for 80 of 100 take "
                + plots(s.plotsFor80()) + ", for 90 of 100 " + plots(s.plotsFor90()) + ".";
        return Wording.capital(words);
    }

    private static String plots(OptionalInt n) {
        return n.isPresent() ? Headline.count(n.getAsInt(), "plot") : "more than any cruise has";
    }
}
