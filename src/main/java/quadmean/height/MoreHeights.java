package quadmean.height;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.Tree;
import quadmean.stats.LeastSquaresFit;
import quadmean.units.Unit;

/**
 * Which trees to measure next, and what that buys. What counts is the sum of height above breast height over trees, each
 * times a weight such as the basal area that it stands for: volume follows it. The sum is off by the curve's error, which
 * all filled trees share, and by each filled tree's own scatter. Each step takes the tree whose height lowers the variance
 * of the sum most, by the linearised curve (c-optimal design, taken greedily; Wynn 1970, from memory); every fourth step
 * takes one from the quarter of the dbh range with the fewest heights instead, for lack of fit shows only where there are
 * heights (common practice, no source).
 *
 * @param species species code
 * @param now the error before any step
 * @param steps trees to measure in turn
 */
public record MoreHeights(String species, FillingError now, List<Step> steps) {
    private static final int SPREAD_EVERY = 4;
    private static final int CLASSES = 4;

    public MoreHeights {
        steps = List.copyOf(steps);
    }

    /**
     * Error of the sum in percent of it: standard errors.
     *
     * @param curvePercent from the curve
     * @param treesPercent from the filled trees' own scatter
     */
    public record FillingError(double curvePercent, double treesPercent) {
        /** Both together. */
        public double percent() {
            return Math.hypot(curvePercent, treesPercent);
        }
    }

    /**
     * A tree to measure.
     *
     * @param tree the tree
     * @param after the error expected once it and those before it are measured
     */
    public record Step(Tree tree, FillingError after) {}

    /**
     * The next trees for a species with a curve of its own.
     *
     * @param curve its curve
     * @param trees all its trees; those without a field height can be measured
     * @param weight weight of each tree, not below zero
     * @param most how many steps at most
     */
    public static MoreHeights of(HeightCurve curve, List<Tree> trees, ToDoubleFunction<Tree> weight, int most) {
        return take(curve, new Search(curve, trees, weight, t -> t.height() == null, 1), most);
    }

    /**
     * The trees to measure if none had been, for the plan of a stand like this one: the curve is known no better than from a
     * single tree of its fit, all other trees are open. What the first few steps buy is therefore rough.
     *
     * @param curve a curve of the species from heights of this stand
     * @param trees all its trees, measured or not
     * @param weight weight of each tree, not below zero
     * @param most how many steps at most
     */
    public static MoreHeights afresh(HeightCurve curve, List<Tree> trees, ToDoubleFunction<Tree> weight, int most) {
        return take(curve, new Search(curve, trees, weight, t -> true, curve.heights()), most);
    }

    private static MoreHeights take(HeightCurve curve, Search search, int most) {
        FillingError now = search.error();
        List<Step> steps = new ArrayList<>();
        while (steps.size() < most && !search.open.isEmpty()) {
            Tree next = steps.size() % SPREAD_EVERY == SPREAD_EVERY - 1 ? search.mostWanted() : search.mostUseful();
            search.measure(next);
            steps.add(new Step(next, search.error()));
        }
        return new MoreHeights(curve.species(), now, steps);
    }

    /** The state after some steps. */
    private static final class Search {
        private final HeightCurve curve;
        private final CurveModel model;
        private final LeastSquaresFit fit;
        private final ToDoubleFunction<Tree> weight;
        private final List<Tree> open = new ArrayList<>();
        private final int[] measured = new int[CLASSES];
        private final double least;
        private final double width;
        private final double[][] covariance;
        private final double[] slope;
        private double own;
        private double sum;

        /**
         * The start.
         *
         * @param isOpen whether a tree can be measured; the others are
         * @param vagueness what the covariance of the curve's parameters is multiplied by
         */
        Search(
                HeightCurve curve,
                List<Tree> trees,
                ToDoubleFunction<Tree> weight,
                Predicate<Tree> isOpen,
                double vagueness) {
            this.curve = curve;
            this.model = CurveModel.of(curve.form());
            this.fit = Objects.requireNonNull(curve.tried().fit());
            this.weight = weight;
            this.least = trees.stream().mapToDouble(Tree::dbhCm).min().orElse(0);
            double largest = trees.stream().mapToDouble(Tree::dbhCm).max().orElse(0);
            this.width = Math.max(1e-9, (largest - least) / CLASSES);
            this.covariance = times(fit.covariance(), vagueness);
            this.slope = new double[fit.parameters().length];
            for (Tree t : trees) {
                sum += weight.applyAsDouble(t) * model.value(d(t), fit.parameters());
                if (isOpen.test(t)) {
                    open.add(t);
                    own += Math.pow(weight.applyAsDouble(t), 2) * scatter(t);
                    add(t, 1);
                } else {
                    measured[quarter(t)]++;
                }
            }
        }

        private static double[][] times(double[][] matrix, double factor) {
            return Arrays.stream(matrix)
                    .map(row -> Arrays.stream(row).map(v -> factor * v).toArray())
                    .toArray(double[][]::new);
        }

        private double d(Tree t) {
            return Unit.CENTIMETRE.convert(t.dbhCm(), curve.units().diameter());
        }

        private double scatter(Tree t) {
            return Math.pow(fit.sigma() * Math.pow(d(t), curve.tried().scatter().power()), 2);
        }

        private int quarter(Tree t) {
            return (int) Math.min(CLASSES - 1, (t.dbhCm() - least) / width);
        }

        private void add(Tree t, int sign) {
            double[] g = model.gradient(d(t), fit.parameters());
            for (int k = 0; k < g.length; k++) {
                slope[k] += sign * weight.applyAsDouble(t) * g[k];
            }
        }

        private double[] times(double[] v) {
            double[] product = new double[v.length];
            for (int a = 0; a < v.length; a++) {
                for (int b = 0; b < v.length; b++) {
                    product[a] += covariance[a][b] * v[b];
                }
            }
            return product;
        }

        private static double dot(double[] a, double[] b) {
            double sum = 0;
            for (int k = 0; k < a.length; k++) {
                sum += a[k] * b[k];
            }
            return sum;
        }

        FillingError error() {
            double curveVariance = Math.max(0, dot(slope, times(slope)));
            return new FillingError(100 * Math.sqrt(curveVariance) / sum, 100 * Math.sqrt(Math.max(0, own)) / sum);
        }

        /** Variance of the sum once this tree is measured. */
        private double varianceWith(Tree t) {
            double[] g = model.gradient(d(t), fit.parameters());
            double w = weight.applyAsDouble(t);
            double[] rest = slope.clone();
            for (int k = 0; k < rest.length; k++) {
                rest[k] -= w * g[k];
            }
            double[] vg = times(g);
            double shared = dot(rest, vg);
            double curveVariance = dot(rest, times(rest)) - shared * shared / (scatter(t) + dot(g, vg));
            return curveVariance + own - w * w * scatter(t);
        }

        Tree mostUseful() {
            return open.stream()
                    .min(Comparator.comparingDouble(this::varianceWith))
                    .orElseThrow();
        }

        /** The most useful tree of the quarter with the fewest heights among those that have a tree left. */
        Tree mostWanted() {
            int fewest = open.stream().mapToInt(t -> measured[quarter(t)]).min().orElseThrow();
            return open.stream()
                    .filter(t -> measured[quarter(t)] == fewest)
                    .min(Comparator.comparingDouble(this::varianceWith))
                    .orElseThrow();
        }

        /** The parameters' covariance with one more observation, by a rank-one update. */
        void measure(Tree t) {
            double[] g = model.gradient(d(t), fit.parameters());
            double[] vg = times(g);
            double below = scatter(t) + dot(g, vg);
            for (int a = 0; a < g.length; a++) {
                for (int b = 0; b < g.length; b++) {
                    covariance[a][b] -= vg[a] * vg[b] / below;
                }
            }
            own -= Math.pow(weight.applyAsDouble(t), 2) * scatter(t);
            add(t, -1);
            open.remove(t);
            measured[quarter(t)]++;
        }
    }
}
