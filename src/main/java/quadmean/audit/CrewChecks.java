package quadmean.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;

/** How each crew reads beside the checker. */
final class CrewChecks {
    private static final List<Reading> READINGS = List.of(Reading.DBH, Reading.HEIGHT);

    private CrewChecks() {}

    /**
     * Every crew, each reading. Limits of all of them together hold at the confidence (Bonferroni: each at 1 less the m-th part of
     * the rest).
     */
    static List<CrewCheck> of(List<TreeMatch> matches, double confidence) {
        Map<String, List<TreeMatch>> byCrew = matches.stream()
                .filter(TreeMatch::isPair)
                .collect(Collectors.groupingBy(TreeMatch::crew, java.util.TreeMap::new, Collectors.toList()));
        double each = 1 - (1 - confidence) / Math.max(1, byCrew.size() * READINGS.size());
        List<CrewCheck> checks = new ArrayList<>();
        byCrew.forEach((crew, own) -> READINGS.forEach(reading -> {
            Map<String, List<TreeMatch>> plots = own.stream()
                    .filter(reading::isIn)
                    .collect(Collectors.groupingBy(TreeMatch::plot, LinkedHashMap::new, Collectors.toList()));
            if (!plots.isEmpty()) {
                checks.add(check(crew, reading, plots.values(), each));
            }
        }));
        return checks;
    }

    private static CrewCheck check(String crew, Reading reading, Collection<List<TreeMatch>> plots, double confidence) {
        int trees = plots.stream().mapToInt(List::size).sum();
        MeanEstimate bias = Audit.bias(reading, plots);
        Interval limits = bias.hasError() ? bias.interval(confidence) : new Interval(Double.NaN, Double.NaN);
        return new CrewCheck(crew, reading, trees, plots.size(), bias, limits);
    }
}
