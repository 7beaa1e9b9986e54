package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.AttributeGrowth;
import quadmean.audit.Component;
import quadmean.audit.Growth;
import quadmean.design.Design;
import quadmean.model.Problem;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;

/** The files that growth is reported in. */
public final class GrowthOutputs {
    private static final int SCHEMA_VERSION = 1;

    private GrowthOutputs() {}

    /** Content by file name, the page for people first. */
    public static Map<String, Content> of(Growth growth, List<Problem> problems) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("growth.html", GrowthPage.of(growth, problems));
        files.put("growth.json", JsonFile.of(json(growth)));
        files.put("growth.csv", components(growth));
        files.put("growth-trees.csv", trees(growth));
        files.put("problems.csv", ProblemsCsv.of(problems));
        return files;
    }

    /** Per hectare and in metric units, for the whole period; a year's share beside it. */
    private static ObjectNode json(Growth growth) {
        Design design = growth.after().design();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("seed", design.seed());
        root.put("confidence", design.confidence());
        root.put("years", growth.settings().years());
        root.put("absent", growth.settings().absent().id());
        root.put("plots", growth.plots());
        root.put("areaHa", growth.areaHa());
        ArrayNode attributes = root.putArray("attributes");
        for (AttributeGrowth g : growth.attributes()) {
            ObjectNode node =
                    attributes.addObject().put("attribute", g.attribute().id());
            JsonNumbers.put(node, "covariance", g.covariance());
            JsonNumbers.put(node, "correlation", g.correlation());
            JsonNumbers.put(node, "seIfIndependent", g.independentSe());
            ObjectNode components = node.putObject("components");
            for (Component c : Component.values()) {
                component(components.putObject(c.id()), growth, g.of(c), c);
            }
        }
        growth.findings().forEach(root.putArray("findings")::add);
        growth.notes().forEach(root.putArray("notes")::add);
        return root;
    }

    private static void component(ObjectNode node, Growth growth, MeanEstimate e, Component c) {
        JsonNumbers.put(node, "mean", e.mean());
        JsonNumbers.put(node, "se", e.se());
        JsonNumbers.put(node, "df", e.df());
        Interval i = e.interval(growth.after().design().confidence());
        JsonNumbers.put(node, "lower", i.lower());
        JsonNumbers.put(node, "upper", i.upper());
        JsonNumbers.put(node, "total", e.mean() * growth.areaHa());
        if (c.isChange()) {
            JsonNumbers.put(node, "meanPerYear", e.mean() / growth.settings().years());
        }
    }

    /** In the units of the design. */
    private static Content components(Growth growth) {
        GrowthText text = new GrowthText(growth);
        List<List<String>> rows = new ArrayList<>();
        for (AttributeGrowth g : growth.attributes()) {
            for (Component c : text.components()) {
                MeanEstimate e = g.of(c);
                rows.add(List.of(
                        g.attribute().id(),
                        c.id(),
                        text.unit(g.attribute()).symbol(),
                        Csv.number(text.in(g.attribute(), e.mean())),
                        Csv.number(text.in(g.attribute(), e.se())),
                        c.isChange()
                                ? Csv.number(text.in(g.attribute(), e.mean())
                                        / growth.settings().years())
                                : ""));
            }
        }
        return Csv.of(List.of("attribute", "component", "unit", "mean", "se", "mean_per_year"), rows.stream());
    }

    private static Content trees(Growth growth) {
        GrowthText text = new GrowthText(growth);
        List<List<String>> rows = new ArrayList<>();
        for (AttributeGrowth g : growth.attributes()) {
            g.trees()
                    .forEach(t -> rows.add(List.of(
                            g.attribute().id(),
                            t.plot(),
                            t.label(),
                            t.fate().id(),
                            text.unit(g.attribute()).symbol(),
                            Csv.number(text.in(g.attribute(), t.before())),
                            Csv.number(text.in(g.attribute(), t.after())),
                            Csv.number(text.in(g.attribute(), t.growth())))));
        }
        return Csv.of(
                List.of("attribute", "plot", "tree", "fate", "unit", "before", "after", "growth_of_survivor"),
                rows.stream());
    }
}
