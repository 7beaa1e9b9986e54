package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.PlotResult;
import quadmean.model.ListedPlot;
import quadmean.model.Position;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/**
 * The value of each plot, for spreadsheets as {@code plot-results.csv} and for maps as {@code plot-results.geojson}; units stand in
 * the names of the columns. Positions are those of the plot list.
 */
final class PlotResultFiles {
    private static final String NOWHERE =
            "No plot is on the map: give selection.plot_list with columns longitude and latitude, as the plots.csv of a layout has.";

    private final CruiseResult result;
    private final List<PlotResult> plots;
    private final Map<String, Position> positions = new HashMap<>();

    private PlotResultFiles(CruiseResult result, List<PlotResult> plots) {
        this.result = result;
        this.plots = plots;
        for (ListedPlot plot : result.tally().listed()) {
            if (plot.position() != null) {
                positions.put(plot.id(), plot.position());
            }
        }
    }

    /** A row for each plot. */
    static Content csv(CruiseResult result, List<PlotResult> plots) {
        return new PlotResultFiles(result, plots).table();
    }

    /** A feature for each plot (RFC 7946, longitude before latitude), without a geometry where nobody says where it is. */
    static Content geoJson(CruiseResult result, List<PlotResult> plots) {
        return JsonFile.of(new PlotResultFiles(result, plots).features());
    }

    private Content table() {
        List<String> header = new ArrayList<>(
                List.of("plot", "stratum", "longitude", "latitude", "trees_measured", "trees_counted", "share_inside"));
        if (!plots.isEmpty()) {
            header.addAll(values(plots.get(0)).keySet());
        }
        header.add("reason");
        return Csv.of(header, plots.stream().map(this::row));
    }

    private List<String> row(PlotResult plot) {
        Position at = positions.get(plot.id());
        List<String> row = new ArrayList<>(List.of(
                plot.id(),
                plot.stratum(),
                at == null ? "" : Csv.number(at.longitude()),
                at == null ? "" : Csv.number(at.latitude()),
                Integer.toString(plot.measured()),
                Integer.toString(plot.counted()),
                Csv.number(plot.inside())));
        values(plot).values().forEach(v -> row.add(Csv.number(v)));
        row.add(reason(plot));
        return row;
    }

    private ObjectNode features() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("type", "FeatureCollection");
        root.put("name", result.design().name());
        if (plots.stream().noneMatch(p -> positions.containsKey(p.id()))) {
            root.put("note", NOWHERE);
        }
        ArrayNode features = root.putArray("features");
        plots.forEach(p -> feature(features.addObject(), p));
        return root;
    }

    private void feature(ObjectNode feature, PlotResult plot) {
        feature.put("type", "Feature");
        geometry(feature, positions.get(plot.id()));
        ObjectNode about = feature.putObject("properties");
        about.put("plot", plot.id()).put("stratum", plot.stratum());
        about.put("trees_measured", plot.measured()).put("trees_counted", plot.counted());
        about.put("share_inside", plot.inside());
        values(plot).forEach((name, value) -> JsonNumbers.put(about, name, value));
        JsonNumbers.putText(about, "reason", reason(plot));
    }

    private static void geometry(ObjectNode feature, @Nullable Position at) {
        if (at == null) {
            feature.putNull("geometry");
        } else {
            feature.putObject("geometry")
                    .put("type", "Point")
                    .putArray("coordinates")
                    .add(at.longitude())
                    .add(at.latitude());
        }
    }

    /** Values by names with their units, such as {@code volume_m3_per_ha}. */
    private Map<String, Double> values(PlotResult plot) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (UnitSystem system : UnitSystem.values()) {
            plot.perHa()
                    .forEach((a, v) -> values.put(
                            name(a, system),
                            a.unit(Basis.PER_AREA, UnitSystem.METRIC).convert(v, a.unit(Basis.PER_AREA, system))));
        }
        return values;
    }

    private String name(Attribute attribute, UnitSystem system) {
        String unit = Wording.unitSymbol(result.design(), attribute, Basis.PER_AREA, system)
                .toLowerCase(Locale.ROOT)
                .replace("/", "_per_");
        return attribute == Attribute.TREES ? unit : attribute.id() + "_" + unit;
    }

    private static String reason(PlotResult plot) {
        return String.join("; ", plot.reasons());
    }
}
