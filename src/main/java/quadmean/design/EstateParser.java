package quadmean.design;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.design.EstateSettings.StandColumn;
import quadmean.model.EstateOnePlot;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.model.Stratum;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [estate]}. */
final class EstateParser {
    /** Rules that a few good trees among millions break by chance: listed, and no reason to refuse all the rest. */
    private static final List<Rule> BY_CHANCE =
            List.of(Rule.HEIGHT_OFF_CURVE, Rule.UNIT_SLIP, Rule.RATIO_UNLIKELY, Rule.SPECIES_RECODED);

    private static final Map<String, Unit> AREAS = Options.of(List.of(Unit.HECTARE, Unit.ACRE), Unit::symbol);

    private EstateParser() {}

    static Optional<EstateSettings> parse(Section root, Path file, UnitSystem units) {
        if (!root.has("estate")) {
            return Optional.empty();
        }
        Section s = root.table("estate");
        Map<StandColumn, String> columns = new EnumMap<>(StandColumn.class);
        Section names = s.requiredTable("columns");
        columns.put(StandColumn.STAND, names.requiredText("stand"));
        Unit areaUnit = area(names, units, columns);
        for (StandColumn open : List.of(StandColumn.REGION, StandColumn.STRATUM)) {
            names.text(open.key()).ifPresent(name -> columns.put(open, name));
        }
        names.close();
        EstateSettings settings = new EstateSettings(
                path(s, file, "stands", s.requiredText("stands")).orElse(file),
                columns,
                areaUnit,
                s.text("curves").flatMap(name -> path(s, file, "curves", name)),
                PlanParser.whole(s, "heights_per_curve", Range.HEIGHTS_PER_CURVE)
                        .orElse(EstateSettings.USUAL_HEIGHTS),
                s.choice("one_plot", Options.of(EstateOnePlot.values(), EstateOnePlot::id))
                        .orElse(EstateOnePlot.POOL));
        s.close();
        return Optional.of(settings);
    }

    /** The unit that the design states, else that of the header, else that of the design's other areas; a contradiction is noted. */
    private static Unit area(Section names, UnitSystem units, Map<StandColumn, String> columns) {
        Section at = names.isTable("area") ? names.table("area") : names;
        String name = at.requiredText(names.isTable("area") ? "name" : "area");
        columns.put(StandColumn.AREA, name);
        Optional<Unit> header = HeaderUnits.ground(name);
        if (!names.isTable("area")) {
            return header.orElse(units.area());
        }
        Optional<Unit> stated = header.isPresent() ? at.choice("unit", AREAS) : at.requiredChoice("unit", AREAS);
        if (stated.isPresent() && header.isPresent() && !stated.equals(header)) {
            at.problem(
                    Rule.DESIGN_VALUE,
                    "unit",
                    stated.get().symbol(),
                    "the column \"" + name + "\" is in " + header.get().symbol() + " by its name, and in "
                            + stated.get().symbol() + " by the design");
        }
        at.close();
        return stated.or(() -> header).orElse(units.area());
    }

    private static Optional<Path> path(Section s, Path file, String key, String name) {
        try {
            return Optional.of(file.toAbsolutePath().resolveSibling(name).normalize());
        } catch (InvalidPathException e) {
            s.problem(Rule.DESIGN_VALUE, key, name, "this is no file name: " + e.getReason());
            return Optional.empty();
        }
    }

    /** The areas of an estate stand in its table; this one only fills the place that the design of a stand has. */
    static List<StratumEntry> noStrata() {
        return List.of(StratumEntry.of(new Stratum(StrataParser.WHOLE, "estate", 1), List.of()));
    }

    /** The policies of a design, with those of an estate where it says nothing. */
    static Map<Rule, Policy> policies(Map<Rule, Policy> stated, boolean isEstate) {
        Map<Rule, Policy> all = new LinkedHashMap<>();
        if (isEstate) {
            BY_CHANCE.forEach(rule -> all.put(rule, Policy.KEEP));
        }
        all.putAll(stated);
        return all;
    }
}
