/** Expansion of trees to plots, and design-based estimates of the stand. */
@org.jspecify.annotations.NullMarked
package quadmean.estimate;
