package quadmean.stats;

/** Totals from units drawn one after the other with replacement and unequal chances: list sampling (Hansen and Hurwitz 1943). */
public final class HansenHurwitz {
    private HansenHurwitz() {}

    /**
     * The total: the mean of y/p, each draw an estimate of it. Unbiased, and so is its variance.
     *
     * @param y value of each draw; a unit drawn twice stands twice
     * @param p chance of that unit in a single draw, in (0, 1]; over the whole population they add up to 1
     */
    public static MeanEstimate total(double[] y, double[] p) {
        return total(y, p, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate total(double[] y, double[] p, Working working) {
        return StratifiedMean.simple(StratumSample.of(1, expanded(y, p)), working);
    }

    /** Values over probabilities. */
    static double[] expanded(double[] y, double[] p) {
        Arguments.sameLength(y.length, p.length, "values and probabilities");
        double[] z = new double[y.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = y[i] / Arguments.probability(p[i]);
        }
        return z;
    }
}
