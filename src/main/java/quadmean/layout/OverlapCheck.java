package quadmean.layout;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Notes ground in two polygons, and strata that reach beyond the outline of the tract. */
final class OverlapCheck {
    /** Overlap that passes as an error of drawing, over the smaller area (common practice, no source). */
    private static final double SLIVER = 0.001;

    private final Unit unit;
    private final MapGrid grid;
    private final BoundaryLog log;

    OverlapCheck(Unit unit, MapGrid grid, BoundaryLog log) {
        this.unit = unit;
        this.grid = grid;
        this.log = log;
    }

    void each(List<PlacedPolygon> polygons) {
        for (int i = 0; i < polygons.size(); i++) {
            for (int j = 0; j < i; j++) {
                pair(polygons.get(j), polygons.get(i));
            }
        }
    }

    private void pair(PlacedPolygon first, PlacedPolygon second) {
        if (!first.shape().getEnvelopeInternal().intersects(second.shape().getEnvelopeInternal())) {
            return;
        }
        Geometry common = OverlayNGRobust.overlay(first.shape(), second.shape(), OverlayNG.INTERSECTION);
        double smaller = Math.min(first.shape().getArea(), second.shape().getArea());
        if (common.getArea() > SLIVER * smaller) {
            log.add(
                    Rule.BOUNDARY_OVERLAP,
                    second.feature(),
                    area(common),
                    area(common) + " around " + middle(common) + " lie both in this polygon (" + second.stratum()
                            + ") and in " + name(first));
        }
    }

    private static String name(PlacedPolygon polygon) {
        RawFeature f = polygon.feature();
        String place = f.place().isEmpty() ? "line " + f.line() : f.place();
        return place + " (" + polygon.stratum() + ")";
    }

    void inside(List<PlacedPolygon> polygons, Geometry outline) {
        for (PlacedPolygon p : polygons) {
            Geometry beyond = OverlayNGRobust.overlay(p.shape(), outline, OverlayNG.DIFFERENCE);
            if (beyond.getArea() > SLIVER * p.shape().getArea()) {
                log.add(
                        Rule.BOUNDARY_OVERLAP,
                        p.feature(),
                        area(beyond),
                        area(beyond) + " of stratum " + p.stratum() + " around " + middle(beyond)
                                + " lie outside the outline of the tract");
            }
        }
    }

    private String area(Geometry shape) {
        double area = Unit.HECTARE.convert(grid.areaHa(shape), unit);
        return String.format(Locale.ROOT, area < 0.1 ? "%.4f %s" : "%.2f %s", area, unit.symbol());
    }

    /** A place inside, as it stands on a map. */
    private String middle(Geometry shape) {
        Coordinate at = shape.getInteriorPoint().getCoordinate();
        return grid.lonLat(at)
                .map(g -> String.format(Locale.ROOT, "%.5f %.5f", g.x, g.y))
                .orElseGet(() -> String.format(Locale.ROOT, "%.1f %.1f m", at.x, at.y));
    }
}
