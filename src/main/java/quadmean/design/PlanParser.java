package quadmean.design;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import quadmean.design.PlanSettings.Pilot;
import quadmean.design.PlanSettings.RangeRule;
import quadmean.design.PlanSettings.Sharing;
import quadmean.design.PlanSettings.TargetEntry;
import quadmean.model.Rule;
import quadmean.units.Attribute;
import quadmean.units.UnitSystem;

/** Reads {@code [plan]}. */
final class PlanParser {
    private final Section root;
    private final Section plan;
    private final Section cruise;

    private PlanParser(Section root, Section cruise) {
        this.root = root;
        this.plan = root.table("plan");
        this.cruise = cruise;
    }

    /**
     * Reads the table.
     *
     * @param cruise where the confidence of further targets comes from if they have none
     * @param attributes what a target may apply to
     * @param designFile where paths start
     * @param heightEvery k, where the crew measures every k-th height, for the time that kinds of plot take
     */
    static PlanSettings parse(
            Section root,
            Section cruise,
            List<Attribute> attributes,
            Path designFile,
            UnitSystem units,
            int heightEvery) {
        return new PlanParser(root, cruise).parse(attributes, designFile, units, heightEvery);
    }

    private PlanSettings parse(List<Attribute> attributes, Path designFile, UnitSystem units, int heightEvery) {
        PlanSettings settings = new PlanSettings(
                plan.number("cv", Range.POSITIVE),
                range(),
                plan.choice("pilot", Options.of(Pilot.values(), Pilot::id)).orElse(Pilot.NONE),
                whole(plan, "pilot_plots", Range.TWO_OR_MORE_WHOLE),
                previous(designFile),
                PlotParser.finitePopulation(plan, "finite_population", root),
                plan.choice("allocation", Options.of(Sharing.values(), Sharing::id))
                        .orElse(Sharing.PROPORTIONAL),
                targets(attributes),
                costs(),
                PlanSamplesParser.parse(plan),
                KindsParser.parse(plan, root, designFile, units, heightEvery));
        checkSources(settings);
        plan.close();
        return settings;
    }

    private Optional<RangeRule> range() {
        if (!plan.has("range")) {
            plan.knows("range_mean", "range_plots");
            return Optional.empty();
        }
        List<Double> ends = plan.requiredNumbers("range", Range.NOT_NEGATIVE);
        OptionalDouble mean = plan.number("range_mean", Range.POSITIVE);
        OptionalInt plots = whole(plan, "range_plots", Range.TWO_OR_MORE);
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        if (ends.size() != 2 || !(ends.get(1) > ends.get(0))) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "range",
                    ends.toString(),
                    "a range is the poorest and the richest plot, in this order, such as [40, 220]");
            return Optional.empty();
        }
        double middle = (ends.get(0) + ends.get(1)) / 2;
        return Optional.of(new RangeRule(ends.get(0), ends.get(1), mean.orElse(middle), plots));
    }

    private @Nullable Path previous(Path designFile) {
        Optional<String> written = plan.text("previous");
        if (written.isEmpty()) {
            return null;
        }
        try {
            return designFile.toAbsolutePath().resolveSibling(written.get()).normalize();
        } catch (InvalidPathException e) {
            plan.problem(Rule.DESIGN_VALUE, "previous", written.get(), "this is no file name: " + e.getReason());
            return null;
        }
    }

    private List<TargetEntry> targets(List<Attribute> attributes) {
        List<TargetEntry> targets = new ArrayList<>();
        double confidence = cruise.number("confidence", Range.CONFIDENCE, DesignReader.DEFAULT_CONFIDENCE);
        for (Section s : plan.tableList("target")) {
            Optional<Attribute> attribute = s.requiredChoice("attribute", Options.of(attributes, Attribute::id));
            double error = s.requiredNumber("error", Range.POSITIVE);
            TargetEntry entry = new TargetEntry(
                    attribute.orElse(Attribute.BASAL_AREA),
                    error,
                    s.number("confidence", Range.CONFIDENCE, confidence),
                    s.number("cv", Range.POSITIVE),
                    byStratum(s, "stratum_mean"),
                    byStratum(s, "stratum_cv"));
            s.close();
            if (targets.stream().anyMatch(t -> t.attribute() == entry.attribute())) {
                s.problem(Rule.DESIGN_VALUE, "attribute", entry.attribute().id(), "two targets have this attribute");
            }
            targets.add(entry);
        }
        return targets;
    }

    private static Map<String, Double> byStratum(Section target, String key) {
        Map<String, Double> values = new LinkedHashMap<>();
        if (!target.has(key)) {
            return values;
        }
        Section table = target.table(key);
        table.keys().forEach(code -> values.put(code, table.requiredNumber(code, Range.POSITIVE)));
        return values;
    }

    private PlanCosts costs() {
        Section s = plan.table("cost");
        PlanCosts costs = new PlanCosts(
                s.text("unit").orElse(s.has("plot") ? "cost units" : "plots"),
                s.number("fixed", Range.NOT_NEGATIVE, 0),
                s.number("plot", Range.POSITIVE),
                s.number("budget", Range.POSITIVE));
        s.close();
        return costs;
    }

    /** One source of variation, not two that may disagree. */
    private void checkSources(PlanSettings settings) {
        List<String> sources = new ArrayList<>();
        settings.cvPercent().ifPresent(cv -> sources.add("cv"));
        settings.range().ifPresent(r -> sources.add("range"));
        if (settings.pilot() == Pilot.TALLY) {
            sources.add("pilot");
        }
        if (settings.previous() != null) {
            sources.add("previous");
        }
        if (sources.size() > 1) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    sources.get(1),
                    "",
                    "the variation comes from one source; the design names " + String.join(" and ", sources)
                            + ": keep one of them");
        }
    }

    /** A whole number in a range. */
    static OptionalInt whole(Section s, String key, Range range) {
        OptionalDouble value = s.number(key, range);
        if (value.isPresent() && value.getAsDouble() != Math.rint(value.getAsDouble())) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    key,
                    Section.show(value.getAsDouble()),
                    s.path() + "." + key + " is a whole number");
            return OptionalInt.empty();
        }
        return value.isPresent() ? OptionalInt.of((int) value.getAsDouble()) : OptionalInt.empty();
    }
}
