package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Attribute;

/** The volume equations in use, where they come from and whether anybody checked them. */
final class VolumeSection {
    private VolumeSection() {}

    static String markup(CruiseResult result) {
        Html html = new Html().section("volume", "Volume equations");
        if (result.equations().isEmpty()) {
            return html.element("p", "No volume equation was used: volumes are unknown.")
                    .endSection()
                    .toString();
        }
        String standing = Wording.standing(result, Attribute.VOLUME, "*");
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
                        Cell.text("Source"),
                        Cell.text("Standing")));
        for (Map.Entry<String, VolumeSpec> entry : new TreeMap<>(result.equations()).entrySet()) {
            table.row(row(entry.getKey(), entry.getValue()));
        }
        return html.raw(table.markup()).endSection().toString();
    }

    private static List<Cell> row(String species, VolumeSpec spec) {
        String stated = spec.code().equals(species) ? "" : " (as " + spec.code() + ")";
        return List.of(
                Cell.text(species + stated),
                Cell.text(spec.form().formula() + logarithm(spec)),
                Cell.text(coefficients(spec)),
                Cell.text("D " + spec.dbhUnit().label() + ", H "
                        + spec.heightUnit().label() + ", V " + spec.volumeUnit().label()),
                Cell.text("Coefficients: " + spec.source() + ". Form: "
                        + spec.form().source() + "."),
                Cell.markup("<span class=\"tag " + (spec.standing() == Standing.VERIFIED ? "good" : "doubt") + "\">"
                        + Html.escape(spec.standing().label()) + "</span>"));
    }

    private static String logarithm(VolumeSpec spec) {
        if (spec.form() != VolumeForm.SCHUMACHER_HALL) {
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
        return String.join(", ", parts);
    }
}
