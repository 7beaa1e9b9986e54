package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.cruise.WoodUsed;
import quadmean.design.Design;
import quadmean.model.BarkSpec;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.TaperSpec;
import quadmean.model.VolumeSpec;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;

/** What logs, board feet, weight and carbon were worked out with: source and standing of each. */
final class WoodSources {
    private final Design design;
    private final HtmlTable table = HtmlTable.of(
            "Behind logs, board feet, weight and carbon",
            List.of(Cell.text("What"), Cell.text("Of"), Cell.text("How"), Cell.text("Source"), Cell.text("Standing")));

    private WoodSources(Design design) {
        this.design = design;
    }

    static String markup(Design design, WoodUsed used) {
        WoodSources sources = new WoodSources(design);
        sources.fill(used);
        return sources.table.isEmpty() ? "" : sources.table.markup();
    }

    private void fill(WoodUsed used) {
        used.rule().ifPresent(r -> row("Log rule", "all logs", r.label(), new Provenance(r.source(), r.standing())));
        used.boardFeet().forEach((s, spec) -> boardFeet(s, spec));
        used.tapers().forEach(this::taper);
        used.greenWeights().forEach((s, g) -> row("Green weight", s, weight(g.kgPerM3()), g.provenance()));
        used.biomass()
                .forEach((s, b) -> row(
                        "Dry biomass, " + b.component(),
                        s,
                        b.form().formula() + ", d in cm; " + numbers(b.coefficients()),
                        b.provenance()));
        used.carbon()
                .ifPresent(c ->
                        row("Carbon", "all species", Wording.plain(c.share()) + " of dry biomass", c.provenance()));
    }

    private void boardFeet(String species, VolumeSpec spec) {
        row(
                "Board feet",
                species,
                spec.form().formula() + "; " + spec.unitsText() + "; " + numbers(spec.coefficients()),
                new Provenance(spec.source(), spec.standing()));
    }

    private void taper(String species, TaperSpec spec) {
        List<String> coefficients = new ArrayList<>();
        for (int i = 0; i < spec.coefficients().size(); i++) {
            coefficients.add(spec.form().coefficients().get(i) + " = "
                    + Wording.plain(spec.coefficients().get(i)));
        }
        row(
                "Stem profile",
                species,
                spec.form().formula() + "; " + String.join(", ", coefficients) + ". Form: "
                        + spec.form().source() + "." + (spec.bark().isPresent() ? "" : " Inside bark as it stands."),
                spec.provenance());
        spec.bark().ifPresent(b -> row("Bark", species, bark(b), b.provenance()));
    }

    private static String bark(BarkSpec b) {
        String power = b.b() == 1
                ? ""
                : "^" + Wording.plain(b.b()) + ", in " + b.unit().label();
        return "inside = " + Wording.plain(b.a()) + "·outside" + power;
    }

    private String weight(double kgPerM3) {
        return Rounding.constant(kgPerM3) + " kg/m³ (" + Rounding.constant(lbPerFt3(kgPerM3)) + " lb/ft³)";
    }

    static double lbPerFt3(double kgPerM3) {
        return Unit.KILOGRAMS_PER_CUBIC_METRE.convert(kgPerM3, Unit.POUNDS_PER_CUBIC_FOOT);
    }

    private static String numbers(List<Double> coefficients) {
        return String.join(", ", coefficients.stream().map(Wording::plain).toList());
    }

    private void row(String what, String of, String how, Provenance provenance) {
        String name = design.species().containsKey(of) ? Names.species(design, of) : of;
        table.row(List.of(
                Cell.text(what),
                Cell.text(name),
                Cell.text(how),
                Cell.text(provenance.source()),
                standing(provenance.standing())));
    }

    static Cell standing(Standing standing) {
        return Cell.markup("<span class=\"tag " + (standing == Standing.VERIFIED ? "good" : "doubt") + "\">"
                + Html.escape(standing.label()) + "</span>");
    }
}
