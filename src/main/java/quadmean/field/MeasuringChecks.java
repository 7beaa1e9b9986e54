package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import quadmean.design.Design;
import quadmean.model.Measuring;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Stratum;
import quadmean.model.TreeDetail;

/** What must hold over all plots where not every tree is measured. */
final class MeasuringChecks {
    private static final double SAME_SUM = 0.001;

    private final Design design;

    MeasuringChecks(Design design) {
        this.design = design;
    }

    List<Problem> check(List<Plot> plots) {
        Measuring measuring = design.plot().measuring();
        List<Problem> problems = new ArrayList<>();
        if (measuring instanceof Measuring.SomePoints some) {
            design.stratumList().stream()
                    .filter(s -> plots.stream().noneMatch(p -> isMeasured(p, s, some)))
                    .forEach(s -> problems.add(problem(
                            "measured",
                            s.code(),
                            Rule.STRATUM_WITHOUT_PLOTS,
                            "no point of stratum " + s.code() + " is measured, so that its counts have no ratio")));
        }
        if (measuring instanceof Measuring.SomePoints some && some.points().isEmpty()) {
            plots.stream()
                    .filter(p -> !p.trees().isEmpty() && !p.counted().isEmpty())
                    .forEach(p -> problems.add(problem(
                            "measured",
                            p.id(),
                            Rule.DBH_MISSING,
                            "point " + p.id()
                                    + " has trees with a dbh and trees without; measure all, or list the measured"
                                    + " points under measured_points")));
        }
        if (measuring instanceof Measuring.ThreeP threeP
                && threeP.sumOfPredictions().isPresent()) {
            double stated = threeP.sumOfPredictions().getAsDouble();
            double sum = plots.stream()
                    .flatMap(MeasuringChecks::trees)
                    .mapToDouble(d -> d.count() * d.prediction())
                    .sum();
            if (Math.abs(sum - stated) > SAME_SUM * stated) {
                String detail = String.format(
                        Locale.ROOT,
                        "the predictions of the tally add up to %.6g; check for lost or doubled rows",
                        sum);
                problems.add(problem("sum_of_predictions", String.valueOf(stated), Rule.DESIGN_VALUE, detail));
            }
        }
        return problems;
    }

    private static boolean isMeasured(Plot plot, Stratum stratum, Measuring.SomePoints some) {
        boolean measured = some.points().isEmpty()
                ? !plot.trees().isEmpty() && plot.counted().isEmpty()
                : some.points().contains(plot.id());
        return measured && plot.stratum().equals(stratum.code());
    }

    private static Stream<TreeDetail> trees(Plot plot) {
        return Stream.concat(
                plot.trees().stream().map(t -> t.detail()),
                plot.counted().stream().map(c -> c.detail()));
    }

    private Problem problem(String key, String value, Rule rule, String detail) {
        return new Problem(design.file().getFileName().toString(), 0, key, value, rule, Policy.REFUSE, detail);
    }
}
