package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.WoodUsed;
import quadmean.design.Design;
import quadmean.model.ValidRange;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeTable;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Attribute;
import quadmean.units.Unit;

/** The volume equations in use, where they come from and whether anybody checked them. */
final class VolumeSection {
    private VolumeSection() {}

    static String markup(CruiseResult result) {
        return markup(result.design(), result.used(), result.equations());
    }

    static String markup(Design design, WoodUsed used, Map<String, VolumeSpec> equations) {
        Html html = new Html().section("volume", "Volume equations");
        if (equations.isEmpty()) {
            return html.element("p", "No volume equation was used: volumes are unknown.")
                    .raw(WoodSources.markup(design, used))
                    .endSection()
                    .toString();
        }
        String standing = Wording.standing(used, Attribute.VOLUME, "*");
        if (!standing.isEmpty()) {
            html.element("p", "warn", "In use: " + standing + ". " + Headline.standingMeaning(standing));
        }
        HtmlTable table = HtmlTable.of(
                "Volume of a tree: D dbh, H total height, V volume",
                List.of(
                        Cell.text("Species"),
                        Cell.text("Equation"),
                        Cell.text("Coefficients"),
                        Cell.text("Units"),
                        Cell.text("Fitted to"),
                        Cell.text("Source"),
                        Cell.text("Standing")));
        for (Map.Entry<String, VolumeSpec> entry : new TreeMap<>(equations).entrySet()) {
            table.row(row(entry.getKey(), entry.getValue()));
        }
        return html.raw(table.markup())
                .raw(WoodSources.markup(design, used))
                .endSection()
                .toString();
    }

    private static List<Cell> row(String species, VolumeSpec spec) {
        String stated = spec.code().equals(species) ? "" : " (as " + spec.code() + ")";
        return List.of(
                Cell.text(species + stated),
                Cell.text(spec.form().formula() + logarithm(spec)),
                Cell.text(coefficients(spec)),
                Cell.text(spec.unitsText()),
                Cell.text(sizes(spec)),
                Cell.text((spec.library().isEmpty() ? "" : "Library: " + spec.library() + ". ") + "Coefficients: "
                        + spec.source() + ". Form: " + spec.form().source() + "."),
                WoodSources.standing(spec.standing()));
    }

    /** Limits of the trees that an equation was fitted to, in its own units. */
    private static String sizes(VolumeSpec spec) {
        ValidRange range = spec.range();
        List<String> parts = new ArrayList<>();
        limits("D", range.minDbhCm(), range.maxDbhCm(), Unit.CENTIMETRE, spec.dbhUnit())
                .ifPresent(parts::add);
        limits("H", range.minHeightM(), range.maxHeightM(), Unit.METRE, spec.heightUnit())
                .ifPresent(parts::add);
        return parts.isEmpty() ? "sizes not stated" : String.join(", ", parts);
    }

    private static Optional<String> limits(String what, double min, double max, Unit from, Unit to) {
        if (Double.isNaN(min) && Double.isNaN(max)) {
            return Optional.empty();
        }
        String low = Double.isNaN(min) ? "" : " from " + Wording.plain(from.convert(min, to));
        String high = Double.isNaN(max) ? "" : " to " + Wording.plain(from.convert(max, to));
        return Optional.of(what + low + high + " " + to.label());
    }

    private static String logarithm(VolumeSpec spec) {
        if (!spec.form().isLogarithmic()) {
            return "";
        }
        String base = spec.logBase() == VolumeSpec.LogBase.TEN ? "10" : "e";
        return "; log to base " + base
                + (spec.residualSd() > 0
                        ? "; back-transform corrected for a residual standard deviation of "
                                + Wording.plain(spec.residualSd())
                        : "; back-transform not corrected for bias");
    }

    private static String coefficients(VolumeSpec spec) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < spec.coefficients().size(); i++) {
            parts.add(spec.form().coefficients().get(i) + "\u00a0=\u00a0"
                    + Wording.plain(spec.coefficients().get(i)));
        }
        spec.table().ifPresent(t -> parts.add(table(t)));
        return String.join(", ", parts);
    }

    private static String table(VolumeTable t) {
        String second = t.entry() == VolumeTable.Entry.HEIGHT ? "H" : "L";
        return t.dbh().size() + " × " + t.columns().size() + " volumes, D " + span(t.dbh()) + ", " + second + " "
                + span(t.columns());
    }

    private static String span(List<Double> points) {
        return Wording.plain(points.get(0)) + " to " + Wording.plain(points.get(points.size() - 1));
    }
}
