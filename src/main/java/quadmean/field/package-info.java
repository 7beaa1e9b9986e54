/** Tallies into model records: reading rows, turning readings into heights, finding what is wrong. */
@org.jspecify.annotations.NullMarked
package quadmean.field;
