package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import quadmean.design.Design;
import quadmean.height.HeightScreen;
import quadmean.height.HeightScreen.Outlier;
import quadmean.height.HeightSettings;
import quadmean.model.FieldHeight;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.units.Unit;

/** The check that needs a curve: heights far off it join the problems, and stay out of the curve. */
final class HeightCheck {
    private HeightCheck() {}

    /** The tally with heights off the curve treated by policy: refused, their rows dropped, or the heights set aside. */
    static Tally apply(Design design, HeightSettings settings, Tally tally) {
        List<Tree> trees =
                tally.plots().stream().flatMap(p -> p.trees().stream()).toList();
        Map<Tree, Outlier> outliers = HeightScreen.find(trees, settings).stream()
                .collect(Collectors.toMap(Outlier::tree, Function.identity()));
        Policy policy = design.policy(Rule.HEIGHT_OFF_CURVE);
        List<Problem> problems = new ArrayList<>(tally.problems());
        trees.stream().filter(outliers::containsKey).forEach(t -> problems.add(problem(design, policy, t, outliers)));
        List<Plot> plots = tally.plots().stream()
                .map(plot -> new Plot(
                        plot.id(),
                        plot.stratum(),
                        plot.trees().stream()
                                .filter(t -> policy != Policy.DROP || !outliers.containsKey(t))
                                .map(t -> outliers.containsKey(t) ? t.withoutHeight() : t)
                                .toList()))
                .toList();
        long out = policy == Policy.KEEP ? 0 : outliers.size();
        return Tally.of(plots, tally.rows().used() - out, tally.rows().dropped() + out, problems);
    }

    private static Problem problem(Design design, Policy policy, Tree tree, Map<Tree, Outlier> outliers) {
        Outlier outlier = java.util.Objects.requireNonNull(outliers.get(tree));
        FieldHeight height = java.util.Objects.requireNonNull(tree.height());
        Unit unit = design.units().length();
        String then = policy == Policy.KEEP ? "; the height is set aside and filled from the curve" : "";
        String detail = String.format(
                Locale.ROOT,
                "tree %s: height %.1f %s at dbh %.1f %s; the curve gives %.1f %s, %.1f robust standard deviations away%s",
                tree.label(),
                Unit.METRE.convert(height.metres(), unit),
                unit.symbol(),
                Unit.CENTIMETRE.convert(tree.dbhCm(), design.units().diameter()),
                design.units().diameter().symbol(),
                Unit.METRE.convert(outlier.expectedM(), unit),
                unit.symbol(),
                outlier.deviations(),
                then);
        return new Problem(
                tree.file(), tree.row(), height.column(), height.text(), Rule.HEIGHT_OFF_CURVE, policy, detail);
    }
}
