package quadmean.layout;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.MapSystem;
import quadmean.design.TractSettings;
import quadmean.model.Rule;

/** Reads polygons from GeoJSON (RFC 7946, Butler and others 2016). */
final class GeoJsonBoundary {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final TractSettings settings;
    private final BoundaryLog log;

    private GeoJsonBoundary(TractSettings settings, BoundaryLog log) {
        this.settings = settings;
        this.log = log;
    }

    static List<RawFeature> read(String text, TractSettings settings, BoundaryLog log) {
        try {
            JsonNode root = JSON.readTree(text);
            return new GeoJsonBoundary(settings, log).features(root, text);
        } catch (JsonProcessingException e) {
            long line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            log.add(Rule.BOUNDARY_UNREADABLE, line, "", "", "this is no JSON: " + e.getOriginalMessage());
            return List.of();
        }
    }

    private List<RawFeature> features(JsonNode root, String text) {
        checkSystem(root.path("crs").path("properties").path("name").asText(""));
        if (!root.path("type").asText().equals("FeatureCollection")) {
            return feature(root, "", 1).stream().toList();
        }
        List<Integer> lines = linesOfFeatures(text);
        List<RawFeature> features = new ArrayList<>();
        int number = 0;
        for (JsonNode node : root.path("features")) {
            int line = number < lines.size() ? lines.get(number) : 0;
            number++;
            feature(node, "feature " + number, line).ifPresent(features::add);
        }
        return features;
    }

    /** Older files name their map system; it must not be another than the design says. */
    private void checkSystem(String name) {
        boolean lonLat = name.isEmpty() || name.endsWith("CRS84") || name.endsWith("4326");
        if (!lonLat && settings.system() instanceof MapSystem.LonLat) {
            log.add(
                    Rule.BOUNDARY_POSITION,
                    0,
                    "crs",
                    name,
                    "the file says that it is in " + name + ", and the design takes it for longitude and latitude");
        }
    }

    private Optional<RawFeature> feature(JsonNode node, String place, int line) {
        boolean isFeature = node.path("type").asText().equals("Feature");
        JsonNode geometry = isFeature ? node.path("geometry") : node;
        RawFeature bare = new RawFeature(place, line, isFeature ? code(node.path("properties")) : "", List.of());
        List<RawPolygon> polygons = new ArrayList<>();
        collect(geometry, bare, polygons);
        return polygons.isEmpty() ? Optional.empty() : Optional.of(new RawFeature(place, line, bare.code(), polygons));
    }

    private String code(JsonNode properties) {
        if (settings.stratumProperty().isPresent()) {
            return properties.path(settings.stratumProperty().get()).asText("");
        }
        String stratum = properties.path("stratum").asText("");
        return stratum.isBlank() ? properties.path("name").asText("") : stratum;
    }

    private void collect(JsonNode geometry, RawFeature at, List<RawPolygon> into) {
        String type = geometry.path("type").asText("");
        JsonNode coordinates = geometry.path("coordinates");
        switch (type) {
            case "Polygon" -> into.add(polygon(coordinates));
            case "MultiPolygon" -> coordinates.forEach(p -> into.add(polygon(p)));
            case "GeometryCollection" -> geometry.path("geometries").forEach(g -> collect(g, at, into));
            default ->
                log.add(
                        Rule.BOUNDARY_READ,
                        at,
                        type,
                        (type.isEmpty() ? "something without a geometry" : "a " + type)
                                + " is no polygon and is left out");
        }
    }

    private static RawPolygon polygon(JsonNode rings) {
        List<List<Coordinate>> read = new ArrayList<>();
        for (JsonNode ring : rings) {
            List<Coordinate> corners = new ArrayList<>();
            ring.forEach(position -> corners.add(position(position)));
            read.add(corners);
        }
        return new RawPolygon(read);
    }

    /** A position; not a number where it is none, which is reported with the positions out of range. */
    private static Coordinate position(JsonNode position) {
        return new Coordinate(number(position.path(0)), number(position.path(1)));
    }

    private static double number(JsonNode node) {
        return node.isNumber() ? node.doubleValue() : Double.NaN;
    }

    /** The lines on which the features of a collection begin. */
    private static List<Integer> linesOfFeatures(String text) {
        List<Integer> lines = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean features = parser.currentName().equals("features");
                JsonToken value = parser.nextToken();
                if (features && value == JsonToken.START_ARRAY) {
                    while (parser.nextToken() != JsonToken.END_ARRAY) {
                        lines.add(parser.currentTokenLocation().getLineNr());
                        parser.skipChildren();
                    }
                } else {
                    parser.skipChildren();
                }
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException("the text was read before", e);
        }
    }
}
