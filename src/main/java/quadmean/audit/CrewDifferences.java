package quadmean.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quadmean.audit.PlotState.State;
import quadmean.design.ProgressSettings.Assigned;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.StudentT;
import quadmean.stats.WeightedSum;

/** How the plots of each crew stand to those of the others. */
final class CrewDifferences {
    private CrewDifferences() {}

    /** Every crew of which there are plots; none unless there are two. */
    static List<CrewDifference> of(List<PlotState> plots, Assigned assigned) {
        List<PlotState> run = plots.stream()
                .filter(p -> p.state() == State.DONE && !p.crew().isEmpty() && Double.isFinite(p.value()))
                .toList();
        List<String> crews =
                run.stream().map(PlotState::crew).distinct().sorted().toList();
        if (crews.size() < 2) {
            return List.of();
        }
        Map<String, Double> means = run.stream()
                .collect(Collectors.groupingBy(PlotState::stratum, Collectors.averagingDouble(PlotState::value)));
        double overall =
                Moments.of(run.stream().mapToDouble(PlotState::value).toArray()).mean();
        List<CrewDifference> found = new ArrayList<>();
        for (String crew : crews) {
            double[] own = centred(run, means, crew, true);
            double[] others = centred(run, means, crew, false);
            double mean = Moments.of(own).mean();
            found.add(new CrewDifference(
                    crew,
                    own.length,
                    mean,
                    100 * mean / overall,
                    assigned == Assigned.RANDOM ? welch(own, others) : Double.NaN));
        }
        return found;
    }

    private static double[] centred(List<PlotState> run, Map<String, Double> means, String crew, boolean isOwn) {
        return run.stream()
                .filter(p -> p.crew().equals(crew) == isOwn)
                .mapToDouble(p -> p.value() - means.getOrDefault(p.stratum(), Double.NaN))
                .toArray();
    }

    /** Two-sided p of Welch's t test, degrees of freedom after Satterthwaite; NaN where a side has one plot or no spread. */
    static double welch(double[] a, double[] b) {
        if (a.length < 2 || b.length < 2) {
            return Double.NaN;
        }
        MeanEstimate difference =
                WeightedSum.of(new double[] {1, -1}, List.of(mean(a), mean(b)), DegreesOfFreedom.SATTERTHWAITE);
        return difference.se() > 0
                ? 2 * StudentT.upperTail(Math.abs(difference.mean() / difference.se()), difference.df())
                : Double.NaN;
    }

    private static MeanEstimate mean(double[] values) {
        Moments m = Moments.of(values);
        return new MeanEstimate(m.n(), m.n() - 1, m.mean(), m.sd() / Math.sqrt(m.n()), m.sd());
    }
}
