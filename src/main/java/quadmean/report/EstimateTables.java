package quadmean.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import quadmean.chart.SpeciesColours;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.UnitSystem;

/** The sections with estimates of the stand, its species and its strata. */
final class EstimateTables {
    private final CruiseResult result;
    private final UnitSystem units;
    private final UnitSystem other;
    private final SpeciesColours colours;
    private final String level;

    private EstimateTables(CruiseResult result) {
        this.result = result;
        this.units = result.design().units();
        this.other = RowText.other(units);
        this.colours = SpeciesColours.of(result);
        this.level = Wording.confidence(result.estimate().confidence());
    }

    static String markup(CruiseResult result) {
        EstimateTables tables = new EstimateTables(result);
        Html html = new Html();
        tables.stand(html);
        tables.species(html);
        if (result.design().strata().size() > 1) {
            tables.strata(html);
        }
        return html.toString();
    }

    private void stand(Html html) {
        html.section("stand", "The whole stand");
        html.raw(full("Estimates for the stand, all species", r -> isAll(r.stratum()) && isAll(r.species()), r -> ""));
        html.raw(neededTable());
        result.estimate().notes().forEach(note -> html.element("p", "notes", note));
        html.endSection();
    }

    private void species(Html html) {
        html.section("species", "By species");
        Predicate<EstimateRow> rows = r -> isAll(r.stratum());
        html.raw(compact(
                "Estimates by species, with sampling error at " + level + " confidence",
                rows,
                EstimateRow::species,
                this::speciesName,
                "Species"));
        html.details("Every number by species, in both unit systems");
        html.raw(full("Estimates by species", r -> rows.test(r) && !isAll(r.species()), r -> speciesName(r.species())));
        html.endDetails().endSection();
    }

    private void strata(Html html) {
        html.section("strata", "By stratum");
        Predicate<EstimateRow> rows = r -> isAll(r.species());
        html.raw(compact(
                "Estimates by stratum, with sampling error at " + level + " confidence",
                rows,
                EstimateRow::stratum,
                this::stratumName,
                "Stratum"));
        html.details("Every number by stratum and species, in both unit systems");
        html.raw(full(
                "Estimates by stratum and species",
                r -> !isAll(r.stratum()),
                r -> stratumName(r.stratum())
                        + (isAll(r.species()) ? ", all species" : ", " + speciesName(r.species()))));
        html.endDetails().endSection();
    }

    /** Every number of the chosen rows, one estimate to a line. */
    private String full(String caption, Predicate<EstimateRow> chosen, Function<EstimateRow, String> prefix) {
        HtmlTable table = HtmlTable.of(
                caption,
                List.of(
                        Cell.text("What"),
                        head("Estimate"),
                        head(level + " limits"),
                        head("Standard error"),
                        head("Sampling error"),
                        head("CV between plots"),
                        head("Plots"),
                        head("df"),
                        head((other == UnitSystem.METRIC ? "Metric" : "US") + ", limits below")));
        Footnotes notes = new Footnotes();
        for (EstimateRow row : result.estimate().rows()) {
            if (chosen.test(row)) {
                RowText ours = RowText.of(row, units);
                RowText theirs = RowText.of(row, other);
                String first = prefix.apply(row);
                String what = first.isEmpty()
                        ? Wording.capital(RowText.what(row, units))
                        : first + ": " + RowText.what(row, units);
                table.row(List.of(
                        Cell.markup(Html.escape(what + notes.mark(row.reason())) + tag(row)),
                        Cell.number(ours.estimate()),
                        Cell.number(ours.limits()),
                        Cell.number(ours.standardError()),
                        Cell.number(RowText.error(row)),
                        Cell.number(Rounding.percent(row.cvPercent())),
                        Cell.number(Rounding.count(row.n())),
                        Cell.number(df(row)),
                        Cell.number(theirs.estimate(), theirs.limits())));
            }
        }
        return table.isEmpty() ? "" : table.markup() + notes.markup();
    }

    /** One line for each species or stratum, one column for each attribute, in the design's units. */
    private String compact(
            String caption,
            Predicate<EstimateRow> chosen,
            Function<EstimateRow, String> key,
            Function<String, String> name,
            String title) {
        List<EstimateRow> rows =
                result.estimate().rows().stream().filter(chosen).toList();
        List<EstimateRow> columns = new ArrayList<>();
        Set<String> keys = new LinkedHashSet<>();
        for (EstimateRow row : rows) {
            keys.add(key.apply(row));
            if (columns.stream().noneMatch(c -> isSameKind(c, row))) {
                columns.add(row);
            }
        }
        List<Cell> header = new ArrayList<>(List.of(Cell.text(title)));
        columns.forEach(c -> header.add(head(
                Wording.capital(RowText.what(c, units)) + " (" + c.unit(units).label() + ")")));
        HtmlTable table = HtmlTable.of(caption, header);
        Footnotes notes = new Footnotes();
        for (String one : lastAll(keys)) {
            List<Cell> cells = new ArrayList<>(List.of(Cell.markup(swatch(title, one) + Html.escape(name.apply(one)))));
            for (EstimateRow column : columns) {
                cells.add(rows.stream()
                        .filter(r -> key.apply(r).equals(one) && isSameKind(r, column))
                        .findFirst()
                        .map(r -> compactCell(r, notes))
                        .orElseGet(() -> Cell.number(
                                Rounding.UNKNOWN, notes.mark("not estimated").strip())));
            }
            table.row(cells);
        }
        return keys.isEmpty() ? "" : table.markup() + notes.markup() + standingNote(rows);
    }

    private Cell compactCell(EstimateRow row, Footnotes notes) {
        String standing = Facts.standing(result, row);
        String below = RowText.error(row) + notes.mark(row.reason()) + (standing.isEmpty() ? "" : " †");
        return Cell.number(RowText.of(row, units).mean(), below);
    }

    private String standingNote(List<EstimateRow> rows) {
        Set<String> standings = new LinkedHashSet<>();
        rows.forEach(r -> standings.addAll(List.of(Facts.standing(result, r).split(", "))));
        standings.remove("");
        return standings.isEmpty()
                ? ""
                : "<p class=\"notes\">† volume equations: " + Html.escape(String.join(", ", standings)) + ".</p>\n";
    }

    private String neededTable() {
        HtmlTable table = HtmlTable.of(
                "Plots needed for a sampling error of ±"
                        + Wording.percent(result.design().targetErrorPercent()) + " at " + level + " confidence",
                List.of(
                        Cell.text("Attribute"),
                        head("Sampling error now"),
                        head("Plots run"),
                        head("Plots needed"),
                        head("Still to run"),
                        Cell.text("Verdict")));
        result.estimate()
                .needed()
                .forEach(n -> table.row(List.of(
                        Cell.text(Wording.capital(n.attribute().label())
                                + (n.attribute() == result.design().targetAttribute() ? " (target)" : "")),
                        Cell.number(Rounding.percent(n.achievedPercent())),
                        Cell.number(Rounding.count(n.plots())),
                        Cell.number(
                                n.needed().isPresent()
                                        ? Rounding.count(n.needed().getAsInt())
                                        : Rounding.UNKNOWN),
                        Cell.number(
                                n.more().isPresent() ? Rounding.count(n.more().getAsInt()) : Rounding.UNKNOWN),
                        Cell.text(Headline.verdict(n)))));
        return table.isEmpty() ? "" : table.markup();
    }

    private static boolean isAll(String code) {
        return code.equals(EstimateRow.ALL);
    }

    private static boolean isSameKind(EstimateRow a, EstimateRow b) {
        return a.attribute() == b.attribute() && a.basis() == b.basis();
    }

    /** The line for all comes last. */
    private static List<String> lastAll(Set<String> keys) {
        List<String> sorted = new ArrayList<>(keys);
        if (sorted.remove(EstimateRow.ALL)) {
            sorted.add(EstimateRow.ALL);
        }
        return sorted;
    }

    private static Cell head(String text) {
        return Cell.number(text);
    }

    private static String df(EstimateRow row) {
        return row.df() > 0 ? Wording.plain(Math.round(row.df() * 10) / 10.0) : Rounding.UNKNOWN;
    }

    private String tag(EstimateRow row) {
        String standing = Facts.standing(result, row);
        return standing.isEmpty() ? "" : " <span class=\"tag\">" + Html.escape(standing) + "</span>";
    }

    private String swatch(String title, String code) {
        return title.equals("Species") && !isAll(code)
                ? "<span class=\"swatch\" style=\"background:" + colours.hex(code) + "\"></span>"
                : "";
    }

    private String speciesName(String code) {
        String name = result.design().speciesName(code);
        return isAll(code) ? "All species" : name.equals(code) ? code : code + ", " + name;
    }

    private String stratumName(String code) {
        return isAll(code)
                ? "All strata"
                : result.design().stratumList().stream()
                        .filter(s -> s.code().equals(code))
                        .map(s -> s.name().equals(code) ? code : code + ", " + s.name())
                        .findFirst()
                        .orElse(code);
    }
}
