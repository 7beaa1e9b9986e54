package quadmean.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.SomePlots;
import quadmean.design.Design;
import quadmean.design.RemeasurementSettings;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Worksheet;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;

/** Works out the growth of permanent plots between two dates. */
public final class GrowthMaker {
    private final RemeasurementSettings settings;
    private final CruiseResult before;
    private final CruiseResult after;
    private final Worksheet sheetBefore;
    private final Worksheet sheetAfter;
    private final List<String> both;
    private final GrowthMatcher matcher;

    private GrowthMaker(
            RemeasurementSettings settings,
            CruiseResult before,
            Worksheet sheetBefore,
            CruiseResult after,
            Worksheet sheetAfter) {
        this.settings = settings;
        this.before = before;
        this.after = after;
        this.sheetBefore = sheetBefore;
        this.sheetAfter = sheetAfter;
        this.matcher = new GrowthMatcher(settings);
        Set<String> earlier = before.tally().plots().stream().map(Plot::id).collect(Collectors.toSet());
        this.both = after.tally().plots().stream()
                .map(Plot::id)
                .filter(earlier::contains)
                .toList();
    }

    /**
     * Works both dates through and compares them.
     *
     * @throws IOException if a tally file is missing or cannot be read
     * @throws IllegalArgumentException if the design has no {@code [remeasurement]}
     */
    public static GrowthRun run(Design design) throws IOException {
        RemeasurementSettings settings = design.followUp()
                .remeasurement()
                .orElseThrow(() -> new IllegalArgumentException("the design has no [remeasurement]"));
        CruiseRun first = SomePlots.run(design, settings.tallies());
        CruiseRun second = SomePlots.run(design);
        List<Problem> problems = new ArrayList<>(first.tally().problems());
        problems.addAll(second.tally().problems());
        CruiseResult before = first.result();
        CruiseResult after = second.result();
        if (before == null || after == null) {
            return new GrowthRun(first.tally(), second.tally(), problems, null);
        }
        GrowthMaker maker = new GrowthMaker(
                settings,
                before,
                Objects.requireNonNull(first.worksheet()),
                after,
                Objects.requireNonNull(second.worksheet()));
        maker.match();
        problems.addAll(maker.matcher.problems());
        problems.addAll(maker.uncovered(design));
        boolean refused =
                !maker.matcher.problems().isEmpty() || !maker.uncovered(design).isEmpty();
        return new GrowthRun(first.tally(), second.tally(), problems, refused ? null : maker.growth());
    }

    /** Strata that nothing can be said of: each needs a plot that was measured at both dates. */
    private List<Problem> uncovered(Design design) {
        return design.stratumList().stream()
                .filter(s -> after.tally().plots().stream()
                        .noneMatch(p -> p.stratum().equals(s.code()) && both.contains(p.id())))
                .map(s -> new Problem(
                        String.valueOf(design.file().getFileName()),
                        0,
                        "stratum",
                        s.code(),
                        Rule.STRATUM_WITHOUT_PLOTS,
                        Policy.REFUSE,
                        "no plot of " + s.name() + " was measured at both dates"))
                .toList();
    }

    private void match() {
        Map<String, Plot> plots =
                before.tally().plots().stream().collect(Collectors.toMap(Plot::id, Function.identity()));
        Map<String, SampledPlot> sampled = byId(sheetBefore);
        Map<String, SampledPlot> later = byId(sheetAfter);
        after.tally().plots().stream()
                .filter(p -> both.contains(p.id()))
                .forEach(p -> matcher.plot(
                        Objects.requireNonNull(plots.get(p.id())),
                        Objects.requireNonNull(sampled.get(p.id())),
                        p,
                        Objects.requireNonNull(later.get(p.id()))));
    }

    private static Map<String, SampledPlot> byId(Worksheet sheet) {
        return sheet.plots().stream().collect(Collectors.toMap(SampledPlot::id, Function.identity()));
    }

    private Growth growth() {
        Set<Attribute> attributes = new LinkedHashSet<>(List.of(after.design().targetAttribute()));
        attributes.addAll(List.of(Attribute.BASAL_AREA, Attribute.TREES));
        List<AttributeGrowth> all = attributes.stream().map(this::attribute).toList();
        StandMean any = mean(after.design().targetAttribute());
        return new Growth(before, after, settings, both.size(), any.areaHa(), all, findings(), notes());
    }

    /** The sampling design over the plots of both dates. */
    private StandMean mean(Attribute attribute) {
        List<SampledPlot> plots =
                sheetAfter.plots().stream().filter(p -> both.contains(p.id())).toList();
        return StandMean.of(sheetAfter.strata(), plots, sheetAfter.settings(), attribute);
    }

    private AttributeGrowth attribute(Attribute attribute) {
        TreeFates fates = new TreeFates(after.design(), settings, mean(attribute), byId(sheetBefore), byId(sheetAfter));
        List<GrowthTree> trees = matcher.pairs().stream().map(fates::of).toList();
        Map<String, Map<Component, Double>> sums = PlotGrowth.byPlot(both, trees);
        StandMean mean = mean(attribute);
        Map<Component, MeanEstimate> components = new EnumMap<>(Component.class);
        for (Component c : Component.values()) {
            components.put(
                    c,
                    mean.estimateOf(
                            p -> Objects.requireNonNull(sums.get(p.id())).getOrDefault(c, 0.0)));
        }
        return new AttributeGrowth(attribute, components, trees);
    }

    private List<String> findings() {
        List<String> found = new ArrayList<>();
        for (Plot plot : after.tally().plots()) {
            before.tally().plots().stream()
                    .filter(p -> p.id().equals(plot.id()) && !p.stratum().equals(plot.stratum()))
                    .forEach(p -> found.add("plot " + p.id() + ": in stratum " + p.stratum()
                            + " at the earlier date, in " + plot.stratum() + " now, where it is counted"));
        }
        for (GrowthPair pair : matcher.pairs()) {
            Tree a = pair.before();
            Tree b = pair.after();
            if (a != null && b != null) {
                look(pair.label(), a, b, found);
            } else if (b != null
                    && !isPoint()
                    && settings.largestGrowthCm().isPresent()
                    && b.dbhCm() > TreeFates.limitCm(after.design(), settings)) {
                found.add(pair.label() + ": new with a dbh of " + dbh(b)
                        + ", too large to have grown in; it was missed at the earlier date, or its number is wrong");
            }
        }
        return found;
    }

    private void look(String label, Tree a, Tree b, List<String> found) {
        if (!a.species().equals(b.species())) {
            found.add(label + ": " + a.species() + " at the earlier date, " + b.species() + " now");
        }
        if (b.dbhCm() < a.dbhCm() && TreeFates.isAlive(b)) {
            found.add(label + ": its dbh shrank from " + dbh(a) + " to " + dbh(b));
        }
        if (settings.largestGrowthCm().isPresent()
                && b.dbhCm() - a.dbhCm() > settings.largestGrowthCm().getAsDouble()) {
            found.add(label + ": its dbh grew from " + dbh(a) + " to " + dbh(b) + ", more than largest_growth");
        }
        if (!TreeFates.isAlive(a) && TreeFates.isAlive(b)) {
            found.add(label + ": dead at the earlier date, living now");
        }
    }

    private String dbh(Tree tree) {
        Unit unit = after.design().units().diameter();
        return String.format(Locale.ROOT, "%.1f %s", Unit.CENTIMETRE.convert(tree.dbhCm(), unit), unit.symbol());
    }

    /** Why a date has no value of the target; empty if it has one. */
    private static Optional<String> unknown(String date, CruiseResult cruise) {
        return cruise.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, cruise.design().targetAttribute(), Basis.PER_AREA)
                .filter(r -> Double.isNaN(r.mean()))
                .map(r -> "The " + date + " date has no " + r.attribute().label() + ": " + r.reason() + ".");
    }

    private boolean isPoint() {
        return after.design().plot() instanceof PlotDesign.Point;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Plots are paired: the error of a change is that of the differences of plots, so that what the two dates have"
                        + " in common takes itself out.");
        notes.add("Each date has the heights of its own curves; a change of curves shows as growth.");
        List<String> single = java.util.stream.Stream.concat(
                        before.tally().plots().stream(), after.tally().plots().stream())
                .map(Plot::id)
                .filter(id -> !both.contains(id))
                .distinct()
                .toList();
        if (!single.isEmpty()) {
            notes.add("Plots measured at one date alone were left out: " + String.join(", ", single) + ".");
        }
        unknown("earlier", before).ifPresent(notes::add);
        unknown("later", after).ifPresent(notes::add);
        if (TreeFates.hasOngrowth(after.design())) {
            notes.add(
                    "On points and nested plots a grown tree stands for fewer trees than before, and trees come in that were"
                            + " large enough before (ongrowth); on average the two take each other off. Growth of survivors takes each"
                            + " tree of the earlier date with its weight of then (Beers and Miller 1964, from memory).");
        }
        return notes;
    }
}
