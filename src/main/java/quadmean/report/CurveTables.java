package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.height.CurveFit;
import quadmean.height.CurveScope;
import quadmean.height.CurveTable;
import quadmean.height.HeightCurve;
import quadmean.height.PlotCalibration;
import quadmean.height.SpeciesCurve;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.LeastSquaresFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The curves in use and every form tried, as tables. */
final class CurveTables {
    private final CurveTable curves;
    private final UnitSystem units;

    CurveTables(CurveTable curves, UnitSystem units) {
        this.curves = curves;
        this.units = units;
    }

    String chosen() {
        HtmlTable table = HtmlTable.of(
                "Height curves in use: d dbh (" + units.diameter().label() + "), bh breast height, heights ("
                        + units.length().label() + ")",
                List.of(
                        Cell.text("Species"),
                        Cell.number("Heights"),
                        Cell.text("Form"),
                        Cell.text("Parameters"),
                        Cell.number("Fitted to dbh"),
                        Cell.text("Why")));
        for (SpeciesCurve search : curves.searches()) {
            HeightCurve curve = search.chosen();
            table.row(List.of(
                    Cell.text(name(search)),
                    Cell.number(Rounding.count(search.heights())),
                    Cell.text(curve == null ? Rounding.UNKNOWN : form(search, curve)),
                    Cell.text(curve == null ? Rounding.UNKNOWN : parameters(curve.parameters())),
                    Cell.number(curve == null ? Rounding.UNKNOWN : range(curve)),
                    Cell.text(why(search))));
        }
        return table.markup();
    }

    String tried() {
        HtmlTable table = HtmlTable.of(
                "Curve forms tried: least squares, dbh (" + units.diameter().label() + "), heights ("
                        + units.length().label() + ")",
                List.of(
                        Cell.text("Species"),
                        Cell.text("Form"),
                        Cell.text("Status"),
                        Cell.text("Parameters (standard error)"),
                        Cell.number("RSS (" + units.length().label() + "²)"),
                        Cell.number("Sigma (" + units.length().label() + ")"),
                        Cell.number("Leave-one-out error (" + units.length().label() + ")"),
                        Cell.number("AICc"),
                        Cell.number("n"),
                        Cell.text("Remark")));
        for (SpeciesCurve search : curves.searches()) {
            if (search.fits().isEmpty()) {
                table.row(List.of(
                        Cell.text(name(search)),
                        Cell.text("none"),
                        Cell.text("not tried"),
                        Cell.text(""),
                        Cell.number(""),
                        Cell.number(""),
                        Cell.number(""),
                        Cell.number(""),
                        Cell.number(Rounding.count(search.heights())),
                        Cell.text(search.reason())));
            }
            search.fits().forEach(tried -> table.row(row(search, tried)));
        }
        return table.markup();
    }

    private List<Cell> row(SpeciesCurve search, CurveFit tried) {
        LeastSquaresFit fit = tried.fit();
        String status = tried.status().label() + (Facts.isChosen(search, tried) ? ", chosen" : "");
        String form = tried.form().label() + " (" + tried.form().source() + ")";
        return List.of(
                Cell.text(name(search)),
                Cell.text(form),
                Cell.text(status),
                Cell.text(fit == null ? Rounding.UNKNOWN : parameters(fit)),
                Cell.number(fit == null ? Rounding.UNKNOWN : Rounding.constant(fit.rss())),
                Cell.number(fit == null ? Rounding.UNKNOWN : Rounding.constant(fit.sigma())),
                Cell.number(fit == null ? Rounding.UNKNOWN : Rounding.constant(tried.leaveOneOutError())),
                Cell.number(
                        fit == null ? Rounding.UNKNOWN : Rounding.decimals(2).text(tried.aicc())),
                Cell.number(Rounding.count(search.heights())),
                Cell.text(tried.remark()));
    }

    static String name(SpeciesCurve search) {
        return switch (search.scope()) {
            case SPECIES -> search.species();
            case GROUP -> "Group " + search.species();
            case POOLED -> "All species";
        };
    }

    private static String form(SpeciesCurve search, HeightCurve curve) {
        if (search.isOwn()) {
            return curve.form().label() + ": " + curve.form().formula();
        }
        return curve.scope() == CurveScope.POOLED ? "as all species" : "as group " + curve.species();
    }

    private static String why(SpeciesCurve search) {
        PlotCalibration calibration = search.calibration();
        String words = calibration == null ? "" : ". " + Wording.capital(calibration.words());
        return Wording.capital(search.reason()) + words;
    }

    private String range(HeightCurve curve) {
        Rounding one = Rounding.decimals(1);
        return one.text(Unit.CENTIMETRE.convert(curve.minDbhCm(), units.diameter())) + " to "
                + one.text(Unit.CENTIMETRE.convert(curve.maxDbhCm(), units.diameter())) + " "
                + units.diameter().label();
    }

    private static String parameters(double[] values) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            parts.add((char) ('a' + i) + "\u00a0=\u00a0" + Rounding.constant(values[i]));
        }
        return String.join(", ", parts);
    }

    private static String parameters(LeastSquaresFit fit) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < fit.parameters().length; i++) {
            String error = fit.hasFullRank() ? Rounding.constant(fit.standardError(i)) : "unknown";
            parts.add((char) ('a' + i) + "\u00a0=\u00a0" + Rounding.constant(fit.parameters()[i]) + " (" + error + ")");
        }
        return String.join(", ", parts);
    }
}
