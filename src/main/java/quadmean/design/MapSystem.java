package quadmean.design;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quadmean.units.Unit;

/** What the coordinates of a boundary mean. */
public sealed interface MapSystem {

    /** Longitude and latitude in degrees, on WGS 84 or a datum that lies within 2 m of it. */
    record LonLat() implements MapSystem {}

    /**
     * A zone of the universal transverse Mercator grid, in metres.
     *
     * @param zone 1 to 60
     * @param north whether on the northern half
     */
    record Utm(int zone, boolean north) implements MapSystem {}

    /**
     * A projection by its parameters, as PROJ writes them.
     *
     * @param parameters such as {@code +proj=lcc +lat_1=...}
     */
    record Projected(String parameters) implements MapSystem {}

    /**
     * A plane of its own, east first, without a place on the globe.
     *
     * @param unit its unit of length
     */
    record Local(Unit unit) implements MapSystem {}

    /** The system that an EPSG number means, of those known here (EPSG registry, from memory). */
    static Optional<MapSystem> ofEpsg(String text) {
        Matcher m = Pattern.compile("(?i)EPSG:(\\d{4,5})").matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(m.group(1));
        if (number == 4326 || number == 4269 || number == 4258) {
            return Optional.of(new LonLat());
        }
        int zone = number % 100;
        return switch (number / 100) {
            case 326 -> zone(zone, 1, 60, true);
            case 327 -> zone(zone, 1, 60, false);
            case 269 -> zone(zone, 1, 23, true);
            case 258 -> zone(zone, 28, 38, true);
            default -> Optional.empty();
        };
    }

    private static Optional<MapSystem> zone(int zone, int first, int last, boolean north) {
        return zone >= first && zone <= last ? Optional.of(new Utm(zone, north)) : Optional.empty();
    }
}
