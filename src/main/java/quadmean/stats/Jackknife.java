package quadmean.stats;

/**
 * A statistic computed without each unit in turn, the others of its stratum taking its weight.
 *
 * @param estimates the statistic of the whole sample
 * @param accelerations Σl³/(6(Σl²)^1.5), l the influence of each unit on the estimate; 0 where none has any, NaN where a unit is
 *     needed for there to be a value
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record Jackknife(double[] estimates, double[] accelerations) {

    static Jackknife of(ResampledStratum[] design, UnitStatistic statistic) {
        UnitStatistic.Evaluator evaluator = statistic.evaluator();
        double[] weights = full(design);
        double[] estimates = new double[statistic.outputs()];
        evaluator.evaluate(weights, estimates);
        double[] squares = new double[estimates.length];
        double[] cubes = new double[estimates.length];
        double[] out = new double[estimates.length];
        int first = 0;
        for (ResampledStratum s : design) {
            int n = s.units();
            for (int i = first; i < first + n && n > 1; i++) {
                java.util.Arrays.fill(weights, first, first + n, s.weight() / (n - 1));
                weights[i] = 0;
                evaluator.evaluate(weights, out);
                for (int k = 0; k < out.length; k++) {
                    double l = s.shrinkage() * (n - 1) * (estimates[k] - out[k]) / n;
                    squares[k] += l * l;
                    cubes[k] += l * l * l;
                }
            }
            java.util.Arrays.fill(weights, first, first + n, s.weight() / n);
            first += n;
        }
        double[] accelerations = new double[out.length];
        for (int k = 0; k < out.length; k++) {
            accelerations[k] = squares[k] == 0 ? 0 : cubes[k] / (6 * Math.pow(squares[k], 1.5));
        }
        return new Jackknife(estimates, accelerations);
    }

    private static double[] full(ResampledStratum[] design) {
        double[] weights = new double[Bootstrap.units(design)];
        int first = 0;
        for (ResampledStratum s : design) {
            java.util.Arrays.fill(weights, first, first + s.units(), s.weight() / s.units());
            first += s.units();
        }
        return weights;
    }
}
