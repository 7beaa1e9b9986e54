/** Exact constants, conversions, unit systems and attributes with their units; the only place where feet meet metres. */
@org.jspecify.annotations.NullMarked
package quadmean.units;
