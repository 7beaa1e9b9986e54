package quadmean.layout;

import org.locationtech.jts.geom.Geometry;

/**
 * The ground of a stratum.
 *
 * @param stratum its code
 * @param shape polygon or polygons, with holes, in metres on the tract's grid; not to be changed
 */
public record TractPart(String stratum, Geometry shape) {}
