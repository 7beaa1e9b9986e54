package quadmean.chart;

/**
 * A chart to be put into a page.
 *
 * @param id identifier, unique among the charts of a page; letters and hyphens
 * @param title what it shows, with the unit and the meaning of bars and bands; plain text, not escaped
 * @param altText the same for those who cannot see it; plain text, not escaped
 * @param svg the drawing as an {@code svg} element that scales with its container; its ids start with {@code id}
 */
public record Picture(String id, String title, String altText, String svg) {}
