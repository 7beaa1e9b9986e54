package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;

/**
 * One colour and one marker for each species of a cruise, by the order of the codes, so that a species looks the same
 * wherever it occurs. Hues go dark and light by turns, which tells neighbours apart in grey, and
 * follow those that Okabe and Ito (2008) chose for colour-blind readers; beyond twelve species colours come round again with another marker.
 */
public final class SpeciesColours {
    /** Stands for the curve of all species together and for species without one of their own. */
    static final Color POOLED = new Color(0x6E6E6E);

    /** Dark and light by turns, so that neighbours in a stack stay apart in grey. */
    private static final int[] HUES = {
        0x005A8C, 0xE69F00, 0x00795B, 0xD9A0C3, 0xB0450A, 0x6FC2F0, 0x5B3A1E, 0xB7A7DE, 0x6B6300, 0xE58FA8, 0x4A5F7A,
        0x9CC47A
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

    /** The colours of species by their codes. */
    public static SpeciesColours of(Collection<String> codes) {
        return new SpeciesColours(new ArrayList<>(new TreeSet<>(codes)));
    }

    /** The species codes in their order. */
    public List<String> codes() {
        return List.copyOf(codes);
    }

    /** The colour of a species as {@code #rrggbb}; grey for one that is not in the cruise. */
    public String hex(String code) {
        return String.format(Locale.ROOT, "#%06x", colour(code).getRGB() & 0xFFFFFF);
    }

    /** All colours in their order. */
    static List<Color> hues() {
        return Arrays.stream(HUES).mapToObj(Color::new).toList();
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
