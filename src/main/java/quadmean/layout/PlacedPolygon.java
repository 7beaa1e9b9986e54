package quadmean.layout;

import org.locationtech.jts.geom.Polygon;

/**
 * A polygon in order, on the grid.
 *
 * @param feature where it comes from
 * @param stratum code of its stratum
 * @param shape the polygon, in metres
 */
record PlacedPolygon(RawFeature feature, String stratum, Polygon shape) {}
