package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.audit.AuditRun;
import quadmean.audit.CheckCruise;
import quadmean.audit.CrewCheck;
import quadmean.audit.Judgement;
import quadmean.audit.ReadingCheck;
import quadmean.audit.ValueCheck;
import quadmean.design.Design;
import quadmean.model.RowCount;
import quadmean.stats.Interval;
import quadmean.stats.PairedDifference.Equivalence;

/** Every number of a check cruise, unrounded and metric: dbh in cm, heights in m, defect in percent, values per hectare. */
final class AuditJson {
    private static final int SCHEMA_VERSION = 1;

    private AuditJson() {}

    static Content of(AuditRun run, CheckCruise check) {
        Design design = check.cruise().design();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("seed", design.seed());
        root.put("verdict", check.verdict().id());
        check.reasons().forEach(root.putArray("reasons")::add);
        root.put("chosen", check.settings().chosen().id());
        root.put("boundConfidence", check.settings().confidence());
        root.put("matchWithinPercent", check.settings().matchPercent());
        root.put("limits", check.settings().tolerances().source());
        ArrayNode findings = root.putArray("findings");
        check.findings()
                .forEach(f -> findings.addObject()
                        .put("kind", f.kind().id())
                        .put("where", f.where())
                        .put("detail", f.detail()));
        ArrayNode judgements = root.putArray("judgements");
        check.judgements().forEach(j -> judgement(judgements.addObject(), j));
        ArrayNode readings = root.putArray("readings");
        check.readings().forEach(r -> reading(readings.addObject(), r));
        ArrayNode crews = root.putArray("crews");
        check.crews().forEach(c -> crew(crews.addObject(), c));
        value(root.putObject("value"), check.value());
        ArrayNode plots = root.putArray("plots");
        check.plots().forEach(p -> {
            ObjectNode node = plots.addObject()
                    .put("plot", p.plot())
                    .put("stratum", p.stratum())
                    .put("crew", p.crew());
            node.put("matched", p.matched()).put("missed", p.missed()).put("extra", p.extra());
            node.put("countedApart", p.countedApart());
            JsonNumbers.put(node, "cruised", p.cruised());
            JsonNumbers.put(node, "checked", p.checked());
        });
        rows(root.putObject("cruiseRows"), run.cruise().rows());
        rows(root.putObject("checkRows"), run.check().rows());
        check.notes().forEach(root.putArray("notes")::add);
        return JsonFile.of(root);
    }

    private static void judgement(ObjectNode node, Judgement j) {
        node.put("what", j.what()).put("verdict", j.verdict().id()).put("unit", j.unit());
        node.put("n", j.n()).put("plots", j.plots());
        j.limit().ifPresent(l -> {
            node.put("within", j.within());
            JsonNumbers.put(node, "share", j.share());
            node.put("shareAskedFor", l.share());
            node.put("allowed", l.within());
            node.put("allowedScale", l.scale().name().toLowerCase(java.util.Locale.ROOT));
            JsonNumbers.put(node, "allowedStep", l.step());
            interval(node.putObject("exactBounds"), j.exact());
            interval(node.putObject("boundsByPlots"), j.clustered());
        });
    }

    private static void reading(ObjectNode node, ReadingCheck r) {
        node.put("reading", r.reading().id());
        node.put("n", r.judgement().n());
        JsonNumbers.put(node, "bias", r.bias().mean());
        JsonNumbers.put(node, "biasSe", r.bias().se());
        JsonNumbers.put(node, "sd", r.sd());
        JsonNumbers.put(node, "rms", r.rms());
    }

    private static void crew(ObjectNode node, CrewCheck c) {
        node.put("crew", c.crew()).put("reading", c.reading().id());
        node.put("trees", c.trees()).put("plots", c.plots());
        JsonNumbers.put(node, "bias", c.bias().mean());
        JsonNumbers.put(node, "biasSe", c.bias().se());
        interval(node.putObject("limits"), c.limits());
        node.put("biased", c.isBiased());
    }

    private static void value(ObjectNode node, ValueCheck v) {
        node.put("attribute", v.attribute().id());
        JsonNumbers.putText(node, "reason", v.reason());
        node.put("n", v.paired().n());
        JsonNumbers.put(node, "meanDifference", v.paired().mean());
        JsonNumbers.put(node, "sd", v.paired().sd());
        JsonNumbers.put(node, "se", v.paired().se());
        JsonNumbers.put(node, "p", v.paired().pValue());
        JsonNumbers.put(node, "meanChecked", v.meanChecked());
        JsonNumbers.put(node, "percent", v.percent());
        JsonNumbers.put(node, "standTotal", v.standTotal());
        JsonNumbers.put(node, "standAsChecked", v.standAsChecked());
        v.equivalence().ifPresent(e -> equivalence(node.putObject("equivalence"), e));
    }

    private static void equivalence(ObjectNode node, Equivalence e) {
        node.put("margin", e.margin()).put("level", e.level());
        JsonNumbers.put(node, "pLower", e.pLower());
        JsonNumbers.put(node, "pUpper", e.pUpper());
        interval(node.putObject("interval"), e.interval());
        node.put("shown", Double.isNaN(e.pValue()) ? null : (Boolean) e.isShown());
    }

    static void interval(ObjectNode node, Interval i) {
        JsonNumbers.put(node, "lower", i.lower());
        JsonNumbers.put(node, "upper", i.upper());
    }

    private static void rows(ObjectNode node, RowCount rows) {
        node.put("in", rows.in())
                .put("used", rows.used())
                .put("dropped", rows.dropped())
                .put("kept", rows.kept());
    }
}
