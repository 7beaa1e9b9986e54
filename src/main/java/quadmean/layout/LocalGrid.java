package quadmean.layout;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import quadmean.units.Unit;

/** A plane of its own, such as a map drawn with compass and tape. */
public record LocalGrid() implements MapGrid {
    @Override
    public String name() {
        return "local plane";
    }

    @Override
    public Optional<Coordinate> lonLat(Coordinate grid) {
        return Optional.empty();
    }

    @Override
    public double scaleAt(Coordinate grid) {
        return 1;
    }

    @Override
    public double convergenceDegrees(Coordinate grid) {
        return 0;
    }

    @Override
    public Course course(Coordinate from, Coordinate to) {
        return Course.onPlane(from, to);
    }

    @Override
    public double areaHa(Geometry polygons) {
        return Unit.SQUARE_METRE_OF_GROUND.convert(polygons.getArea(), Unit.HECTARE);
    }

    @Override
    public String areaMethod() {
        return "plane area of the local coordinates";
    }
}
