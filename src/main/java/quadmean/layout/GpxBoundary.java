package quadmean.layout;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Track;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.locationtech.jts.geom.Coordinate;
import quadmean.model.Rule;

/** Reads boundaries walked with a receiver from GPX, each track a stratum by its name. jpx reads what is found to be safe. */
final class GpxBoundary {
    private final BoundaryLog log;

    private GpxBoundary(BoundaryLog log) {
        this.log = log;
    }

    /** What a first reading finds: the version, and the lines on which tracks begin. */
    private record Sketch(GPX.Version version, List<Integer> lines, int otherThings) {}

    static List<RawFeature> read(byte[] bytes, BoundaryLog log) {
        try {
            Sketch sketch = sketch(bytes);
            GPX gpx = GPX.Reader.of(sketch.version(), GPX.Reader.Mode.STRICT).read(new ByteArrayInputStream(bytes));
            return new GpxBoundary(log).features(gpx, sketch);
        } catch (XMLStreamException e) {
            log.add(Rule.BOUNDARY_UNREADABLE, SafeXml.line(e), "", "", "this is no GPX: " + SafeXml.explain(e));
        } catch (IOException | IllegalArgumentException e) {
            log.unreadable("this is no GPX in order: " + reason(e));
        }
        return List.of();
    }

    private static String reason(Exception e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause instanceof XMLStreamException x ? SafeXml.explain(x) : String.valueOf(cause.getMessage());
    }

    private static Sketch sketch(byte[] bytes) throws XMLStreamException {
        XMLStreamReader xml = SafeXml.reader(bytes);
        GPX.Version version = GPX.Version.V11;
        List<Integer> lines = new ArrayList<>();
        int others = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            SafeXml.check(event);
            if (event == XMLStreamReader.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "gpx" ->
                        version = "1.0".equals(xml.getAttributeValue(null, "version"))
                                ? GPX.Version.V10
                                : GPX.Version.V11;
                    case "trk" -> lines.add(xml.getLocation().getLineNumber());
                    case "rte", "wpt" -> others++;
                    default -> {}
                }
            }
        }
        return new Sketch(version, lines, others);
    }

    private List<RawFeature> features(GPX gpx, Sketch sketch) {
        if (sketch.otherThings() > 0) {
            log.add(
                    Rule.BOUNDARY_READ,
                    0,
                    "",
                    "",
                    sketch.otherThings() + " waypoints and routes are no walked boundary" + " and are left out");
        }
        List<RawFeature> features = new ArrayList<>();
        for (Track track : gpx.getTracks()) {
            int number = features.size() + 1;
            int line = number <= sketch.lines().size() ? sketch.lines().get(number - 1) : 0;
            String name = track.getName().orElse("");
            RawFeature bare = new RawFeature("track " + number, line, name, List.of());
            features.add(new RawFeature(bare.place(), line, name, new Walk(bare, log).polygons(segments(track))));
        }
        return features;
    }

    private static List<List<Coordinate>> segments(Track track) {
        return track.getSegments().stream()
                .map(s -> s.getPoints().stream()
                        .map(p -> new Coordinate(
                                p.getLongitude().doubleValue(), p.getLatitude().doubleValue()))
                        .toList())
                .filter(s -> !s.isEmpty())
                .toList();
    }

    /** A length as messages say it. */
    static String metres(double length) {
        return String.format(Locale.ROOT, length < 10 ? "%.1f m" : "%.0f m", length);
    }
}
