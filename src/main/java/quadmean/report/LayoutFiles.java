package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import quadmean.chart.MapPng;
import quadmean.chart.Picture;
import quadmean.design.Design;
import quadmean.layout.GpxWriter;
import quadmean.layout.SheetPlace;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;

/**
 * The files that plots are carried to the woods in: {@code sheets.html}, {@code map.svg}, {@code map.png} where there are fonts, {@code plots.csv}, which a design can
 * name as its {@code plot_list}, {@code legs.csv}; and where longitude and latitude are known {@code plots.geojson} and
 * {@code plots.gpx}. None depends on the clock.
 */
public final class LayoutFiles {
    private static final List<String> PLOT_HEADER = List.of(
            "plot",
            "stratum",
            "longitude",
            "latitude",
            "east_m",
            "north_m",
            "row",
            "column",
            "cluster",
            "cluster_size",
            "edge",
            "edge_m");

    private static final List<String> LEG_HEADER =
            List.of("day", "from", "to", "true_bearing_deg", "compass_bearing_deg", "horizontal_m", "ground_m", "way");

    private LayoutFiles() {}

    /** Content by file name. */
    public static Map<String, Content> of(Design design, SheetSet set, Optional<Picture> map) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("sheets.html", FieldSheets.of(design, set, map));
        map.ifPresent(m -> files.put("map.svg", out -> out.write((m.svg() + "\n").getBytes(StandardCharsets.UTF_8))));
        map.flatMap(MapPng::of).ifPresent(png -> files.put("map.png", out -> out.write(png)));
        files.put("plots.csv", Csv.seeded(plots(set), design.seed()));
        files.put("legs.csv", Csv.seeded(legs(set), design.seed()));
        if (set.isOnGlobe()) {
            onGlobe(files, design, set);
        }
        return files;
    }

    private static void onGlobe(Map<String, Content> files, Design design, SheetSet set) {
        ObjectNode root = geoJson(design, set);
        files.put("plots.geojson", JsonFile.of(root));
        files.put(
                "plots.gpx",
                out -> GpxWriter.write(design.name(), "Plots, seed " + design.seed(), set.plots(), set.route(), out));
    }

    static Content plots(SheetSet set) {
        Map<String, Integer> sizes = new HashMap<>();
        set.plots().forEach(p -> sizes.merge(cluster(p), 1, Integer::sum));
        boolean subsets = set.plots().stream().anyMatch(p -> !p.subset().isEmpty());
        List<String> header = new ArrayList<>(PLOT_HEADER);
        header.addAll(subsets ? List.of("subset") : List.of());
        return Csv.toReadAgain(header, set.plots().stream().map(p -> {
            List<String> row = new ArrayList<>(
                    row(p, p.cluster().isEmpty() ? "" : Integer.toString(sizes.getOrDefault(cluster(p), 0))));
            row.addAll(subsets ? List.of(p.subset()) : List.of());
            return row;
        }));
    }

    /** A cluster counts for itself in each stratum. */
    private static String cluster(SheetPlot plot) {
        return plot.stratum() + "\n" + plot.cluster();
    }

    private static List<String> row(SheetPlot plot, String clusterSize) {
        SheetPlace at = plot.place();
        return List.of(
                plot.number(),
                plot.stratum(),
                Csv.number(at.longitude()),
                Csv.number(at.latitude()),
                Csv.number(at.eastM()),
                Csv.number(at.northM()),
                whole(plot.row()),
                whole(plot.column()),
                plot.cluster(),
                clusterSize,
                plot.isNearEdge() ? "near" : "",
                Csv.number(plot.edgeDistanceM()));
    }

    private static String whole(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    static Content legs(SheetSet set) {
        List<List<String>> rows = new ArrayList<>();
        for (SheetRoute.Leg leg : set.route().legs()) {
            rows.add(List.of(
                    Integer.toString(leg.day()),
                    leg.from(),
                    leg.to(),
                    Csv.number(leg.trueBearing()),
                    Csv.number(leg.compassBearing()),
                    Csv.number(leg.horizontalM()),
                    Csv.number(leg.slopeM()),
                    leg.way().id()));
        }
        return Csv.of(LEG_HEADER, rows.stream());
    }

    /** Points and lines in longitude and latitude (RFC 7946); the seed stands beside them. */
    static ObjectNode geoJson(Design design, SheetSet set) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("type", "FeatureCollection");
        root.put("name", design.name());
        root.put("seed", design.seed());
        ArrayNode features = root.putArray("features");
        set.plots().forEach(p -> plot(features, p));
        set.route().legs().forEach(l -> leg(features, l, set));
        return root;
    }

    private static void plot(ArrayNode features, SheetPlot plot) {
        ObjectNode geometry = feature(features, "Point");
        position(geometry.putArray("coordinates"), plot.place());
        ObjectNode about = properties(features);
        about.put("kind", "plot").put("plot", plot.number()).put("stratum", plot.stratum());
        plot.row().ifPresent(r -> about.put("row", r));
        plot.column().ifPresent(c -> about.put("column", c));
        if (!plot.cluster().isEmpty()) {
            about.put("cluster", plot.cluster());
        }
        if (!plot.subset().isEmpty()) {
            about.put("subset", plot.subset());
        }
        about.put("nearEdge", plot.isNearEdge());
        JsonNumbers.put(about, "edgeM", plot.edgeDistanceM());
    }

    private static void leg(ArrayNode features, SheetRoute.Leg leg, SheetSet set) {
        ArrayNode line = feature(features, "LineString").putArray("coordinates");
        position(line.addArray(), end(leg.from(), set));
        position(line.addArray(), end(leg.to(), set));
        ObjectNode about = properties(features);
        about.put("kind", "leg").put("day", leg.day()).put("from", leg.from()).put("to", leg.to());
        JsonNumbers.put(about, "trueBearingDeg", leg.trueBearing());
        JsonNumbers.put(about, "compassBearingDeg", leg.compassBearing());
        JsonNumbers.put(about, "horizontalM", leg.horizontalM());
        JsonNumbers.put(about, "groundM", leg.slopeM());
        about.put("way", leg.way().id());
    }

    private static SheetPlace end(String name, SheetSet set) {
        return set.plot(name).map(SheetPlot::place).orElse(set.route().start());
    }

    private static ObjectNode feature(ArrayNode features, String type) {
        ObjectNode feature = features.addObject().put("type", "Feature");
        ObjectNode geometry = feature.putObject("geometry").put("type", type);
        feature.putObject("properties");
        return geometry;
    }

    private static ObjectNode properties(ArrayNode features) {
        return (ObjectNode) features.get(features.size() - 1).get("properties");
    }

    private static void position(ArrayNode at, SheetPlace place) {
        at.add(place.longitude()).add(place.latitude());
    }
}
