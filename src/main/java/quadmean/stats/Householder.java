package quadmean.stats;

/**
 * A tall matrix turned into an upper triangle by Householder reflections, and a right-hand side turned along with it.
 *
 * @param triangle the triangle R, by rows
 * @param turned the first entries of the turned right-hand side, one for each column
 * @param restSquared squared length of its other entries: what no combination of the columns can reach
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record Householder(double[][] triangle, double[] turned, double restSquared) {

    /**
     * Reflects columns and right-hand side, both in place.
     *
     * @param columns columns of the matrix, each as long as the right-hand side and no more of them than that
     * @param side the right-hand side
     */
    static Householder of(double[][] columns, double[] side) {
        int p = columns.length;
        double[][] triangle = new double[p][p];
        for (int k = 0; k < p; k++) {
            double[] v = columns[k];
            double length = Math.copySign(Math.sqrt(dot(v, v, k)), -v[k]);
            for (int row = 0; row < k; row++) {
                triangle[row][k] = v[row];
            }
            triangle[k][k] = length;
            if (length == 0) {
                continue;
            }
            v[k] -= length;
            double half = -length * v[k];
            for (int j = k + 1; j < p; j++) {
                reflect(v, half, columns[j], k);
            }
            reflect(v, half, side, k);
        }
        double[] turned = java.util.Arrays.copyOf(side, p);
        return new Householder(triangle, turned, dot(side, side, p));
    }

    /** Solves R·z = turned from the bottom up; infinite or NaN where a pivot is zero. */
    double[] solve() {
        int p = turned.length;
        double[] z = turned.clone();
        for (int k = p - 1; k >= 0; k--) {
            for (int j = k + 1; j < p; j++) {
                z[k] -= triangle[k][j] * z[j];
            }
            z[k] /= triangle[k][k];
        }
        return z;
    }

    /** Squared length of the z with Rᵀ·z = row: the leverage of a row of the matrix. */
    double leverage(double[] row) {
        double[] z = row.clone();
        double sum = 0;
        for (int k = 0; k < z.length; k++) {
            for (int j = 0; j < k; j++) {
                z[k] -= triangle[j][k] * z[j];
            }
            z[k] /= triangle[k][k];
            sum += z[k] * z[k];
        }
        return sum;
    }

    /** The inverse of RᵀR times a factor. */
    double[][] inverse(double factor) {
        int p = turned.length;
        double[][] columns = new double[p][];
        for (int k = 0; k < p; k++) {
            double[] unit = new double[p];
            unit[k] = 1;
            columns[k] = new Householder(triangle, unit, 0).solve();
        }
        double[][] inverse = new double[p][p];
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                for (int k = 0; k < p; k++) {
                    inverse[a][b] += factor * columns[k][a] * columns[k][b];
                }
            }
        }
        return inverse;
    }

    private static void reflect(double[] v, double half, double[] target, int from) {
        double share = dot(v, target, from) / half;
        for (int i = from; i < v.length; i++) {
            target[i] -= share * v[i];
        }
    }

    private static double dot(double[] a, double[] b, int from) {
        double sum = 0;
        for (int i = from; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
