package quadmean.design;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads {@code [tract]}. */
final class TractParser {
    private static final Map<String, TractFormat> FORMATS = Options.of(TractFormat.values(), TractFormat::id);
    private static final Map<String, Unit> UNITS = Options.of(List.of(Unit.METRE, Unit.FOOT, Unit.CHAIN), Unit::symbol);
    private static final String SYSTEMS =
            "is no map system known here: write EPSG:4326 for longitude and latitude, the EPSG number of a UTM zone, the"
                    + " parameters of another system (\"+proj=...\"), or \"local\"";

    private TractParser() {}

    static Optional<TractSettings> parse(Section root, Path designFile) {
        if (!root.has("tract")) {
            return Optional.empty();
        }
        Section s = root.table("tract");
        String written = s.requiredText("boundary");
        Path path = resolve(s, designFile, written);
        TractFormat format = format(s, written);
        TractSettings settings = new TractSettings(
                path,
                written.substring(Math.max(written.lastIndexOf('/'), written.lastIndexOf('\\')) + 1),
                format,
                system(s, format),
                s.text("stratum_property").filter(p -> !p.isBlank()),
                s.text("outline").orElse("tract"));
        s.close();
        return Optional.of(settings);
    }

    private static Path resolve(Section s, Path designFile, String written) {
        try {
            return designFile.toAbsolutePath().resolveSibling(written).normalize();
        } catch (InvalidPathException e) {
            s.problem(Rule.DESIGN_VALUE, "boundary", written, "this is no file name: " + e.getReason());
            return designFile;
        }
    }

    private static TractFormat format(Section s, String written) {
        if (s.has("format")) {
            return s.choice("format", FORMATS).orElse(TractFormat.GEOJSON);
        }
        Optional<TractFormat> guess = TractFormat.of(written);
        if (guess.isEmpty() && !written.isBlank()) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "format",
                    "",
                    "the ending of " + written + " does not tell how it is written; write format = one of "
                            + String.join(", ", FORMATS.keySet()));
        }
        return guess.orElse(TractFormat.GEOJSON);
    }

    private static MapSystem system(Section s, TractFormat format) {
        MapSystem system = named(s, format);
        if (!(system instanceof MapSystem.LonLat) && !format.takesSystems()) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "crs",
                    s.text("crs").orElse(""),
                    "a file in " + format.id() + " is in longitude and latitude; leave crs out");
        }
        if (!(system instanceof MapSystem.Local) && s.has("unit")) {
            s.problem(Rule.DESIGN_VALUE, "unit", "", "unit is said of local coordinates, crs = \"local\"");
        }
        return system;
    }

    private static MapSystem named(Section s, TractFormat format) {
        Optional<String> crs = s.text("crs").map(String::strip);
        if (crs.isEmpty()) {
            if (format == TractFormat.WKT && !s.has("crs")) {
                s.problem(
                        Rule.DESIGN_MISSING,
                        "crs",
                        "",
                        "WKT does not say its map system; write crs = \"EPSG:4326\" for" + " longitude and latitude");
            }
            return new MapSystem.LonLat();
        }
        String text = crs.get();
        if (text.equals("local")) {
            return new MapSystem.Local(s.requiredChoice("unit", UNITS).orElse(Unit.METRE));
        }
        if (text.startsWith("+proj=")) {
            return new MapSystem.Projected(text);
        }
        return MapSystem.ofEpsg(text).orElseGet(() -> {
            s.problem(Rule.DESIGN_VALUE, "crs", text, "\"" + text + "\" " + SYSTEMS);
            return new MapSystem.LonLat();
        });
    }
}
