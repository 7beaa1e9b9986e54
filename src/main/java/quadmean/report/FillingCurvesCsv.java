package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quadmean.cruise.EstateResult;
import quadmean.model.FillingCurve;

/** The height curves of an estate as a file, which another run can fill heights from. */
final class FillingCurvesCsv {
    private static final int PARAMETERS = 3;

    private FillingCurvesCsv() {}

    static Content of(EstateResult result) {
        Stream<List<String>> rows = result.curves().entrySet().stream()
                .flatMap(region -> region.getValue().curves().stream().map(c -> row(region.getKey(), c)));
        return Csv.toReadAgain(FillingCurve.COLUMNS, rows);
    }

    private static List<String> row(String region, FillingCurve c) {
        List<String> cells = new ArrayList<>(List.of(
                region,
                c.species(),
                c.source().id(),
                c.form().id(),
                c.units().id(),
                Csv.number(c.breastHeight()),
                Csv.number(c.ratio())));
        for (int i = 0; i < PARAMETERS; i++) {
            cells.add(i < c.parameters().length ? Csv.number(c.parameters()[i]) : "");
        }
        cells.addAll(List.of(
                Integer.toString(c.heights()),
                Csv.number(c.scatterM()),
                Csv.number(c.minDbhCm()),
                Csv.number(c.maxDbhCm())));
        return cells;
    }
}
