package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * From the weights of resampled units to those of the items that carry values, so that an estimate is Σ weight·value whatever its
 * design. Every estimator here is the same two moves: items take a multiple of their unit's weight, then the weights are scaled
 * within groups until Σ weight·x meets a target (ratios, clusters, classes), or bent along x until Σ weight·x meets it (a line).
 * These are the weights of Deville and Särndal (1992, from memory), made anew in each resample.
 */
public final class Reweighting {
    /** Sums of squares below this share of their terms are rounding. */
    private static final double ROUNDING = 1e-12;

    private final int[] unit;
    private final double[] factor;
    private final List<Step> steps;

    private Reweighting(int[] unit, double[] factor, List<Step> steps) {
        this.unit = unit;
        this.factor = factor;
        this.steps = List.copyOf(steps);
    }

    /** Changes the weights of items. */
    private interface Step {
        void apply(double[] units, double[] items);
    }

    /** What Σ weight·x over the items of a group has to be, given the weights of all units. */
    @FunctionalInterface
    public interface Target {
        /** The sum for a group. */
        double of(int group, double[] units);

        /** Known numbers, one for each group. */
        static Target known(double... sums) {
            return (group, units) -> sums[group];
        }

        /** Σ weight·x over the units of the group. */
        static Target ofUnits(int[] groups, double[] x) {
            return (group, units) -> {
                double sum = 0;
                for (int u = 0; u < x.length; u++) {
                    sum += groups[u] == group ? units[u] * x[u] : 0;
                }
                return sum;
            };
        }
    }

    /**
     * Items that take their units' weights.
     *
     * @param unit for each item the index of its unit
     * @param factor for each item by what its unit's weight is multiplied
     */
    public static Reweighting expanded(int[] unit, double[] factor) {
        Arguments.sameLength(factor.length, unit.length, "factors and items");
        return new Reweighting(unit, factor, List.of());
    }

    /** Each unit is one item. */
    public static Reweighting same(int units) {
        double[] ones = new double[units];
        Arrays.fill(ones, 1);
        return expanded(java.util.stream.IntStream.range(0, units).toArray(), ones);
    }

    /**
     * Then scaled within groups until Σ weight·x is the target. A group without any x has no value, unless its target is zero too.
     *
     * @param group for each item the index of its group
     * @param groups how many groups there are
     * @param x one number for each item
     */
    public Reweighting scaled(int[] group, int groups, double[] x, Target target) {
        return then((units, items) -> {
            double[] sums = new double[groups];
            for (int i = 0; i < items.length; i++) {
                sums[group[i]] += items[i] * x[i];
            }
            for (int g = 0; g < groups; g++) {
                double aim = target.of(g, units);
                sums[g] = aim == 0 ? 0 : sums[g] == 0 ? Double.NaN : aim / sums[g];
            }
            double lost = Moments.sum(sums);
            for (int i = 0; i < items.length; i++) {
                items[i] = Double.isNaN(lost) ? Double.NaN : items[i] * sums[group[i]];
            }
        });
    }

    /** Then scaled as one group. */
    public Reweighting scaled(double[] x, Target target) {
        return scaled(new int[x.length], 1, x, target);
    }

    /**
     * Then bent along x, so that Σ weight·y is the least-squares line of y on x read where x is the target. Weights before add up to
     * 1 first; NaN where all x are equal.
     *
     * @param x one number for each item
     * @param target the value of x at which the line is read
     */
    public Reweighting onLine(double[] x, Target target) {
        return then((units, items) -> {
            double sum = 0;
            double sumX = 0;
            for (int i = 0; i < items.length; i++) {
                sum += items[i];
                sumX += items[i] * x[i];
            }
            double mean = sumX / sum;
            double squares = 0;
            double raw = 0;
            for (int i = 0; i < items.length; i++) {
                squares += items[i] / sum * (x[i] - mean) * (x[i] - mean);
                raw += items[i] / sum * x[i] * x[i];
            }
            double slope = squares <= ROUNDING * raw ? Double.NaN : (target.of(0, units) - mean) / squares;
            for (int i = 0; i < items.length; i++) {
                items[i] = items[i] / sum * (1 + slope * (x[i] - mean));
            }
        });
    }

    private Reweighting then(Step step) {
        List<Step> more = new ArrayList<>(steps);
        more.add(step);
        return new Reweighting(unit, factor, more);
    }

    /** Number of items. */
    public int items() {
        return unit.length;
    }

    /** The unit that an item belongs to. */
    public int unit(int item) {
        return unit[item];
    }

    /** The weights of the items for those of the units. */
    public double[] apply(double[] units) {
        double[] items = new double[unit.length];
        for (int i = 0; i < items.length; i++) {
            items[i] = units[unit[i]] * factor[i];
        }
        steps.forEach(s -> s.apply(units, items));
        return items;
    }

    /**
     * Strata side by side: each sees the weights of its own units as if they were all there is, adding up to 1, and its share of the
     * population scales what comes out.
     *
     * @param strata one for each stratum, units and items stratum by stratum
     * @param design the strata as they are resampled
     */
    public static Reweighting joined(List<Reweighting> strata, List<ResampledStratum> design) {
        Arguments.sameLength(strata.size(), design.size(), "strata");
        int[] unit = new int[strata.stream().mapToInt(Reweighting::items).sum()];
        int first = 0;
        int item = 0;
        for (int h = 0; h < strata.size(); h++) {
            for (int own : strata.get(h).unit) {
                unit[item++] = first + own;
            }
            first += design.get(h).units();
        }
        return new Reweighting(unit, new double[unit.length], List.of((units, items) -> {
            int u = 0;
            int i = 0;
            for (int h = 0; h < strata.size(); h++) {
                double share = design.get(h).weight();
                double[] own = Arrays.copyOfRange(units, u, u + design.get(h).units());
                Arrays.setAll(own, k -> own[k] / share);
                for (double weight : strata.get(h).apply(own)) {
                    items[i++] = share * weight;
                }
                u += own.length;
            }
        }));
    }

    /** A statistic of items as one of units. */
    public UnitStatistic of(UnitStatistic ofItems) {
        return new UnitStatistic() {
            @Override
            public int outputs() {
                return ofItems.outputs();
            }

            @Override
            public Evaluator evaluator() {
                Evaluator inner = ofItems.evaluator();
                return (weights, out) -> inner.evaluate(apply(weights), out);
            }
        };
    }
}
