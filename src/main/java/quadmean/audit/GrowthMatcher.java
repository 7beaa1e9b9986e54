package quadmean.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.design.RemeasurementSettings;
import quadmean.design.RemeasurementSettings.Absent;
import quadmean.estimate.SampledPlot;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.model.TreeStatus;

/** Finds the trees of permanent plots again by their numbers. */
final class GrowthMatcher {
    private final RemeasurementSettings settings;
    private final List<GrowthPair> pairs = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    GrowthMatcher(RemeasurementSettings settings) {
        this.settings = settings;
    }

    /** Adds a plot of both dates, its trees beside its stems in the same order. */
    void plot(Plot before, SampledPlot sampledBefore, Plot after, SampledPlot sampledAfter) {
        Map<String, Integer> later = index(after);
        index(before);
        Set<Integer> found = new HashSet<>();
        for (int i = 0; i < before.trees().size(); i++) {
            Tree tree = before.trees().get(i);
            Integer at = later.get(tree.number());
            if (at == null) {
                absent(tree);
                pairs.add(
                        new GrowthPair(before.id(), tree, sampledBefore.stems().get(i), null, null));
            } else {
                found.add(at);
                pairs.add(new GrowthPair(
                        before.id(),
                        tree,
                        sampledBefore.stems().get(i),
                        after.trees().get(at),
                        sampledAfter.stems().get(at)));
            }
        }
        for (int j = 0; j < after.trees().size(); j++) {
            if (!found.contains(j)) {
                pairs.add(new GrowthPair(
                        before.id(),
                        null,
                        null,
                        after.trees().get(j),
                        sampledAfter.stems().get(j)));
            }
        }
    }

    private Map<String, Integer> index(Plot plot) {
        Map<String, Integer> byNumber = new HashMap<>();
        for (int i = 0; i < plot.trees().size(); i++) {
            Tree tree = plot.trees().get(i);
            if (tree.number().isEmpty()) {
                problem(Rule.TREE_UNNUMBERED, tree, "a tree of plot " + plot.id() + " has no number");
            } else if (tree.detail().count() > 1) {
                problem(Rule.TREE_UNNUMBERED, tree, tree.label() + " stands for several trees");
            } else if (byNumber.putIfAbsent(tree.number(), i) != null) {
                problem(Rule.TREE_UNNUMBERED, tree, "number " + tree.number() + " stands twice on plot " + plot.id());
            }
        }
        return byNumber;
    }

    /** A tree that was dead already need not be found again. */
    private void absent(Tree tree) {
        boolean lived =
                tree.detail().status() == TreeStatus.LIVE || tree.detail().status() == TreeStatus.CULL;
        if (settings.absent() == Absent.REFUSE && lived && !tree.number().isEmpty()) {
            problem(Rule.TREE_ABSENT, tree, tree.label() + " is not in the later tally");
        }
    }

    private void problem(Rule rule, Tree tree, String detail) {
        problems.add(new Problem(tree.file(), tree.row(), "tree", tree.number(), rule, Policy.REFUSE, detail));
    }

    List<GrowthPair> pairs() {
        return pairs;
    }

    List<Problem> problems() {
        return problems;
    }
}
