package quadmean.model;

import quadmean.units.Unit;

/**
 * How diameters inside bark follow from those outside: dib = a·dob^b, in the unit of the coefficients.
 *
 * @param a factor; with b = 1 the ratio dib/dob
 * @param b exponent
 * @param unit unit of both diameters
 * @param provenance where the coefficients come from
 */
public record BarkSpec(double a, double b, Unit unit, Provenance provenance) {}
