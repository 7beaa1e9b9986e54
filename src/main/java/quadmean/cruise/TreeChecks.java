package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import quadmean.cruise.Finding.Subject;
import quadmean.design.Design;
import quadmean.height.HeightSettings;
import quadmean.model.FieldHeight;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;
import quadmean.units.Unit;

/** The checks that need all trees together: what they find joins the problems of the tally. */
final class TreeChecks {
    private final Design design;
    private final Map<Tree, Finding> heights;
    private final Map<Tree, Finding> diameters;

    private TreeChecks(Design design, Map<Tree, Finding> heights, Map<Tree, Finding> diameters) {
        this.design = design;
        this.heights = heights;
        this.diameters = diameters;
    }

    /** The tally with unlikely trees treated by policy: refused, their rows dropped, or used and listed. */
    static Tally apply(Design design, HeightSettings settings, Tally tally) {
        List<Tree> trees =
                tally.plots().stream().flatMap(p -> p.trees().stream()).toList();
        TreeChecks checks = new TreeChecks(
                design, HeightFindings.find(design, settings, wholeTrees(tally)), DbhScreen.find(design, trees));
        List<Problem> problems = new ArrayList<>(tally.problems());
        trees.forEach(t -> checks.findings(t).forEach(f -> problems.add(checks.problem(t, f))));
        long out = trees.stream().filter(checks::isOut).count();
        List<Plot> plots = tally.plots().stream()
                .map(plot -> new Plot(
                        plot.id(),
                        plot.stratum(),
                        plot.trees().stream()
                                .filter(t -> checks.policies(t).noneMatch(p -> p == Policy.DROP))
                                .map(t -> checks.heights.containsKey(t) ? t.withoutHeight() : t)
                                .toList(),
                        plot.counted()))
                .toList();
        return Tally.of(plots, tally.rows().used() - out, tally.rows().dropped() + out, problems)
                .withListed(tally.listed());
    }

    /** The trees as the height curve sees them: the height of a broken tree says nothing about whole ones. */
    static List<Tree> wholeTrees(Tally tally) {
        return tally.plots().stream()
                .flatMap(p -> p.trees().stream())
                .map(t -> t.detail().top() == Top.BROKEN ? t.withoutHeight() : t)
                .toList();
    }

    private Stream<Finding> findings(Tree tree) {
        return Stream.of(heights.get(tree), diameters.get(tree)).filter(Objects::nonNull);
    }

    private Stream<Policy> policies(Tree tree) {
        return findings(tree).map(f -> design.policy(f.rule()));
    }

    private boolean isOut(Tree tree) {
        return policies(tree).anyMatch(p -> p != Policy.KEEP);
    }

    private Problem problem(Tree tree, Finding finding) {
        Policy policy = design.policy(finding.rule());
        FieldHeight height = tree.height();
        boolean ofHeight = finding.subject() == Subject.HEIGHT && height != null;
        String then = policy == Policy.KEEP && ofHeight ? "; the height is set aside and filled from the curve" : "";
        String column = ofHeight ? Objects.requireNonNull(height).column() : "dbh";
        Unit unit = design.units().diameter();
        String value = ofHeight
                ? Objects.requireNonNull(height).text()
                : Unit.CENTIMETRE.convert(tree.dbhCm(), unit) + " " + unit.symbol();
        return new Problem(tree.file(), tree.row(), column, value, finding.rule(), policy, finding.detail() + then);
    }
}
