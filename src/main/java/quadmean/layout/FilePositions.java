package quadmean.layout;

import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.MapSystem;
import quadmean.units.Unit;

/**
 * The coordinates of a boundary file: what is wrong with one, and what it is on the globe or, for local coordinates, in
 * metres.
 */
final class FilePositions {
    /** North of 84 degrees and south of 80 the zones of UTM end. */
    private static final double NORTHMOST = 84;

    private static final double SOUTHMOST = -80;

    private final MapSystem system;
    private final Optional<Projection> projection;

    private FilePositions(MapSystem system, Optional<Projection> projection) {
        this.system = system;
        this.projection = projection;
    }

    /**
     * The positions of a map system.
     *
     * @throws IllegalArgumentException if its parameters tell no projection, with the reason
     */
    static FilePositions of(MapSystem system) {
        if (system instanceof MapSystem.Utm utm) {
            return new FilePositions(
                    system,
                    Optional.of(Projection.of("+proj=utm +zone=" + utm.zone() + (utm.north() ? "" : " +south")
                            + " +datum=WGS84 +units=m")));
        }
        if (system instanceof MapSystem.Projected projected) {
            return new FilePositions(system, Optional.of(Projection.of(projected.parameters())));
        }
        return new FilePositions(system, Optional.empty());
    }

    boolean isLocal() {
        return system instanceof MapSystem.Local;
    }

    /** Longitude and latitude of a position that is in order, or metres of a local one. */
    Coordinate placed(Coordinate position) {
        if (system instanceof MapSystem.Local local) {
            return new Coordinate(
                    local.unit().convert(position.x, Unit.METRE), local.unit().convert(position.y, Unit.METRE));
        }
        return projection.map(p -> p.inverse(position)).orElse(position);
    }

    /** What is wrong with a position, if anything. */
    Optional<String> fault(Coordinate position) {
        if (!Double.isFinite(position.x) || !Double.isFinite(position.y)) {
            return Optional.of("a position is two finite numbers, and this one is not");
        }
        if (isLocal()) {
            return Math.abs(position.x) > 1e9 || Math.abs(position.y) > 1e9
                    ? Optional.of("no tract reaches that far")
                    : Optional.empty();
        }
        return projection.isPresent() ? projectedFault(position) : lonLatFault(position);
    }

    private static Optional<String> lonLatFault(Coordinate p) {
        if (Math.abs(p.x) <= 90 && Math.abs(p.y) > 90 && Math.abs(p.y) <= 180) {
            return Optional.of(
                    "the latitude, which comes second, is beyond 90 degrees: longitude and latitude are swapped");
        }
        if (Math.abs(p.x) > 180 || Math.abs(p.y) > 90) {
            return Math.max(Math.abs(p.x), Math.abs(p.y)) > 1000
                    ? Optional.of("these are metres or feet of a map system, not longitude and latitude in degrees")
                    : Optional.of("longitude goes from -180 to 180 degrees, latitude from -90 to 90");
        }
        return polarFault(p);
    }

    private static Optional<String> polarFault(Coordinate lonLat) {
        return lonLat.y > NORTHMOST || lonLat.y < SOUTHMOST
                ? Optional.of("the UTM grid, on which tracts are laid out, ends at 84 degrees north and 80 south")
                : Optional.empty();
    }

    private Optional<String> projectedFault(Coordinate position) {
        if (Math.abs(position.x) <= 180 && Math.abs(position.y) <= 90) {
            return Optional.of("this looks like longitude and latitude in degrees, and tract.crs names a map system");
        }
        if (system instanceof MapSystem.Utm && !(isEast(position.x) && position.y >= 0 && position.y <= 1e7)) {
            return Optional.of("in UTM the east comes first, from 0 to 1 000 000 m, then the north, from 0 to"
                    + " 10 000 000 m" + (isEast(position.y) && !isEast(position.x) ? ": these are swapped" : ""));
        }
        Coordinate globe = placed(position);
        if (!Double.isFinite(globe.x) || !Double.isFinite(globe.y) || Math.abs(globe.x) > 180) {
            return Optional.of("the map system that tract.crs names does not reach there");
        }
        return polarFault(globe);
    }

    private static boolean isEast(double metres) {
        return metres >= 0 && metres <= 1e6;
    }

    /** A position as messages show it. */
    String show(Coordinate position) {
        return String.format(
                Locale.ROOT, system instanceof MapSystem.LonLat ? "%.6f %.6f" : "%.1f %.1f", position.x, position.y);
    }
}
