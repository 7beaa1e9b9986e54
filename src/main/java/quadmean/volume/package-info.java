/** Tree volume equations, evaluated in the units of their coefficients. */
@org.jspecify.annotations.NullMarked
package quadmean.volume;
