package quadmean.report;

import java.util.List;
import quadmean.audit.CheckCruise;
import quadmean.audit.CrewCheck;
import quadmean.audit.Finding;
import quadmean.audit.Judgement;
import quadmean.audit.PlotCheck;
import quadmean.audit.Reading;
import quadmean.audit.ReadingCheck;
import quadmean.audit.TreeMatch;
import quadmean.chart.Wording;
import quadmean.model.Tree;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Basis;

/** The tables of a check cruise. */
final class AuditTables {
    static final List<String> METHOD = List.of(
            "Trees are matched by number; those left over by species and nearest dbh; trees without numbers at last by dbh"
                    + " alone. A tree that stays alone on the checker's side was missed, one on the crew's side was not found.",
            "Heights are compared where both took one. Plot values of both tallies are worked out with the height curves"
                    + " and equations of the cruise, so that they differ by readings alone.",
            "Exact binomial bounds: Clopper and Pearson 1934. Bounds by plots: the same with the number of independent"
                    + " trees that would vary as much (Korn and Graubard 1998, from memory); where every tree is within, plots"
                    + " count as trees, which is cautious.",
            "Agreement: two one-sided t tests at 5 % each on the differences of plots (Schuirmann 1987, from memory), which"
                    + " is the same as 90 % limits inside the margin. A difference that is not significant is no proof of"
                    + " agreement.",
            "The check plots are taken as one random sample of all plots, also where the cruise has strata.",
            "Limits of crews are widened so that all of them hold together (Bonferroni). A tree that would be within its"
                    + " limit but for the bias of its crew is not listed by itself.");

    private final CheckCruise check;
    private final AuditText text;

    AuditTables(CheckCruise check) {
        this.check = check;
        this.text = new AuditText(check);
    }

    String findings() {
        HtmlTable table =
                HtmlTable.of("Findings", List.of(Cell.text("What"), Cell.text("Where"), Cell.text("In detail")));
        for (Finding f : check.findings()) {
            table.row(List.of(Cell.text(f.kind().label()), Cell.text(f.where()), Cell.text(f.detail())));
        }
        return table.isEmpty() ? "<p>Nothing.</p>\n" : table.markup();
    }

    String judgements() {
        String level = Wording.confidence(check.settings().confidence());
        HtmlTable table = HtmlTable.of(
                "Shares within the limits, with one-sided " + level + " bounds",
                List.of(
                        Cell.text("What"),
                        Cell.text("Allowed"),
                        Cell.number("Asked for"),
                        Cell.number("Within"),
                        Cell.number("Exact bound"),
                        Cell.number("Bound by plots"),
                        Cell.text("Result")));
        for (Judgement j : check.judgements()) {
            table.row(List.of(
                    Cell.text(Wording.capital(j.what())),
                    Cell.text(text.allowed(j)),
                    Cell.number(j.limit().map(l -> l.demand()).orElse(Rounding.UNKNOWN)),
                    Cell.number(j.limit().isPresent() ? AuditText.share(j) : Rounding.UNKNOWN, within(j)),
                    Cell.number(j.limit().isPresent() ? AuditText.bound(j, j.exact()) : Rounding.UNKNOWN),
                    Cell.number(j.limit().isPresent() ? AuditText.bound(j, j.clustered()) : Rounding.UNKNOWN),
                    Cell.markup(tag(j))));
        }
        return table.markup();
    }

    private static String within(Judgement j) {
        return (j.limit().isPresent() ? j.within() + " of " : "") + j.n() + " " + j.unit();
    }

    private static String tag(Judgement j) {
        String words = Html.escape(Wording.capital(j.verdict().words()));
        return switch (j.verdict()) {
            case PASSES, PASSES_BARELY -> "<span class=\"tag good\">Passes</span>" + words.substring("Passes".length());
            case FAILS, FAILS_BARELY -> "<span class=\"tag\">Fails</span>" + words.substring("Fails".length());
            default -> words;
        };
    }

    String readings() {
        HtmlTable table = HtmlTable.of(
                "Crew less checker, all trees",
                List.of(
                        Cell.text("Reading"),
                        Cell.number("Trees"),
                        Cell.number("Bias"),
                        Cell.number("Its standard error by plots"),
                        Cell.number("Standard deviation"),
                        Cell.number("Root mean square")));
        for (ReadingCheck r : check.readings()) {
            Reading reading = r.reading();
            table.row(List.of(
                    Cell.text(Wording.capital(reading.label()) + " (" + text.unit(reading) + ")"),
                    Cell.number(Rounding.count(r.judgement().n())),
                    Cell.number(AuditText.signed(text.in(reading, r.bias().mean()), 2)),
                    Cell.number(text.reading(reading, r.bias().se(), 2)),
                    Cell.number(text.reading(reading, r.sd(), 2)),
                    Cell.number(text.reading(reading, r.rms(), 2))));
        }
        return table.markup();
    }

    String crews() {
        HtmlTable table = HtmlTable.of(
                "Crew less checker, by crew",
                List.of(
                        Cell.text("Crew"),
                        Cell.text("Reading"),
                        Cell.number("Trees, plots"),
                        Cell.number("Bias"),
                        Cell.number("Limits"),
                        Cell.text("Result")));
        for (CrewCheck c : check.crews()) {
            String unit = " " + text.unit(c.reading());
            String limits = Double.isNaN(c.limits().lower())
                    ? Rounding.UNKNOWN
                    : AuditText.signed(text.in(c.reading(), c.limits().lower()), 2) + " to "
                            + AuditText.signed(text.in(c.reading(), c.limits().upper()), 2) + unit;
            table.row(List.of(
                    Cell.text(c.crew()),
                    Cell.text(c.reading().label()),
                    Cell.number(c.trees() + ", " + c.plots()),
                    Cell.number(AuditText.signed(text.in(c.reading(), c.bias().mean()), 2) + unit),
                    Cell.number(limits),
                    Cell.markup(
                            c.isBiased()
                                    ? "<span class=\"tag\">Biased</span>"
                                    : Double.isNaN(c.limits().lower())
                                            ? "one plot: cannot be told"
                                            : "no bias shown")));
        }
        return table.isEmpty() ? "<p>No tree was matched.</p>\n" : table.markup();
    }

    String plots() {
        String unit = text.valueUnit(Basis.PER_AREA).label();
        HtmlTable table = HtmlTable.of(
                "Plots: trees, and " + check.value().attribute().label() + " (" + unit + ")",
                List.of(
                        Cell.text("Plot"),
                        Cell.text("Crew"),
                        Cell.number("Trees in both"),
                        Cell.number("Missed"),
                        Cell.number("Not found"),
                        Cell.number("Crew"),
                        Cell.number("Checker"),
                        Cell.number("Difference")));
        for (PlotCheck p : check.plots()) {
            table.row(List.of(
                    Cell.text(p.plot()),
                    Cell.text(p.crew()),
                    Cell.number(Rounding.count(p.matched())),
                    Cell.number(Rounding.count(p.missed())),
                    Cell.number(Rounding.count(p.extra())),
                    value(p.cruised()),
                    value(p.checked()),
                    Cell.number(AuditText.signedPercent(100 * p.difference() / p.checked()))));
        }
        return table.markup();
    }

    private Cell value(double metric) {
        double value = text.value(metric, Basis.PER_AREA);
        return Cell.number(Rounding.significant(value, 4).text(value));
    }

    /** Trees matched otherwise than by number, and trees that stay alone; all others are in the CSV file. */
    String trees() {
        HtmlTable table = HtmlTable.of(
                "Trees not matched by number",
                List.of(Cell.text("Tree"), Cell.text("Match"), Cell.text("Crew"), Cell.text("Checker")));
        check.matches().stream()
                .filter(m -> m.kind() != TreeMatch.Kind.NUMBER)
                .forEach(m -> table.row(List.of(
                        Cell.text(m.label()),
                        Cell.text(m.kind().label()),
                        Cell.text(m.cruised() == null ? Rounding.UNKNOWN : tree(m.crewTree())),
                        Cell.text(m.checked() == null ? Rounding.UNKNOWN : tree(m.checkTree())))));
        long numbered = check.matches().stream()
                .filter(m -> m.kind() == TreeMatch.Kind.NUMBER)
                .count();
        String all = "<p>" + Headline.count(numbered, "tree")
                + " matched by number; every match with its readings stands in audit-trees.csv.</p>\n";
        return all + (table.isEmpty() ? "" : table.markup());
    }

    private String tree(Tree tree) {
        return tree.species() + " " + text.reading(Reading.DBH, tree.dbhCm(), 1) + " " + text.unit(Reading.DBH)
                + (tree.number().isEmpty() ? ", line " + tree.row() : "");
    }
}
