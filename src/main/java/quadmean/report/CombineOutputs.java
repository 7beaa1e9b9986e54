package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.Combined;
import quadmean.audit.CombinedStand;
import quadmean.audit.StandTotal;
import quadmean.model.Problem;
import quadmean.stats.Interval;

/** The files that combined stands are reported in: {@code combine.html}, {@code combine.json}, {@code combine.csv}. */
public final class CombineOutputs {
    private static final int SCHEMA_VERSION = 1;

    private CombineOutputs() {}

    /** Content by file name, the page for people first. */
    public static Map<String, Content> of(Combined combined, List<Problem> problems) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("combine.html", CombinePage.of(combined, problems));
        files.put("combine.json", JsonFile.of(json(combined)));
        files.put("combine.csv", csv(combined));
        files.put("problems.csv", ProblemsCsv.of(problems));
        return files;
    }

    /** Totals in metric units. */
    private static ObjectNode json(Combined combined) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("attribute", combined.attribute().id());
        root.put("confidence", combined.confidence());
        ArrayNode stands = root.putArray("stands");
        for (int i = 0; i < combined.stands().size(); i++) {
            CombinedStand s = combined.stands().get(i);
            ObjectNode node = stands.addObject();
            node.put("design", s.cruise().design().name());
            node.put("designSha256", s.cruise().design().sha256());
            node.put("seed", s.cruise().design().seed());
            node.put("group", s.listed().group());
            node.put("curves", s.listed().curves());
            node.put("equations", s.listed().equations());
            node.put("crew", s.listed().crew());
            total(node, combined.totals().get(i), combined);
        }
        ArrayNode groups = root.putArray("groups");
        combined.groups().forEach(t -> total(groups.addObject(), t, combined));
        ArrayNode strata = root.putArray("strata");
        combined.strata().forEach(t -> total(strata.addObject(), t, combined));
        total(root.putObject("all"), combined.all(), combined);
        JsonNumbers.put(root, "seIfSharedErrorsAveragedOut", combined.averagedSe());
        combined.notes().forEach(root.putArray("notes")::add);
        return root;
    }

    private static void total(ObjectNode node, StandTotal t, Combined combined) {
        node.put("name", t.name());
        node.put("areaHa", t.areaHa());
        node.put("plots", t.plots());
        JsonNumbers.put(node, "total", t.sampling().mean());
        JsonNumbers.put(node, "samplingSe", t.sampling().se());
        JsonNumbers.put(node, "samplingDf", t.sampling().df());
        ObjectNode shared = node.putObject("sharedSe");
        t.shared()
                .forEach((source, se) -> JsonNumbers.put(shared, source.name().toLowerCase(java.util.Locale.ROOT), se));
        JsonNumbers.put(node, "otherVariance", t.otherVariance());
        JsonNumbers.put(node, "totalSe", t.totalSe());
        Interval i = t.withAll().interval(combined.confidence());
        JsonNumbers.put(node, "lower", i.lower());
        JsonNumbers.put(node, "upper", i.upper());
        JsonNumbers.put(node, "errorPercent", t.withAll().samplingErrorPercent(combined.confidence()));
    }

    /** In the units of the first design. */
    private static Content csv(Combined combined) {
        CombineText text = new CombineText(combined);
        List<List<String>> rows = new ArrayList<>();
        combined.totals().forEach(t -> rows.add(row("stand", text, t, combined)));
        combined.groups().forEach(t -> rows.add(row("group", text, t, combined)));
        combined.strata().forEach(t -> rows.add(row("stratum", text, t, combined)));
        rows.add(row("all", text, combined.all(), combined));
        return Csv.of(
                List.of(
                        "kind",
                        "name",
                        "area_ha",
                        "plots",
                        "attribute",
                        "unit",
                        "total",
                        "sampling_se",
                        "total_se",
                        "lower",
                        "upper"),
                rows.stream());
    }

    private static List<String> row(String kind, CombineText text, StandTotal t, Combined combined) {
        Interval i = t.withAll().interval(combined.confidence());
        return List.of(
                kind,
                t.name(),
                Csv.number(t.areaHa()),
                Integer.toString(t.plots()),
                combined.attribute().id(),
                text.unit().symbol(),
                Csv.number(text.in(t.sampling().mean())),
                Csv.number(text.in(t.sampling().se())),
                Csv.number(text.in(t.totalSe())),
                Csv.number(text.in(i.lower())),
                Csv.number(text.in(i.upper())));
    }
}
