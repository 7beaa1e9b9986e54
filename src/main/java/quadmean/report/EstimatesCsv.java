package quadmean.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import quadmean.chart.Wording;
import quadmean.estimate.EstimateRow;
import quadmean.units.UnitSystem;

/** The flat list of estimates as a file, metric rows and the same in US units after each. */
final class EstimatesCsv {
    private static final List<String> HEADER = List.of(
            "stratum",
            "species",
            "product",
            "log",
            "attribute",
            "basis",
            "unit",
            "n",
            "df",
            "mean",
            "se",
            "cv_percent",
            "lower",
            "upper",
            "sampling_error_percent",
            "interval",
            "equation_standing",
            "reason");

    private EstimatesCsv() {}

    static Content of(ShownRows shown) {
        Stream<List<String>> rows = shown.rows().stream()
                .flatMap(row -> Arrays.stream(UnitSystem.values()).map(system -> row(shown, row, system)));
        return Csv.of(HEADER, rows);
    }

    private static List<String> row(ShownRows shown, EstimateRow row, UnitSystem system) {
        return List.of(
                row.stratum(),
                row.species(),
                row.part().product(),
                row.part().place(),
                row.attribute().id(),
                row.basis().id(),
                Wording.unitSymbol(shown.design(), row.attribute(), row.basis(), system),
                Integer.toString(row.n()),
                Csv.number(row.df()),
                Csv.number(row.in(system, row.mean())),
                Csv.number(row.in(system, row.se())),
                Csv.number(row.cvPercent()),
                Csv.number(row.in(system, row.lower())),
                Csv.number(row.in(system, row.upper())),
                Csv.number(row.samplingErrorPercent()),
                shown.design().estimation().interval().id(),
                shown.standing(row),
                row.reason());
    }
}
