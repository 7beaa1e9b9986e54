package quadmean.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.chart.ChartSet;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateSpread;

/** The files that an estate makes. */
public final class EstateOutputs {
    /** Names of the tables and pages, charts apart. */
    public static final List<String> NAMES = List.of(
            "report.html",
            "estimate.json",
            EstimateSchema.ESTATE,
            "estimates.csv",
            "stands.csv",
            "stand-species.csv",
            "curves.csv",
            "problems.csv");

    private EstateOutputs() {}

    /**
     * Content by file name, the page for people first.
     *
     * @param spread how the stands differ in the attribute of the target
     * @param charts the charts of the same result
     * @param problems the list of problems
     */
    public static Map<String, Content> of(EstateResult result, EstateSpread spread, ChartSet charts, Content problems) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("report.html", EstatePage.of(result, spread, charts));
        files.put("estimate.json", EstateJson.of(result, spread));
        files.put(EstimateSchema.ESTATE, EstimateSchema.ofEstate());
        files.put("estimates.csv", EstimatesCsv.of(ShownRows.of(result)));
        files.put("stands.csv", StandsCsv.of(result));
        files.put("stand-species.csv", StandSpeciesCsv.of(result));
        files.put("curves.csv", FillingCurvesCsv.of(result));
        files.put("problems.csv", problems);
        ChartFiles.of(charts.pictures()).forEach(files::put);
        return files;
    }
}
