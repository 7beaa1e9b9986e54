/** Height-diameter curves: forms, fitting, choice and filling. */
@org.jspecify.annotations.NullMarked
package quadmean.height;
