/** Quadmean: plans a timber cruise, turns field readings into heights and reports what stands, with its error. */
@org.jspecify.annotations.NullMarked
package quadmean;
