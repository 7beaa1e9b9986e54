package quadmean.layout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.util.List;
import quadmean.design.Design;
import quadmean.design.TractSettings;

/** Reads the boundary that a design names, checks it, and places it on a grid in metres. */
public final class BoundaryReader {
    /** Largest file that is read (bytes); a boundary of a million corners has about as many. */
    private static final long LARGEST = 32L << 20;

    private BoundaryReader() {}

    /**
     * The tract of a design.
     *
     * @throws IllegalArgumentException if the design names no boundary
     */
    public static TractReading read(Design design) {
        TractSettings settings =
                design.tract().orElseThrow(() -> new IllegalArgumentException("the design has no [tract]"));
        BoundaryLog log = new BoundaryLog(settings.name(), design::policy);
        List<RawFeature> features = features(settings, log);
        if (features.stream().allMatch(f -> f.polygons().isEmpty())) {
            if (!log.refuses()) {
                log.unreadable("there is no polygon in it");
            }
            return new TractReading(null, log.problems());
        }
        return new TractMaker(design, settings, log).make(features);
    }

    private static List<RawFeature> features(TractSettings settings, BoundaryLog log) {
        byte[] bytes = bytes(settings, log);
        if (log.refuses()) {
            return List.of();
        }
        return switch (settings.format()) {
            case GEOJSON -> GeoJsonBoundary.read(text(bytes), settings, log);
            case KML -> KmlBoundary.read(bytes, settings, log);
            case WKT -> WktBoundary.read(text(bytes), log);
            case GPX -> GpxBoundary.read(bytes, log);
        };
    }

    private static byte[] bytes(TractSettings settings, BoundaryLog log) {
        try {
            long size = Files.size(settings.boundary());
            if (size > LARGEST) {
                log.unreadable("it has " + (size >> 20) + " MB; more than " + (LARGEST >> 20) + " MB are not read");
                return new byte[0];
            }
            byte[] bytes = Files.readAllBytes(settings.boundary());
            if (new String(bytes, StandardCharsets.ISO_8859_1).isBlank()) {
                log.unreadable("the file is empty");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            log.unreadable("there is no such file");
        } catch (IOException e) {
            log.unreadable("the file cannot be read");
        }
        return new byte[0];
    }

    private static String text(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
