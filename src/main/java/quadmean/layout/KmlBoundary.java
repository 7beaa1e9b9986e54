package quadmean.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.TractSettings;
import quadmean.model.Rule;

/** Reads the polygons of placemarks from KML (OGC 12-007r2): longitude, latitude and perhaps height, parted by commas. */
final class KmlBoundary {
    private static final Set<String> OTHER_SHAPES = Set.of("Point", "LineString", "Model", "Track");

    private final TractSettings settings;
    private final BoundaryLog log;
    private final List<RawFeature> features = new ArrayList<>();

    private long line;
    private String place = "";
    private int number;
    private int outside;
    private boolean inPolygon;
    private Map<String, String> data = new HashMap<>();
    private List<RawPolygon> polygons = new ArrayList<>();
    private List<List<Coordinate>> rings = new ArrayList<>();

    private KmlBoundary(TractSettings settings, BoundaryLog log) {
        this.settings = settings;
        this.log = log;
    }

    static List<RawFeature> read(byte[] bytes, TractSettings settings, BoundaryLog log) {
        KmlBoundary boundary = new KmlBoundary(settings, log);
        try {
            boundary.walk(SafeXml.reader(bytes));
        } catch (XMLStreamException e) {
            log.add(Rule.BOUNDARY_UNREADABLE, SafeXml.line(e), "", "", "this is no KML: " + SafeXml.explain(e));
        }
        return boundary.features;
    }

    private void walk(XMLStreamReader xml) throws XMLStreamException {
        boolean inPlacemark = false;
        while (xml.hasNext()) {
            int event = xml.next();
            SafeXml.check(event);
            if (event == XMLStreamReader.START_ELEMENT) {
                inPlacemark |= begin(xml);
                if (inPlacemark) {
                    inside(xml);
                } else if (xml.getLocalName().equals("Polygon")) {
                    outside++;
                }
            } else if (event == XMLStreamReader.END_ELEMENT) {
                inPlacemark &= !end(xml.getLocalName());
            }
        }
        if (outside > 0) {
            log.add(Rule.BOUNDARY_READ, 0, "", "", outside + " polygons stand in no Placemark and are left out");
        }
    }

    /** Whether a placemark begins. */
    private boolean begin(XMLStreamReader xml) {
        if (!xml.getLocalName().equals("Placemark")) {
            return false;
        }
        number++;
        place = "placemark " + number;
        line = xml.getLocation().getLineNumber();
        data = new HashMap<>();
        polygons = new ArrayList<>();
        return true;
    }

    private void inside(XMLStreamReader xml) throws XMLStreamException {
        String name = xml.getLocalName();
        switch (name) {
            case "name", "description" -> data.putIfAbsent(name, xml.getElementText());
            case "SimpleData" -> {
                String field = String.valueOf(xml.getAttributeValue(null, "name"));
                data.put("data " + field, xml.getElementText());
            }
            case "Data" -> data.put("field", String.valueOf(xml.getAttributeValue(null, "name")));
            case "value" -> data.put("data " + data.getOrDefault("field", ""), xml.getElementText());
            case "Polygon" -> {
                rings = new ArrayList<>();
                inPolygon = true;
            }
            case "outerBoundaryIs", "innerBoundaryIs" -> {}
            case "coordinates" -> coordinates(xml);
            default -> {
                if (OTHER_SHAPES.contains(name) || (name.equals("LinearRing") && !inPolygon)) {
                    log.add(Rule.BOUNDARY_READ, line, place, name, "a " + name + " is no polygon and is left out");
                }
            }
        }
    }

    private void coordinates(XMLStreamReader xml) throws XMLStreamException {
        String text = xml.getElementText().strip();
        if (!inPolygon) {
            return; // of a point or a line, which is noted
        }
        List<Coordinate> ring = new ArrayList<>();
        for (String tuple : text.isEmpty() ? new String[0] : text.split("\\s+")) {
            String[] parts = tuple.split(",", -1);
            ring.add(
                    parts.length < 2
                            ? new Coordinate(Double.NaN, Double.NaN)
                            : new Coordinate(number(parts[0]), number(parts[1])));
        }
        rings.add(ring);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** Whether a placemark ends. */
    private boolean end(String name) {
        if (name.equals("Polygon")) {
            polygons.add(new RawPolygon(rings));
            inPolygon = false;
        }
        if (!name.equals("Placemark")) {
            return false;
        }
        if (!polygons.isEmpty()) {
            features.add(new RawFeature(place, line, code(), polygons));
        }
        return true;
    }

    private String code() {
        String name = data.getOrDefault("name", "");
        if (settings.stratumProperty().isPresent()) {
            String property = settings.stratumProperty().get();
            return data.getOrDefault("data " + property, data.getOrDefault(property, ""));
        }
        return data.getOrDefault("data stratum", name);
    }
}
