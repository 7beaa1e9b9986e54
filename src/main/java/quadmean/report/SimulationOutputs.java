package quadmean.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quadmean.simulate.AttributeOutcome;
import quadmean.simulate.Cost;
import quadmean.simulate.Coverage;
import quadmean.simulate.SimulationResult;
import quadmean.simulate.SimulationStudy;
import quadmean.units.UnitSystem;

/** The files that cruises on paper are reported in; numbers in JSON and CSV are metric. */
public final class SimulationOutputs {
    private static final int SCHEMA_VERSION = 1;

    private SimulationOutputs() {}

    /** Content by file name, the page for people first. */
    public static Map<String, Content> of(SimulationStudy study) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("simulate.html", SimulationPage.of(study));
        files.put("simulate.json", JsonFile.of(json(study)));
        files.put("simulate.csv", csv(study));
        return files;
    }

    private static List<SimulationResult> all(SimulationStudy study) {
        List<SimulationResult> all = new ArrayList<>(List.of(study.first()));
        all.addAll(study.beside());
        return all;
    }

    /** Every number, unrounded. */
    static ObjectNode json(SimulationStudy study) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("forest", study.forest());
        root.put("trees", study.trees());
        root.put("areaHa", study.areaHa());
        study.verdict().forEach(root.putArray("verdict")::add);
        var designs = root.putArray("designs");
        all(study).forEach(r -> designs.add(design(r)));
        var ladder = root.putArray("morePlots");
        study.ladder().forEach(s -> {
            ObjectNode node = ladder.addObject();
            node.put("plots", s.plots());
            put(node, s.coverage());
        });
        return root;
    }

    private static ObjectNode design(SimulationResult r) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("design", r.design().name());
        node.put("designSha256", r.design().sha256());
        node.put("confidence", r.design().confidence());
        node.put("cruises", r.cruises());
        node.put("seed", r.seed());
        node.put("plotsAskedFor", r.plots());
        put(node.putObject("cost"), r.cost());
        var attributes = node.putArray("attributes");
        r.attributes().forEach(a -> attributes.add(attribute(a)));
        r.notes().forEach(node.putArray("notes")::add);
        return node;
    }

    private static void put(ObjectNode node, Cost cost) {
        JsonNumbers.put(node, "plots", cost.plots());
        JsonNumbers.put(node, "treesMeasured", cost.measured());
        JsonNumbers.put(node, "treesCounted", cost.counted());
        JsonNumbers.put(node, "heights", cost.heights());
        JsonNumbers.put(node, "walkM", cost.walkM());
        JsonNumbers.put(node, "hours", cost.hours());
    }

    private static ObjectNode attribute(AttributeOutcome a) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("attribute", a.attribute().id());
        node.put("unit", a.attribute().unit(a.basis(), UnitSystem.METRIC).symbol());
        JsonNumbers.put(node, "truth", a.truth());
        node.put("estimates", a.estimates());
        node.put("withoutEstimate", a.without());
        JsonNumbers.put(node, "mean", a.mean());
        JsonNumbers.put(node, "bias", a.bias());
        JsonNumbers.put(node, "biasError", a.biasError());
        JsonNumbers.put(node, "trueSe", a.sd());
        JsonNumbers.put(node, "trueSeError", a.sdError());
        JsonNumbers.put(node, "meanEstimatedSe", a.meanSe());
        JsonNumbers.put(node, "meanEstimatedVariance", a.meanVariance());
        JsonNumbers.put(node, "skewness", a.skewness());
        JsonNumbers.put(node, "correlationOfEstimateAndSe", a.correlation());
        var coverages = node.putArray("limits");
        a.coverages().forEach(c -> put(coverages.addObject(), c));
        ObjectNode histogram = node.putObject("histogram");
        histogram.put("low", a.histogram().low());
        histogram.put("width", a.histogram().width());
        a.histogram().counts().forEach(histogram.putArray("counts")::add);
        return node;
    }

    private static void put(ObjectNode node, Coverage c) {
        node.put("limits", c.rule().id());
        node.put("intervals", c.intervals());
        node.put("covered", c.covered());
        node.put("below", c.below());
        node.put("above", c.above());
        JsonNumbers.put(node, "share", c.share());
        JsonNumbers.put(node, "shareError", c.error());
        JsonNumbers.put(node, "meanHalfWidth", c.halfWidth());
    }

    private static Content csv(SimulationStudy study) {
        List<String> header = List.of(
                "design",
                "plots",
                "attribute",
                "unit",
                "truth",
                "mean",
                "bias",
                "bias_error",
                "true_se",
                "mean_estimated_se",
                "limits",
                "covered",
                "covered_error",
                "below",
                "above",
                "intervals",
                "hours");
        return Csv.of(header, all(study).stream().flatMap(SimulationOutputs::rows));
    }

    private static Stream<List<String>> rows(SimulationResult r) {
        return r.attributes().stream().flatMap(a -> a.coverages().stream().map(c -> row(r, a, c)));
    }

    private static List<String> row(SimulationResult r, AttributeOutcome a, Coverage c) {
        return List.of(
                r.design().name(),
                Csv.number(r.cost().plots()),
                a.attribute().id(),
                a.attribute().unit(a.basis(), UnitSystem.METRIC).symbol(),
                Csv.number(a.truth()),
                Csv.number(a.mean()),
                Csv.number(a.bias()),
                Csv.number(a.biasError()),
                Csv.number(a.sd()),
                Csv.number(a.meanSe()),
                c.rule().id(),
                Csv.number(c.share()),
                Csv.number(c.error()),
                Long.toString(c.below()),
                Long.toString(c.above()),
                Long.toString(c.intervals()),
                Csv.number(r.cost().hours()));
    }
}
