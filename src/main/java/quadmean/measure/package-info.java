/** Geometry of readings: each formula stands here once. */
@org.jspecify.annotations.NullMarked
package quadmean.measure;
