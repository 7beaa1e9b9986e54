/** What is done during and after a cruise: progress, check cruises, remeasurement, many stands together. */
@org.jspecify.annotations.NullMarked
package quadmean.audit;
