package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Strata with a single unit have no spread of their own: each is joined with a neighbour, which should resemble it and is named
 * before the results are known. The estimate stays that of the strata; the spread is that of all units of a group, which counts
 * differences between its strata as if they were chance, so that the error comes out too large rather than too small (Cochran
 * 1977, section 5A.12, from memory; for two single units in strata of one size the same formula).
 *
 * @param strata all strata, joined or not
 * @param groups indices of the strata that share their spread; each stratum stands in one group
 */
public record CollapsedStrata(List<StratumSample> strata, List<List<Integer>> groups) {

    /**
     * Joins every one-unit stratum with its neighbour; chains of them make one group.
     *
     * @param strata strata with at least one unit each
     * @param neighbour for each stratum the index of the one to join; read only where a stratum has a single unit
     * @throws IllegalArgumentException where a one-unit stratum names itself or no stratum
     */
    public static CollapsedStrata into(List<StratumSample> strata, int[] neighbour) {
        Arguments.sameLength(neighbour.length, strata.size(), "neighbours and strata");
        int[] group = IntStream.range(0, neighbour.length).toArray();
        for (int h = 0; h < group.length; h++) {
            if (strata.get(h).values().length > 1) {
                continue;
            }
            int other = neighbour[h];
            if (other < 0 || other >= group.length || other == h) {
                throw new IllegalArgumentException(
                        "stratum " + h + " has one unit and needs a neighbour, got " + other);
            }
            int from = group[h];
            int to = group[other];
            Arrays.setAll(group, i -> group[i] == from ? to : group[i]);
        }
        List<List<Integer>> groups = new ArrayList<>();
        for (int g = 0; g < group.length; g++) {
            int own = g;
            List<Integer> members = IntStream.range(0, group.length)
                    .filter(i -> group[i] == own)
                    .boxed()
                    .toList();
            if (!members.isEmpty()) {
                groups.add(members);
            }
        }
        return new CollapsedStrata(strata, groups);
    }

    /** Whether any strata were joined. */
    public boolean isJoined() {
        return groups.size() < strata.size();
    }

    /** One stratum for each group: for bootstraps and ratios, which need units to draw from. Sizes and weights add up. */
    public List<StratumSample> merged() {
        return groups.stream()
                .map(g -> new StratumSample(
                        g.stream().mapToDouble(h -> strata.get(h).weight()).sum(),
                        g.stream()
                                .mapToDouble(h -> strata.get(h).populationUnits())
                                .sum(),
                        g.stream()
                                .flatMapToDouble(
                                        h -> Arrays.stream(strata.get(h).values()))
                                .toArray()))
                .toList();
    }

    /**
     * The stratified mean, Σ W·mean over the strata as they are, with variance Σ W²·s²/n·(1-f), s² that of the stratum's group;
     * degrees of freedom are units minus groups, or Satterthwaite's over the groups.
     */
    public MeanEstimate estimate(DegreesOfFreedom rule) {
        return estimate(rule, Working.silent());
    }

    /** The same, step by step. */
    public MeanEstimate estimate(DegreesOfFreedom rule, Working working) {
        List<StratumSample> joined = merged();
        List<MeanEstimate> parts = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            Moments spread = Moments.of(joined.get(g).values());
            double mean = 0;
            double variance = 0;
            for (int h : groups.get(g)) {
                StratumSample s = strata.get(h);
                mean += s.weight() * Moments.of(s.values()).mean();
                variance += s.weight() * s.weight() * spread.variance() / s.values().length * s.unseen();
            }
            double weight = joined.get(g).weight();
            show(g, spread, mean / weight, variance / weight / weight, working);
            parts.add(new MeanEstimate(spread.n(), 0, mean / weight, Double.NaN, spread.sd())
                    .withVariance(variance / weight / weight, spread.n() - 1));
        }
        return WeightedSum.of(joined.stream().mapToDouble(StratumSample::weight).toArray(), parts, rule, working);
    }

    private void show(int g, Moments spread, double mean, double variance, Working working) {
        String names = groups.get(g).stream().map(h -> Integer.toString(h + 1)).collect(Collectors.joining(", "));
        working.heading("Part " + (g + 1) + ": strata " + names
                + " in the order of the design; strata that share their variation make one part");
        StringJoiner means = new StringJoiner(" + ");
        StringJoiner variances = new StringJoiner(" + ");
        StringJoiner weights = new StringJoiner(" + ");
        working.given("s²", "variance between all their plots", spread.variance(), Working.Scale.SQUARE);
        for (int h : groups.get(g)) {
            String i = Integer.toString(h + 1);
            StratumSample s = strata.get(h);
            working.number("w" + i, "weight of stratum " + i, s.weight());
            working.mean(
                    "y" + i,
                    "its mean",
                    "n" + i,
                    s.values(),
                    Moments.of(s.values()).mean(),
                    Working.Scale.VALUE);
            means.add("{w%} × {y%}".replace("%", i));
            variances.add("{w%}² × {s²} / {n%}".replace("%", i) + working.unseen(s, "n" + i));
            weights.add("{w%}".replace("%", i));
        }
        working.step("mean", "mean", "(" + means + ") / (" + weights + ")", mean, Working.Scale.VALUE);
        if (Double.isFinite(variance)) {
            String formula = "(" + variances + ") / (" + weights + ")²";
            working.step("v", "its variance", formula, variance, Working.Scale.SQUARE);
        }
    }
}
