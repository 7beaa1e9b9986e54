/** The design file: reading, defaults, and errors with line and column. */
@org.jspecify.annotations.NullMarked
package quadmean.design;
