/** Pictures of the results. */
@org.jspecify.annotations.NullMarked
package quadmean.chart;
