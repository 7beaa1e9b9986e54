package quadmean.stats;

/**
 * What is computed from a sample, as a function of the weights of its units: means, ratios of means, a curve refitted with those
 * weights. A bootstrap changes the weights and asks again.
 */
public interface UnitStatistic {

    /** How many numbers come out. */
    int outputs();

    /** A calculator for one thread, with its own room to work in. */
    Evaluator evaluator();

    /** Computes the statistic for given weights. */
    @FunctionalInterface
    interface Evaluator {
        /**
         * Computes all outputs.
         *
         * @param weights one for each unit, strata one after the other; Σ weight·value is the stratified mean. For the sample
         *     itself each is the stratum's share over its number of units; in a resample 0 or more
         * @param out receives the outputs; NaN where one is not defined
         */
        void evaluate(double[] weights, double[] out);
    }
}
