/** Known forests, cruised on paper again and again through the line of a real cruise: what the limits of a design promise, and what they hold. */
@org.jspecify.annotations.NullMarked
package quadmean.simulate;
