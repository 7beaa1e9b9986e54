package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quadmean.height.CurveFit;
import quadmean.height.CurveTable;
import quadmean.height.SpeciesCurve;
import quadmean.stats.LeastSquaresFit;
import quadmean.units.UnitSystem;

/** Every curve form tried for every species. Parameters and errors are in the unit system of the fit. */
final class CurvesCsv {
    private static final int PARAMETERS = 3;
    private static final List<String> HEADER = List.of(
            "species",
            "form",
            "status",
            "units",
            "a",
            "b",
            "c",
            "se_a",
            "se_b",
            "se_c",
            "rss",
            "sigma",
            "leave_one_out",
            "scatter_power",
            "aicc",
            "n",
            "remark",
            "chosen");

    private CurvesCsv() {}

    static Content of(CurveTable curves, UnitSystem units) {
        return Csv.of(
                HEADER,
                curves.searches().stream()
                        .flatMap(s -> s.fits().isEmpty()
                                ? Stream.of(none(s))
                                : s.fits().stream().map(f -> row(units, s, f))));
    }

    /** A species for which no form was tried still has a row that says why. */
    private static List<String> none(SpeciesCurve search) {
        List<String> row = new ArrayList<>(List.of(search.species(), "", "not tried"));
        while (row.size() < HEADER.size() - 3) {
            row.add("");
        }
        row.addAll(List.of(Integer.toString(search.heights()), search.reason(), "no"));
        return row;
    }

    private static List<String> row(UnitSystem units, SpeciesCurve search, CurveFit tried) {
        LeastSquaresFit fit = tried.fit();
        List<String> row = new ArrayList<>(
                List.of(search.species(), tried.form().id(), tried.status().label(), units.id()));
        for (int i = 0; i < PARAMETERS; i++) {
            row.add(parameter(fit, i));
        }
        for (int i = 0; i < PARAMETERS; i++) {
            row.add(standardError(fit, i));
        }
        row.add(fit == null ? "" : Csv.number(fit.rss()));
        row.add(fit == null ? "" : Csv.number(fit.sigma()));
        row.add(fit == null ? "" : Csv.number(tried.leaveOneOutError()));
        row.add(fit == null ? "" : Csv.number(tried.scatter().power()));
        row.add(fit == null || Double.isInfinite(tried.aicc()) ? "" : Csv.number(tried.aicc()));
        row.add(Integer.toString(search.heights()));
        row.add(tried.remark());
        row.add(Facts.isChosen(search, tried) ? "yes" : "no");
        return row;
    }

    private static String parameter(@Nullable LeastSquaresFit fit, int i) {
        return fit == null || i >= fit.parameters().length ? "" : Csv.number(fit.parameters()[i]);
    }

    private static String standardError(@Nullable LeastSquaresFit fit, int i) {
        return fit == null || i >= fit.parameters().length || !fit.hasFullRank()
                ? ""
                : Csv.number(fit.standardError(i));
    }
}
