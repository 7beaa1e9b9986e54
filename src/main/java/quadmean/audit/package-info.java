/** What is done during and after a cruise. */
@org.jspecify.annotations.NullMarked
package quadmean.audit;
