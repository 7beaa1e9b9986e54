package quadmean.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.chart.BudgetChart;
import quadmean.chart.ChartSet;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.PlotResult;

/** The files that a cruise is reported in. */
public final class CruiseOutputs {
    private CruiseOutputs() {}

    /**
     * Content by file name, the page for people first.
     *
     * @param plots what each plot says by itself
     * @param charts the charts of the same result
     */
    public static Map<String, Content> of(CruiseResult result, List<PlotResult> plots, ChartSet charts) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("report.html", HtmlReport.of(result, plots, charts));
        files.put("estimate.json", EstimateJson.of(result));
        files.put(EstimateSchema.NAME, EstimateSchema.content());
        files.put("estimates.csv", EstimatesCsv.of(ShownRows.of(result)));
        files.put("plot-results.csv", PlotResultFiles.csv(result, plots));
        files.put("plot-results.geojson", PlotResultFiles.geoJson(result, plots));
        files.put("trees.csv", TreesCsv.of(result));
        if (result.design().wood().logs().isPresent()) {
            files.put("logs.csv", LogsCsv.of(result));
        }
        files.put("curves.csv", CurvesCsv.of(result.curves(), result.design().units()));
        files.put("diameters.csv", DiametersCsv.of(result));
        files.put("stand-table.csv", StandTableCsv.stand(result));
        files.put("stock-table.csv", StandTableCsv.stock(result));
        files.put("statistics.csv", StatisticsCsv.of(result));
        files.put("plots-needed.csv", PlotsNeededCsv.of(result));
        files.put("remeasure.html", RemeasurePage.of(result));
        files.put("remeasure.csv", RemeasureTable.csv(result));
        files.put("problems.csv", ProblemsCsv.of(result.tally().problems()));
        ChartFiles.of(charts.pictures()).forEach(files::put);
        ChartFiles.of(result.budgets().stream().map(BudgetChart::picture).toList())
                .forEach(files::put);
        ChartFiles.of(PlotMap.picture(result, plots).stream().toList()).forEach(files::put);
        files.put("tables.xlsx", TablesWorkbook.of(result.design().name(), files));
        return files;
    }
}
