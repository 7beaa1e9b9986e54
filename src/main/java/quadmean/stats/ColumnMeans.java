package quadmean.stats;

/**
 * Smooth functions of the stratified means of many columns: all columns are averaged with the same weights, then the function
 * makes ratios, quadratic mean diameters and the like of them.
 */
public final class ColumnMeans implements UnitStatistic {
    private final double[] flat;
    private final int columns;
    private final int outputs;
    private final Function function;

    /** Makes the outputs of the column means; called from several threads. */
    @FunctionalInterface
    public interface Function {
        /**
         * Computes all outputs.
         *
         * @param means the mean of each column
         * @param out receives the outputs
         */
        void apply(double[] means, double[] out);
    }

    private ColumnMeans(double[][] rows, int outputs, Function function) {
        this.columns = rows[0].length;
        this.outputs = outputs;
        this.function = function;
        this.flat = new double[rows.length * columns];
        for (int i = 0; i < rows.length; i++) {
            Arguments.sameLength(rows[i].length, columns, "columns of each unit");
            System.arraycopy(rows[i], 0, flat, i * columns, columns);
        }
    }

    /**
     * The means themselves.
     *
     * @param rows for each unit its columns, strata one after the other
     */
    public static ColumnMeans of(double[][] rows) {
        Arguments.atLeast(rows.length, 1, "units");
        int columns = rows[0].length;
        return new ColumnMeans(rows, columns, (means, out) -> System.arraycopy(means, 0, out, 0, columns));
    }

    /**
     * Functions of the means.
     *
     * @param rows for each unit its columns, strata one after the other
     * @param outputs how many numbers the function makes
     * @param function a smooth function without state
     */
    public static ColumnMeans of(double[][] rows, int outputs, Function function) {
        Arguments.atLeast(rows.length, 1, "units");
        return new ColumnMeans(rows, outputs, function);
    }

    @Override
    public int outputs() {
        return outputs;
    }

    @Override
    public Evaluator evaluator() {
        double[] means = new double[columns];
        return (weights, out) -> {
            average(weights, means);
            function.apply(means, out);
        };
    }

    private void average(double[] weights, double[] means) {
        java.util.Arrays.fill(means, 0);
        int at = 0;
        for (double w : weights) {
            for (int c = 0; c < means.length; c++) {
                means[c] += w * flat[at + c];
            }
            at += means.length;
        }
    }
}
