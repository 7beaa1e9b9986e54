package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;

/**
 * One colour and one marker for each species of a cruise, by the order of the codes, so that a species looks the same
 * wherever it occurs. The hues differ in lightness too and stay apart for colour-blind readers (the first six
 * after Okabe and Ito 2008); beyond twelve species colours come round again with another marker.
 */
public final class SpeciesColours {
    /** Stands for the curve of all species together and for species without one of their own. */
    static final Color POOLED = new Color(0x6E6E6E);

    private static final int[] HUES = {
        0x0072B2, 0xD55E00, 0x009E73, 0xCC79A7, 0xE69F00, 0x56B4E9, 0x8C5A2B, 0x7E63B8, 0xA89B00, 0x9C2A4F, 0x9FB4C7,
        0x3E6B2F
    };
    private static final Marker[] MARKERS = {
        SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.DIAMOND, SeriesMarkers.TRIANGLE_UP
    };

    private final List<String> codes;

    private SpeciesColours(List<String> codes) {
        this.codes = codes;
    }

    /** The colours of every species that was tallied or estimated. */
    public static SpeciesColours of(CruiseResult result) {
        TreeSet<String> codes = new TreeSet<>();
        result.trees().forEach(t -> codes.add(t.tree().species()));
        result.estimate().rows().forEach(r -> codes.add(r.species()));
        codes.remove(EstimateRow.ALL);
        return new SpeciesColours(new ArrayList<>(codes));
    }

    /** The species codes in their order. */
    public List<String> codes() {
        return List.copyOf(codes);
    }

    /** The colour of a species as {@code #rrggbb}; grey for one that is not in the cruise. */
    public String hex(String code) {
        return String.format(Locale.ROOT, "#%06x", colour(code).getRGB() & 0xFFFFFF);
    }

    Color colour(String code) {
        int at = codes.indexOf(code);
        return at < 0 ? POOLED : new Color(HUES[at % HUES.length]);
    }

    Marker marker(String code) {
        int at = Math.max(0, codes.indexOf(code));
        return MARKERS[(at + at / HUES.length) % MARKERS.length];
    }
}
