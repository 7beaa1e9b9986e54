package quadmean.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import quadmean.design.Design;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.ListedPlot;
import quadmean.model.OnePlotRule;
import quadmean.model.Plot;
import quadmean.model.PlotFacts;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Stratum;

/** Whether the plots that were tallied and what the list says of them make the estimate that the design asks for. */
final class PlotFactChecks {
    /** A line takes two plots, and its error a third. */
    private static final int LEAST_FOR_A_LINE = 3;

    private final Design design;
    private final EstimatorRules rules;
    private final Estimator estimator;
    private final Map<String, PlotFacts> facts = new LinkedHashMap<>();
    private final List<ListedPlot> listed;
    private final Consumer<Problem> sink;

    private PlotFactChecks(Design design, List<ListedPlot> listed, Consumer<Problem> sink) {
        this.design = design;
        this.rules = design.estimation().estimation();
        this.estimator = rules.estimator();
        this.listed = listed;
        this.sink = sink;
        listed.forEach(p -> facts.put(p.id(), p.facts()));
    }

    static void check(Design design, List<Plot> plots, List<ListedPlot> listed, Consumer<Problem> sink) {
        PlotFactChecks checks = new PlotFactChecks(design, listed, sink);
        List<Plot> known = checks.known(plots);
        for (Stratum stratum : design.stratumList()) {
            checks.stratum(
                    stratum,
                    known.stream()
                            .filter(p -> p.stratum().equals(stratum.code()))
                            .toList());
        }
    }

    /** Plots of which something is known; one that the list does not have is of no use where the estimator needs it. */
    private List<Plot> known(List<Plot> plots) {
        boolean needsList = estimator != Estimator.MEAN
                || (rules.variance() != null && rules.variance().isOfGrid());
        List<Plot> known = new ArrayList<>();
        for (Plot plot : plots) {
            PlotFacts fact = facts.get(plot.id());
            if (needsList && fact == null) {
                unusable(
                        "plot",
                        plot.id(),
                        "plot " + plot.id() + " is not in the list, which says what the estimator needs");
            } else if (fact != null && fact.phase() == PlotFacts.Phase.FIRST_ONLY) {
                unusable("phase", plot.id(), "plot " + plot.id() + " was tallied, but the list gives it phase 1");
            } else {
                known.add(plot);
            }
        }
        return known;
    }

    private void stratum(Stratum stratum, List<Plot> plots) {
        if (plots.isEmpty()) {
            return;
        }
        Map<String, Long> clusters = plots.stream()
                .collect(Collectors.groupingBy(p -> fact(p).cluster(), TreeMap::new, Collectors.counting()));
        int units = estimator.isClustered() ? clusters.size() : plots.size();
        if (units == 1 && rules.onePlot() == OnePlotRule.REFUSE) {
            add(
                    Rule.STRATUM_ONE_PLOT,
                    "one_plot",
                    stratum.code(),
                    "stratum " + stratum.code() + " has a single " + (estimator.isClustered() ? "cluster" : "plot"));
        }
        if (estimator.needsAuxiliary()) {
            auxiliary(stratum, plots);
        }
        if (estimator.isClustered()) {
            clusters(stratum, plots, clusters);
        }
        if (estimator.needsGroup()) {
            groups(stratum, plots);
        }
    }

    private void auxiliary(Stratum stratum, List<Plot> plots) {
        double[] x = plots.stream().mapToDouble(p -> fact(p).auxiliary()).toArray();
        boolean isFlat = java.util.Arrays.stream(x).distinct().count() < 2;
        if (estimator.isLine() && (plots.size() < LEAST_FOR_A_LINE || isFlat)) {
            unusable(
                    "auxiliary",
                    stratum.code(),
                    "a line takes three plots with different values of auxiliary; stratum " + stratum.code() + " has "
                            + plots.size() + (isFlat ? ", all alike" : ""));
        } else if (!estimator.isLine() && java.util.Arrays.stream(x).sum() == 0) {
            unusable(
                    "auxiliary",
                    stratum.code(),
                    "a ratio takes a plot with an auxiliary above 0; stratum " + stratum.code() + " has none");
        }
    }

    private void clusters(Stratum stratum, List<Plot> plots, Map<String, Long> clusters) {
        double known = rules.clusters().getOrDefault(stratum.code(), Double.POSITIVE_INFINITY);
        if (clusters.size() > known) {
            unusable(
                    "clusters_in_stand",
                    stratum.code(),
                    "stratum " + stratum.code() + " has " + clusters.size()
                            + " clusters in the tally, more than clusters_in_stand");
        }
        Map<String, Double> sizes = new TreeMap<>();
        plots.forEach(p -> sizes.putIfAbsent(fact(p).cluster(), fact(p).clusterSize()));
        sizes.forEach((cluster, size) -> {
            long tallied = clusters.getOrDefault(cluster, 0L);
            boolean isWhole = estimator == Estimator.CLUSTER;
            boolean counts = isWhole || design.finitePopulation() == FinitePopulation.CORRECT;
            if (counts && (isWhole ? tallied != size : tallied > size) && !Double.isNaN(size)) {
                unusable(
                        "cluster_size",
                        cluster,
                        "cluster " + cluster + " has " + tallied
                                + " plots in the tally and another cluster_size; "
                                + (isWhole
                                        ? "a cluster is read whole, else write estimator = \"two_stage\""
                                        : "mend one of them"));
            }
        });
    }

    private void groups(Stratum stratum, List<Plot> plots) {
        Set<String> tallied = plots.stream().map(p -> fact(p).group()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> wanted = estimator == Estimator.POST_STRATIFIED
                ? rules.groupAreas().keySet()
                : listed.stream()
                        .filter(p -> p.stratum().equals(stratum.code()))
                        .map(p -> p.facts().group())
                        .collect(Collectors.toCollection(TreeSet::new));
        wanted.stream()
                .filter(g -> !tallied.contains(g))
                .forEach(g ->
                        unusable("class", g, "no plot of class " + g + " was tallied; join the class with another"));
        tallied.stream()
                .filter(g -> !wanted.contains(g))
                .forEach(g -> unusable(
                        "class",
                        g,
                        "class " + g + " has no [[estimate.post_stratum]]; the design has "
                                + String.join(", ", wanted)));
    }

    private PlotFacts fact(Plot plot) {
        return facts.getOrDefault(plot.id(), PlotFacts.NONE);
    }

    private void unusable(String column, String value, String detail) {
        add(Rule.PLOT_FACT_UNUSABLE, column, value, detail);
    }

    private void add(Rule rule, String column, String value, String detail) {
        String file = design.file().getFileName().toString();
        sink.accept(new Problem(file, 0, column, value, rule, design.policy(rule), detail));
    }
}
