package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import quadmean.audit.CheckCruise;
import quadmean.audit.Reading;
import quadmean.audit.TreeMatch;
import quadmean.model.Tree;
import quadmean.units.Basis;

/** Trees and plots of a check cruise with all digits, in the units of the design. */
final class AuditCsv {
    private AuditCsv() {}

    static Content trees(CheckCruise check) {
        AuditText text = new AuditText(check);
        List<String> header =
                new ArrayList<>(List.of("plot", "crew", "match", "tree", "check_tree", "species", "check_species"));
        for (Reading r : Reading.values()) {
            String unit = r == Reading.DEFECT ? "pct" : text.unit(r);
            header.addAll(List.of(r.id() + "_" + unit, "check_" + r.id() + "_" + unit, r.id() + "_within"));
        }
        return Csv.of(header, check.matches().stream().map(m -> row(check, text, m)));
    }

    private static List<String> row(CheckCruise check, AuditText text, TreeMatch m) {
        Tree ours = m.cruised();
        Tree theirs = m.checked();
        List<String> row = new ArrayList<>(List.of(
                m.plot(),
                m.crew(),
                m.kind().id(),
                ours == null ? "" : ours.number(),
                theirs == null ? "" : theirs.number(),
                ours == null ? "" : ours.species(),
                theirs == null ? "" : theirs.species()));
        for (Reading r : Reading.values()) {
            OptionalDouble a = value(r, ours);
            OptionalDouble b = value(r, theirs);
            row.add(number(text, r, a));
            row.add(number(text, r, b));
            row.add(r.limit(check.settings().tolerances())
                    .filter(l -> a.isPresent() && b.isPresent())
                    .map(l -> l.holds(a.getAsDouble(), b.getAsDouble()) ? "yes" : "no")
                    .orElse(""));
        }
        return row;
    }

    private static OptionalDouble value(Reading r, @Nullable Tree tree) {
        return tree == null ? OptionalDouble.empty() : r.of(tree);
    }

    private static String number(AuditText text, Reading r, OptionalDouble value) {
        return value.isPresent() ? Csv.number(text.in(r, value.getAsDouble())) : "";
    }

    static Content plots(CheckCruise check) {
        AuditText text = new AuditText(check);
        String unit = check.value().attribute().id() + "_"
                + text.valueUnit(Basis.PER_AREA).symbol().replace('/', '_');
        return Csv.of(
                List.of(
                        "plot",
                        "stratum",
                        "crew",
                        "matched",
                        "missed",
                        "extra",
                        "counted_apart",
                        unit,
                        "check_" + unit),
                check.plots().stream()
                        .map(p -> List.of(
                                p.plot(),
                                p.stratum(),
                                p.crew(),
                                Integer.toString(p.matched()),
                                Integer.toString(p.missed()),
                                Integer.toString(p.extra()),
                                Integer.toString(p.countedApart()),
                                Csv.number(text.value(p.cruised(), Basis.PER_AREA)),
                                Csv.number(text.value(p.checked(), Basis.PER_AREA)))));
    }
}
