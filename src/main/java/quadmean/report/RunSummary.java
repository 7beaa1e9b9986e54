package quadmean.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.height.CurveTable;
import quadmean.height.SpeciesCurve;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.plan.CruisePlan;
import quadmean.simulate.SimulationStudy;

/**
 * What a run came to, as one JSON object for scripts: command, exit code, files written, headline figures and verdict. Figures are
 * those of {@code estimate.json} and {@code plan.json}, under the same keys.
 */
public final class RunSummary {
    private final ObjectNode root = JsonNodeFactory.instance.objectNode();
    private final ArrayNode files;

    /** A summary of a run that has just begun. */
    public RunSummary(String command) {
        root.put("command", command);
        root.putNull("exitCode");
        files = root.putArray("files");
    }

    /** Files that were written. */
    public void files(List<Path> written) {
        written.forEach(p -> files.add(p.toString()));
    }

    /** How many problems there are by what becomes of them. */
    public void problems(List<Problem> problems) {
        ObjectNode node = root.putObject("problems");
        for (Policy policy : Policy.values()) {
            node.put(
                    policy.id(),
                    problems.stream().filter(p -> p.policy() == policy).count());
        }
    }

    /** The same of an estate, whose problems are counted and not gathered. */
    public void problems(Map<Rule, Map<Policy, Long>> problems) {
        ObjectNode node = root.putObject("problems");
        for (Policy policy : Policy.values()) {
            node.put(
                    policy.id(),
                    problems.values().stream()
                            .mapToLong(m -> m.getOrDefault(policy, 0L))
                            .sum());
        }
    }

    /** The account of rows. */
    public void rows(RowCount rows) {
        root.set("rows", EstimateJson.rows(rows));
    }

    /** The estimates of the whole stand, all species together, in the units of the design; and whether the target is met. */
    public void estimate(CruiseResult result) {
        root.put("design", result.design().name());
        root.put("confidence", result.estimate().confidence());
        root.put("plots", result.tally().plots().size());
        root.put("trees", result.trees().size());
        estimates(ShownRows.of(result), result.estimate().wholeRows());
        ObjectNode target = EstimateJson.target(result);
        ObjectNode first = (ObjectNode) target.get("attributes").get(0);
        first.remove("allocations");
        first.put("targetErrorPercent", result.design().targetErrorPercent());
        root.set("target", first);
    }

    /** The estimates of the whole estate, its ground, and whether the target is met. */
    public void estate(EstateResult result) {
        root.put("design", result.design().name());
        root.put("confidence", result.estimate().confidence());
        estimates(ShownRows.of(result), result.estimate().rows());
        root.set("extent", EstateJson.extent(result.estimate().stands()));
        root.set("target", EstateJson.target(result));
    }

    /** Rows of all strata and all species, in the units of the design. */
    private void estimates(ShownRows shown, List<EstimateRow> rows) {
        ArrayNode list = root.putArray("estimates");
        for (EstimateRow row : rows) {
            if (row.stratum().equals(EstimateRow.ALL) && row.species().equals(EstimateRow.ALL)) {
                list.add(EstimateJson.estimate(shown, row, shown.design().units()));
            }
        }
    }

    /** How many plots the target takes. */
    public void plan(Design design, CruisePlan plan) {
        ObjectNode json = PlanJson.tree(design, plan);
        json.get("options").forEach(option -> ((ObjectNode) option).remove("curve"));
        for (String key : List.of("design", "variation", "targets", "options", "laidOut")) {
            root.set(key, json.get(key));
        }
    }

    /** The curve of each species, null where there is none. */
    public void curves(CurveTable curves) {
        ArrayNode list = root.putArray("curves");
        for (SpeciesCurve search : curves.searches()) {
            ObjectNode node = list.addObject();
            node.put("species", search.species());
            node.put("scope", search.scope().name().toLowerCase(Locale.ROOT));
            node.put("heights", search.heights());
            node.put(
                    "form",
                    search.chosen() == null ? null : search.chosen().form().id());
            node.put("reason", search.reason());
        }
    }

    /** What cruises on paper came to: of each design its attributes against the truth, and the verdict. */
    public void simulation(SimulationStudy study) {
        ObjectNode json = SimulationOutputs.json(study);
        root.set("designs", json.get("designs"));
        root.set("verdict", json.get("verdict"));
    }

    /** Why there is no result. */
    public void error(String message) {
        root.put("error", message);
    }

    /** What to do next. */
    public void next(String words) {
        root.put("next", words);
    }

    /** The object on a single line. */
    public String text(int exitCode) {
        root.put("exitCode", exitCode);
        try {
            return new ObjectMapper().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("plain values are always JSON", e);
        }
    }
}
