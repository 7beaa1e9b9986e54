/** Estimators, intervals, sample sizes and least squares on plain numbers; knows no trees. */
@org.jspecify.annotations.NullMarked
package quadmean.stats;
