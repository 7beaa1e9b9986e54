/** How many plots to run, and where they go among the strata. */
@org.jspecify.annotations.NullMarked
package quadmean.plan;
