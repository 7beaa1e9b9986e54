package quadmean.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.SomePlots;
import quadmean.design.AuditSettings;
import quadmean.design.AuditSettings.Chosen;
import quadmean.design.Design;
import quadmean.estimate.Worksheet;
import quadmean.model.CountedTrees;
import quadmean.model.Plot;
import quadmean.model.Tally;
import quadmean.stats.Cluster;
import quadmean.stats.ClusterMean;
import quadmean.stats.ClusteredShare;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;

/** Holds a cruise against a checker's tally of some of its plots. */
public final class Audit {
    /** Crew of plots that the design gives to none. */
    static final String NO_CREW = "not stated";

    private final Design design;
    private final AuditSettings settings;
    private final CruiseResult cruise;
    private final Tally check;
    private final List<TreeMatch> matches = new ArrayList<>();
    private final Map<String, Plot> cruisedPlots;
    private final List<Plot> checkedPlots;

    private Audit(CruiseResult cruise, Tally check, AuditSettings settings) {
        this.design = cruise.design();
        this.settings = settings;
        this.cruise = cruise;
        this.check = check;
        this.cruisedPlots = cruise.tally().plots().stream().collect(Collectors.toMap(Plot::id, Function.identity()));
        this.checkedPlots = check.plots().stream()
                .filter(p -> cruisedPlots.containsKey(p.id()))
                .toList();
    }

    /**
     * Works the cruise through, reads the checker's tally and compares the two.
     *
     * @throws IOException if a tally file is missing or cannot be read
     * @throws IllegalArgumentException if the design has no {@code [audit]}
     */
    public static AuditRun run(Design design) throws IOException {
        AuditSettings settings =
                design.followUp().audit().orElseThrow(() -> new IllegalArgumentException("the design has no [audit]"));
        CruiseRun run = Cruise.run(design);
        Tally check = SomePlots.check(design, settings.tallies());
        CruiseResult result = run.result();
        Worksheet sheet = run.worksheet();
        if (result == null || sheet == null || check.isRefused()) {
            return new AuditRun(run.tally(), check, null);
        }
        return new AuditRun(run.tally(), check, new Audit(result, check, settings).compare(sheet));
    }

    private CheckCruise compare(Worksheet sheet) {
        TreeMatcher matcher = new TreeMatcher(settings.matchPercent());
        checkedPlots.forEach(p -> matches.addAll(matcher.match(crew(p.id()), cruisedPlot(p.id()), p)));
        PlotValues values = PlotValues.of(cruise, sheet, checkedPlots);
        List<PlotCheck> plots = checkedPlots.stream().map(p -> plot(p, values)).toList();
        int right = (int) plots.stream().filter(PlotCheck::isCountRight).count();
        List<CrewCheck> crews = CrewChecks.of(matches, settings.confidence());
        return new CheckCruise(
                cruise,
                settings,
                check,
                matches,
                plots,
                java.util.Arrays.stream(Reading.values()).map(this::reading).toList(),
                Judgement.ofTrees("species", settings.tolerances().species(), species(), settings.confidence()),
                Judgement.ofPlots(
                        "trees on the plot", settings.tolerances().count(), right, plots.size(), settings.confidence()),
                crews,
                values.compare(plots, settings.marginPercent()),
                new Findings(settings, design.units(), matches, plots, crews, left()).list(),
                notes());
    }

    private Plot cruisedPlot(String id) {
        return Objects.requireNonNull(cruisedPlots.get(id), id);
    }

    private String crew(String plot) {
        return design.followUp().crewOf(plot).orElse(NO_CREW);
    }

    /** Plots of the checker that the cruise does not have. */
    private List<String> left() {
        return check.plots().stream()
                .map(Plot::id)
                .filter(id -> !cruisedPlots.containsKey(id))
                .toList();
    }

    private PlotCheck plot(Plot checked, PlotValues values) {
        Plot cruised = cruisedPlot(checked.id());
        List<TreeMatch> own =
                matches.stream().filter(m -> m.plot().equals(checked.id())).toList();
        return new PlotCheck(
                checked.id(),
                cruised.stratum(),
                crew(checked.id()),
                (int) own.stream().filter(TreeMatch::isPair).count(),
                count(own, TreeMatch.Kind.MISSED),
                count(own, TreeMatch.Kind.EXTRA),
                counted(cruised) - counted(checked),
                values.cruised(checked.id()),
                values.checked(checked.id()));
    }

    private static int count(List<TreeMatch> matches, TreeMatch.Kind kind) {
        return (int) matches.stream().filter(m -> m.kind() == kind).count();
    }

    private static int counted(Plot plot) {
        return plot.counted().stream()
                .mapToInt((CountedTrees c) -> c.detail().times())
                .sum();
    }

    private Map<String, List<TreeMatch>> byPlot(Reading reading) {
        return matches.stream()
                .filter(reading::isIn)
                .collect(Collectors.groupingBy(TreeMatch::plot, java.util.LinkedHashMap::new, Collectors.toList()));
    }

    private ReadingCheck reading(Reading reading) {
        Map<String, List<TreeMatch>> byPlot = byPlot(reading);
        double[] all = byPlot.values().stream()
                .flatMap(List::stream)
                .mapToDouble(reading::difference)
                .toArray();
        double[] squares = java.util.Arrays.stream(all).map(d -> d * d).toArray();
        var limit = reading.limit(settings.tolerances());
        List<ClusteredShare.Count> counts = byPlot.values().stream()
                .map(own -> new ClusteredShare.Count(
                        (int) own.stream()
                                .filter(m ->
                                        limit.isEmpty() || limit.get().holds(reading.cruised(m), reading.checked(m)))
                                .count(),
                        own.size()))
                .toList();
        return new ReadingCheck(
                reading,
                bias(reading, byPlot.values()),
                Moments.of(all).sd(),
                Math.sqrt(Moments.of(squares).mean()),
                Judgement.ofTrees(reading.label(), limit, counts, settings.confidence()));
    }

    /** Mean difference per tree, with the error between plots. */
    static MeanEstimate bias(Reading reading, Iterable<List<TreeMatch>> plots) {
        List<Cluster> clusters = new ArrayList<>();
        plots.forEach(own -> clusters.add(
                Cluster.whole(own.stream().mapToDouble(reading::difference).toArray())));
        return clusters.isEmpty()
                ? new MeanEstimate(0, 0, Double.NaN, Double.NaN, Double.NaN)
                : ClusterMean.perElement(clusters, Double.POSITIVE_INFINITY);
    }

    private List<ClusteredShare.Count> species() {
        return matches.stream()
                .filter(TreeMatch::isPair)
                .collect(Collectors.groupingBy(TreeMatch::plot))
                .values()
                .stream()
                .map(own -> new ClusteredShare.Count(
                        (int) own.stream()
                                .filter(m -> m.crewTree()
                                        .species()
                                        .equals(m.checkTree().species()))
                                .count(),
                        own.size()))
                .toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Differences are crew less checker: above zero the crew reads high. The checker is taken as right, and has"
                        + " errors of reading too: a second look at a tree settles who was.");
        notes.add("Limits: " + settings.tolerances().source() + ".");
        notes.add(
                "Bounds are one-sided. The exact binomial bound takes trees as independent; the bound by plots allows for"
                        + " what trees of a plot and its crew have in common, and decides whether a result is shown.");
        if (settings.chosen() == Chosen.JUDGEMENT) {
            notes.add(
                    "The check plots were chosen by judgement: what was found holds for them, and tells nothing certain"
                            + " of the other plots.");
        }
        if (!left().isEmpty()) {
            notes.add("Plots of the check that the cruise does not have were left out: " + String.join(", ", left())
                    + ".");
        }
        if (matches.stream()
                .anyMatch(m -> m.kind() == TreeMatch.Kind.SPECIES_AND_SIZE || m.kind() == TreeMatch.Kind.SIZE)) {
            notes.add("Some trees were matched by size, up to " + settings.matchPercent()
                    + " % apart in dbh; look at these matches before trusting their differences.");
        }
        return notes;
    }

    /** The stand's estimate that plots are compared in. */
    static Optional<String> whyNoValues(CruiseResult cruise) {
        return cruise.design().plot().measuring() instanceof quadmean.model.Measuring.All
                ? Optional.empty()
                : Optional.of(
                        "trees are counted or predicted and not all measured, so that a plot has no value of its own");
    }
}
