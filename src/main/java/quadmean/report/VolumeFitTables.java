package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.chart.Wording;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeBias;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;

/** Tables of one group's fits. */
final class VolumeFitTables {
    private final VolumeFitGroup group;
    private final UnitSystem units;

    VolumeFitTables(VolumeFitGroup group, UnitSystem units) {
        this.group = group;
        this.units = units;
    }

    /** Every form with its errors, the one that is used marked. */
    String league() {
        String unit = units.volume().label();
        HtmlTable table = HtmlTable.of(
                "Forms tried: the smaller the leave-one-out error the better",
                List.of(
                        Cell.text("Form"),
                        Cell.text("Fitted"),
                        Cell.number("Leave-one-out error (" + unit + ")"),
                        Cell.number("the same in %"),
                        Cell.number("Bias in total"),
                        Cell.number("Residual sd"),
                        Cell.number("R²"),
                        Cell.text("Status")));
        group.fits().forEach(f -> table.row(leagueRow(f)));
        return table.markup();
    }

    private List<Cell> leagueRow(VolumeFit fit) {
        String status = fit.status().label() + (fit.remark().isEmpty() ? "" : ": " + fit.remark());
        return List.of(
                Cell.text(fit.form().formula()),
                Cell.text(fit.form().regression() + ", " + fit.weights().label()),
                Cell.number(significant(Unit.CUBIC_METRE.convert(fit.leaveOneOutM3(), units.volume()))),
                Cell.number(Rounding.percent(fit.leaveOneOutPercent())),
                Cell.number(percent(fit.biasPercent())),
                Cell.number(constant(fit.sigma()), Double.isNaN(fit.sigma()) ? "" : VolumeFitWords.scale(fit)),
                Cell.number(Double.isNaN(fit.rSquared()) ? Rounding.UNKNOWN : decimals(fit.rSquared())),
                group.isBest(fit) ? Cell.markup("<span class=\"tag good\">best</span>") : Cell.text(status));
    }

    /** Coefficients with their errors. */
    String coefficients() {
        HtmlTable table = HtmlTable.of(
                "Coefficients for D in " + units.diameter().label() + ", H in "
                        + units.length().label() + ", V in " + units.volume().label(),
                List.of(
                        Cell.text("Form"),
                        Cell.text("Coefficient"),
                        Cell.number("Estimate"),
                        Cell.number("Standard error"),
                        Cell.number("t"),
                        Cell.number("df")));
        for (VolumeFit fit : group.fits()) {
            LinearFit regression = fit.fit();
            for (int k = 0;
                    regression != null && regression.hasFullRank() && k < regression.coefficients().length;
                    k++) {
                table.row(List.of(
                        Cell.text(fit.form().formula()),
                        Cell.text(fit.form().coefficients().get(k)),
                        Cell.number(Wording.plain(regression.coefficients()[k])),
                        Cell.number(constant(regression.standardError(k))),
                        Cell.number(Rounding.decimals(2).text(regression.t(k))),
                        Cell.number(Rounding.count(regression.df()))));
            }
        }
        return table.isEmpty() ? "" : table.markup();
    }

    /** Fitted minus observed volume by dbh class, for each form. */
    String bias() {
        List<VolumeFit> usable =
                group.fits().stream().filter(VolumeFit::isUsable).toList();
        if (usable.isEmpty()) {
            return "";
        }
        List<Cell> header = new ArrayList<>(
                List.of(Cell.text("Dbh class (" + units.diameter().label() + ")"), Cell.number("Trees")));
        Map<Double, List<Cell>> rows = new TreeMap<>();
        for (VolumeFit fit : usable) {
            header.add(Cell.number(fit.form().formula()));
            for (VolumeBias b : fit.biasByClass()) {
                rows.computeIfAbsent(
                                b.lower(),
                                k -> new ArrayList<>(List.of(
                                        Cell.text(Wording.plain(b.lower()) + " to under " + Wording.plain(b.upper())),
                                        Cell.number(Rounding.count(b.trees())))))
                        .add(Cell.number(percent(b.percent())));
            }
        }
        HtmlTable table = HtmlTable.of("Fitted minus observed volume, in percent of observed", header);
        rows.values().forEach(table::row);
        List<Cell> total = new ArrayList<>(List.of(
                Cell.text("all"), Cell.number(Rounding.count(group.trees().size()))));
        usable.forEach(f -> total.add(Cell.number(percent(f.biasPercent()))));
        return table.row(total).markup();
    }

    static String significant(double value) {
        return Rounding.significant(value, 3).text(value);
    }

    static String constant(double value) {
        return Double.isFinite(value) ? Rounding.constant(value) : Rounding.UNKNOWN;
    }

    private static String decimals(double value) {
        return Rounding.decimals(4).text(value);
    }

    /** A bias: two decimals, and no minus before nothing. */
    private static String percent(double value) {
        return Double.isFinite(value)
                ? Rounding.decimals(2).text(Math.abs(value) < 0.005 ? 0 : value) + "\u00a0%"
                : Rounding.UNKNOWN;
    }
}
