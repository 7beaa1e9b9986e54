/** The whole line from design and tally to estimate, as one readable method. */
@org.jspecify.annotations.NullMarked
package quadmean.cruise;
