package quadmean.chart;

import java.util.Optional;

/**
 * A chart to be put into a page.
 *
 * @param id identifier, unique among the charts of a page; letters and hyphens
 * @param title what it shows, with the unit and the meaning of bars and bands; plain text, not escaped
 * @param altText the same for those who cannot see it; plain text, not escaped
 * @param svg the drawing as an {@code svg} element that scales with its container; its ids start with {@code id}
 * @param raster the same in pixels; empty for what is drawn in SVG alone
 */
public record Picture(String id, String title, String altText, String svg, Optional<Raster> raster) {
    /** A picture in SVG alone. */
    Picture(String id, String title, String altText, String svg) {
        this(id, title, altText, svg, Optional.empty());
    }

    /** A drawing that is made when it is asked for. */
    public interface Raster {
        /** A PNG file. */
        byte[] png();
    }
}
