/** Tree volume equations, solids, stem sections, log rules and scaling; formulas work in the units of their coefficients. */
@org.jspecify.annotations.NullMarked
package quadmean.volume;
