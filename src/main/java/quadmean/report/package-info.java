/** HTML, JSON and CSV outputs; computes no statistics. */
@org.jspecify.annotations.NullMarked
package quadmean.report;
