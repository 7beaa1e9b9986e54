package quadmean.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.chart.ChartSet;
import quadmean.cruise.CurvesRun;
import quadmean.design.Design;

/** The files that height curves are reported in. */
public final class CurveOutputs {
    private static final int SCHEMA_VERSION = 1;

    private CurveOutputs() {}

    /**
     * Content by file name, the page for people first.
     *
     * @param charts the charts of the same curves
     */
    public static Map<String, Content> of(CurvesRun.Result result, ChartSet charts) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("curves.html", CurvesPage.of(result, charts));
        files.put("curves.json", JsonFile.of(json(result)));
        files.put("curves.csv", CurvesCsv.of(result.curves(), result.design().units()));
        ChartFiles.of(charts.pictures()).forEach(files::put);
        return files;
    }

    private static ObjectNode json(CurvesRun.Result result) {
        Design design = result.design();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("units", design.units().id());
        root.put("breastHeight", design.height().breastHeight());
        root.put("weights", design.height().curves().weights().id());
        root.put("calibrate", design.height().curves().calibration().id());
        root.put("trees", result.trees().size());
        root.set("curves", JsonCurves.of(result.curves()));
        root.set("moreHeights", AdviceTable.json(result.more()));
        root.set("heightPlan", AdviceTable.json(result.plan()));
        return root;
    }
}
