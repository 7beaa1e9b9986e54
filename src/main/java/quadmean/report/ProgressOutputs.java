package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.PlotState;
import quadmean.audit.ProgressReport;
import quadmean.audit.Stopping;
import quadmean.audit.StoppingCoverage;
import quadmean.design.Design;
import quadmean.estimate.PlotsNeeded;
import quadmean.stats.MeanEstimate;

/** The files that a cruise under way is reported in: {@code progress.html}, {@code progress.json}, {@code progress.csv}. */
public final class ProgressOutputs {
    private static final int SCHEMA_VERSION = 1;

    private ProgressOutputs() {}

    /** Content by file name, the page for people first. */
    public static Map<String, Content> of(ProgressReport report) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("progress.html", ProgressPage.of(report));
        files.put("progress.json", JsonFile.of(json(report)));
        files.put("progress.csv", csv(report));
        files.put("problems.csv", ProblemsCsv.of(report.cruise().tally().problems()));
        return files;
    }

    private static Content csv(ProgressReport report) {
        Design design = report.design();
        return Csv.of(
                List.of(
                        "plot",
                        "stratum",
                        "subset",
                        "crew",
                        "state",
                        design.targetAttribute().id() + "_per_ha_metric"),
                report.plots().stream()
                        .map(p -> List.of(
                                p.plot(),
                                p.stratum(),
                                p.subset(),
                                p.crew(),
                                p.state().id(),
                                Csv.number(p.value()))));
    }

    private static ObjectNode json(ProgressReport report) {
        Design design = report.design();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("seed", design.seed());
        root.put("confidence", design.confidence());
        root.put("targetErrorPercent", design.targetErrorPercent());
        root.put("targetAttribute", design.targetAttribute().id());
        for (PlotState.State state : PlotState.State.values()) {
            root.put("plots_" + state.id(), report.count(state));
        }
        PlotsNeeded needed = report.cruise().estimate().needed().get(0);
        JsonNumbers.put(root, "samplingErrorPercent", needed.achievedPercent());
        JsonNumbers.put(root, "morePlots", needed.more());
        stopping(root.putObject("stopping"), design, report.stopping());
        ArrayNode subsets = root.putArray("subsets");
        report.subsets()
                .forEach(s -> subsets.addObject()
                        .put("name", s.name())
                        .put("plots", s.plots())
                        .put("done", s.done()));
        ArrayNode crews = root.putArray("crews");
        report.crews().forEach(c -> {
            ObjectNode node = crews.addObject().put("crew", c.crew()).put("plots", c.plots());
            JsonNumbers.put(node, "meanPerHa", c.mean());
            JsonNumbers.put(node, "percent", c.percent());
            JsonNumbers.put(node, "p", c.pValue());
        });
        ArrayNode coverage = root.putArray("simulatedCoverage");
        StoppingCoverage.near(design.confidence(), design.targetErrorPercent())
                .forEach(r -> coverage.addObject()
                        .put("stand", r.stand())
                        .put("confidence", r.confidence())
                        .put("targetPercent", r.targetPercent())
                        .put("rule", r.rule())
                        .put("minimumPlots", r.minimum())
                        .put("coveragePercent", r.coveragePercent())
                        .put("meanPlots", r.meanPlots()));
        return root;
    }

    private static void stopping(ObjectNode node, Design design, Stopping s) {
        node.put("state", s.state().id());
        node.put("decision", s.decision().id());
        node.put("rule", design.followUp().progress().rule().id());
        node.put("minimumPlots", design.followUp().progress().minimumPlots());
        JsonNumbers.put(node, "plotsNeeded", s.plotsNeeded());
        estimate(node.putObject("firstStage"), s.first(), design);
        estimate(node.putObject("wholeSubsets"), s.reported(), design);
    }

    private static void estimate(ObjectNode node, MeanEstimate e, Design design) {
        node.put("plots", e.n());
        JsonNumbers.put(node, "df", e.df());
        JsonNumbers.put(node, "meanPerHa", e.mean());
        JsonNumbers.put(node, "se", e.se());
        JsonNumbers.put(node, "samplingErrorPercent", e.samplingErrorPercent(design.confidence()));
    }
}
