package quadmean.design;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How a boundary is written. */
public enum TractFormat {
    GEOJSON("geojson", "geojson|json", true),
    KML("kml", "kml", false),
    WKT("wkt", "wkt|txt", true),
    GPX("gpx", "gpx", false);

    private final String id;
    private final String endings;
    private final boolean takesSystems;

    TractFormat(String id, String endings, boolean takesSystems) {
        this.id = id;
        this.endings = endings;
        this.takesSystems = takesSystems;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** Whether a file may be in another map system than longitude and latitude. */
    public boolean takesSystems() {
        return takesSystems;
    }

    /** The format that the ending of a file name tells. */
    static Optional<TractFormat> of(String name) {
        String low = name.toLowerCase(Locale.ROOT);
        return Stream.of(values())
                .filter(f -> low.matches(".*\\.(" + f.endings + ")"))
                .findFirst();
    }
}
