package quadmean.stats;

import java.util.Arrays;

/**
 * A linear mixed model with a random intercept for each group, y = x·β + u + e, fitted by restricted maximum likelihood
 * (Patterson &amp; Thompson 1971; Harville 1977, both from memory). The ratio λ of the variances is where the derivative of
 * the restricted likelihood is zero; β follows by generalised least squares, on rows from which the share
 * 1 - (1 + nλ)^-½ of their group's mean has been taken.
 *
 * @param fixed estimates of β
 * @param covariance their covariance matrix
 * @param groupVariance variance of u; 0 where the groups differ no more than chance
 * @param residualVariance variance of e
 * @param logLikelihood the restricted log-likelihood, without the constant ½·ln|XᵀX|
 * @param effects predicted u of each group (best linear unbiased predictions)
 * @param deleted for each observation its distance from what the others predict for it, their group effect and β
 *     estimated without it at the same λ: exact, by the identity of Dubrule 1983 (from memory)
 * @param deletedVariance variance of each of these distances
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record RandomIntercept(
        double[] fixed,
        double[][] covariance,
        double groupVariance,
        double residualVariance,
        double logLikelihood,
        double[] effects,
        double[] deleted,
        double[] deletedVariance) {
    private static final int HALVINGS = 200;
    private static final double MOST_RATIO = 1e6;

    /**
     * Fits the model.
     *
     * @param x one row of predictors for each observation, with a 1 for the intercept; columns linearly independent
     * @param y one response for each
     * @param group group of each observation, counted from 0 without gaps
     */
    public static RandomIntercept fit(double[][] x, double[] y, int[] group) {
        Arguments.atLeast(x.length, x[0].length + 1, "observations (parameters + 1)");
        Rows rows = new Rows(x, y, group);
        return new At(rows, ratio(rows)).result();
    }

    /** What one more group would be predicted to differ by, from residuals about the fixed part. */
    public double effect(double[] residuals) {
        double lambda = groupVariance / residualVariance;
        return lambda * Arrays.stream(residuals).sum() / (1 + residuals.length * lambda);
    }

    /** Variance of a group effect that is left when n of its observations are known. */
    public double effectVariance(int n) {
        return groupVariance / (1 + n * groupVariance / residualVariance);
    }

    /** The λ where the likelihood stops rising; 0 if it never rises. */
    private static double ratio(Rows rows) {
        if (!(new At(rows, 0).score() > 0)) {
            return 0;
        }
        double low = 0;
        double high = 1;
        while (high < MOST_RATIO && new At(rows, high).score() > 0) {
            low = high;
            high *= 4;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (new At(rows, middle).score() > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The observations with the sums of their groups. */
    private record Rows(double[][] x, double[] y, int[] group, int[] size, double[][] sumX) {
        Rows(double[][] x, double[] y, int[] group) {
            this(x, y, group, sizes(group), new double[sizes(group).length][x[0].length]);
            for (int i = 0; i < y.length; i++) {
                for (int k = 0; k < x[i].length; k++) {
                    sumX[group[i]][k] += x[i][k];
                }
            }
        }

        private static int[] sizes(int[] group) {
            int[] sizes = new int[Arrays.stream(group).max().orElse(-1) + 1];
            Arrays.stream(group).forEach(g -> sizes[g]++);
            return sizes;
        }

        double[] sums(double[] values) {
            double[] sums = new double[size.length];
            for (int i = 0; i < values.length; i++) {
                sums[group[i]] += values[i];
            }
            return sums;
        }
    }

    /** The model at a given λ. */
    private static final class At {
        private final Rows rows;
        private final double lambda;
        private final Householder turned;
        private final double[] beta;
        private final double[] residuals;
        private final double[] residualSums;
        private final double variance;

        At(Rows rows, double lambda) {
            this.rows = rows;
            this.lambda = lambda;
            this.turned = turned();
            this.beta = turned.solve();
            this.residuals = residuals();
            this.residualSums = rows.sums(residuals);
            this.variance = turned.restSquared() / (rows.y.length - beta.length);
        }

        private Householder turned() {
            double[] sumY = rows.sums(rows.y);
            double[][] columns = new double[rows.x[0].length][rows.y.length];
            double[] side = new double[rows.y.length];
            for (int i = 0; i < side.length; i++) {
                int g = rows.group[i];
                double share = (1 - 1 / Math.sqrt(1 + rows.size[g] * lambda)) / rows.size[g];
                side[i] = rows.y[i] - share * sumY[g];
                for (int k = 0; k < columns.length; k++) {
                    columns[k][i] = rows.x[i][k] - share * rows.sumX[g][k];
                }
            }
            return Householder.of(columns, side);
        }

        private double[] residuals() {
            double[] r = rows.y.clone();
            for (int i = 0; i < r.length; i++) {
                for (int k = 0; k < beta.length; k++) {
                    r[i] -= rows.x[i][k] * beta[k];
                }
            }
            return r;
        }

        /** Twice the derivative of the restricted log-likelihood by λ. */
        double score() {
            double quadratic = 0;
            double trace = 0;
            for (int g = 0; g < rows.size.length; g++) {
                double shrink = 1 / (1 + rows.size[g] * lambda);
                quadratic += Math.pow(shrink * residualSums[g], 2);
                double[] a = Arrays.stream(rows.sumX[g]).map(v -> shrink * v).toArray();
                trace += shrink * rows.size[g] - turned.leverage(a);
            }
            return quadratic / variance - trace;
        }

        RandomIntercept result() {
            double[] effects = new double[rows.size.length];
            for (int g = 0; g < effects.length; g++) {
                effects[g] = lambda * residualSums[g] / (1 + rows.size[g] * lambda);
            }
            double[] deleted = new double[residuals.length];
            double[] deletedVariance = new double[residuals.length];
            for (int i = 0; i < deleted.length; i++) {
                int g = rows.group[i];
                double shrink = lambda / (1 + rows.size[g] * lambda);
                double[] row = rows.x[i].clone();
                for (int k = 0; k < row.length; k++) {
                    row[k] -= shrink * rows.sumX[g][k];
                }
                double diagonal = 1 - shrink - turned.leverage(row);
                deleted[i] = (residuals[i] - shrink * residualSums[g]) / diagonal;
                deletedVariance[i] = variance / diagonal;
            }
            return new RandomIntercept(
                    beta,
                    turned.inverse(variance),
                    lambda * variance,
                    variance,
                    logLikelihood(),
                    effects,
                    deleted,
                    deletedVariance);
        }

        private double logLikelihood() {
            double sum = (rows.y.length - beta.length) * (Math.log(2 * Math.PI * variance) + 1);
            for (int n : rows.size) {
                sum += Math.log1p(n * lambda);
            }
            for (int k = 0; k < beta.length; k++) {
                sum += 2 * Math.log(Math.abs(turned.triangle()[k][k]));
            }
            return -sum / 2;
        }
    }
}
