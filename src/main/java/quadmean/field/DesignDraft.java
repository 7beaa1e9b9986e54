package quadmean.field;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quadmean.design.ColumnRole;
import quadmean.design.HeaderUnits;
import quadmean.design.TomlText;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/**
 * A design drafted from a tally: what the header and the first rows show is filled in, what only people know is marked.
 *
 * @param text the design; empty if the tally cannot be read
 * @param gaps lines that a person must fill in
 * @param problems what was found of the tally's form, and why it cannot be read
 */
public record DesignDraft(String text, List<String> gaps, List<Problem> problems) {
    /** The words that mark what a person must fill in. */
    public static final String GAP = "# FILL IN";

    private static final int MOST_SPECIES = 100;
    private static final List<ColumnRole> NEEDED = List.of(ColumnRole.PLOT, ColumnRole.SPECIES, ColumnRole.DBH);

    public DesignDraft {
        gaps = List.copyOf(gaps);
        problems = List.copyOf(problems);
    }

    /**
     * Drafts a design.
     *
     * @param tally the tally
     * @param path its path as the design should write it
     * @throws IOException if the tally cannot be read
     */
    public static DesignDraft of(Path tally, String path) throws IOException {
        TallySketch sketch = TallySketch.of(tally);
        if (sketch.header().isEmpty() || sketch.problems().stream().anyMatch(p -> p.policy() == Policy.REFUSE)) {
            return new DesignDraft("", List.of(), sketch.problems());
        }
        String text = new Writer(sketch).write(tally, path);
        return new DesignDraft(text, text.lines().filter(l -> l.contains(GAP)).toList(), sketch.problems());
    }

    /** Writes the draft line by line. */
    private static final class Writer {
        private final TallySketch sketch;
        private final Map<ColumnRole, String> columns;
        private final Set<String> strata;
        private final List<String> lines = new ArrayList<>();

        Writer(TallySketch sketch) {
            this.sketch = sketch;
            this.columns = ColumnGuess.of(sketch.header());
            this.strata = new TreeSet<>(sketch.entries(columns.getOrDefault(ColumnRole.STRATUM, "")));
            if (strata.size() < 2) {
                strata.clear();
                columns.remove(ColumnRole.STRATUM);
            }
        }

        String write(Path tally, String path) {
            String name = String.valueOf(tally.getFileName());
            Set<Unit> units = lengths();
            boolean us = units.contains(Unit.INCH) || units.contains(Unit.FOOT);
            add("# Drafted from " + TomlText.comment(name) + ": its header and " + "the first "
                    + sketch.rows().size() + " data rows were looked at.");
            add(
                    "# Lines with the mark FILL IN are for you; the rest is guessed: read it over. Keys: designs/README.md");
            add("schema = 1", "", "[cruise]", "name = " + TomlText.quoted(name));
            if (units.isEmpty()) {
                gap("units = \"?\"", "metric or us; areas are then in ha or ac");
            } else {
                add("units = " + TomlText.quoted(us ? "us" : "metric") + "   # as the headers have it; or "
                        + (us ? "metric" : "us"));
            }
            if (strata.isEmpty()) {
                gap("area = 0", "area of the stand, " + areaUnit(units, us));
                plotList();
            } else {
                add("", "[selection]", "method = \"stratified\"   # or \"stratified_systematic\"");
                strata.forEach(code -> {
                    add("", "[[stratum]]", "code = " + TomlText.quoted(code));
                    gap("area = 0", areaUnit(units, us));
                });
            }
            plot(us);
            add("", "[[tally]]", "file = " + TomlText.quoted(path));
            sketch.settings().forEach(this::add);
            add("", "[tally.columns]");
            columns();
            species();
            add("", "# Volumes need an equation of yours for each species: see [volume.CODE] in designs/README.md.");
            return String.join("\n", lines) + "\n";
        }

        private static String areaUnit(Set<Unit> units, boolean us) {
            return units.isEmpty() ? "ac or ha, as units says" : us ? "ac" : "ha";
        }

        /** Plots without trees are easily forgotten: the list of all plots brings them to light. */
        private void plotList() {
            Set<String> plots = new TreeSet<>(sketch.entries(columns.getOrDefault(ColumnRole.PLOT, "")));
            if (!plots.isEmpty() && plots.stream().allMatch(p -> p.matches("[1-9]\\d{0,4}"))) {
                int last = plots.stream().mapToInt(Integer::parseInt).max().orElseThrow();
                int first = plots.stream().mapToInt(Integer::parseInt).min().orElseThrow();
                add("", "[selection]");
                add("plots = [\"" + first + "-" + last
                        + "\"]   # every plot laid out? those without trees belong here too");
            }
        }

        private Set<Unit> lengths() {
            return columns.values().stream()
                    .map(HeaderUnits::length)
                    .flatMap(Optional::stream)
                    .collect(Collectors.toSet());
        }

        private void plot(boolean us) {
            add("", "[plot]");
            gap("kind = \"?\"", "point (prism or gauge), fixed, or nested with [[plot.ring]]; and its size, as below");
            add(
                    "# basal_area_factor = " + (us ? "20   # of a point, ft2/ac" : "4   # of a point, m2/ha"),
                    "# area = "
                            + (us
                                    ? "0.1   # of a fixed plot, ac; or radius = ..., ft"
                                    : "0.04   # of a fixed plot, ha; or radius = ..., m"));
        }

        private void columns() {
            for (ColumnRole needed : NEEDED) {
                boolean girth = needed == ColumnRole.DBH && columns.containsKey(ColumnRole.GIRTH);
                if (!columns.containsKey(needed) && !girth) {
                    columns.put(needed, "");
                }
            }
            columns.forEach(this::column);
            List<String> rest = sketch.header().stream()
                    .filter(name -> !columns.containsValue(name))
                    .map(TomlText::comment)
                    .toList();
            if (!rest.isEmpty()) {
                add("# not in use: " + String.join(", ", rest));
            }
        }

        private void column(ColumnRole role, String name) {
            String key = role.key() + " = ";
            if (!role.measure().hasUnit()) {
                line(key + TomlText.quoted(name), name.isEmpty() ? "name of the column" : "");
                return;
            }
            Optional<String> unit = role.measure() == ColumnRole.Measure.LENGTH
                    ? HeaderUnits.length(name).map(Unit::symbol)
                    : HeaderUnits.angle(name).map(AngleScale::id);
            boolean thickness = role == ColumnRole.DBH || role == ColumnRole.GIRTH;
            String classes = thickness && sketch.entries(name).stream().anyMatch(Numbers::isClass)
                    ? ", classes = \"midpoint\""
                    : "";
            String column = key + "{ name = " + TomlText.quoted(name) + ", unit = " + TomlText.quoted(unit.orElse("?"))
                    + classes + " }";
            String wanted = role.measure() == ColumnRole.Measure.LENGTH
                    ? "unit: mm, cm, m, in or ft"
                    : "unit: percent, deg or topo";
            line(column, name.isEmpty() ? "name of the column, and its unit" : unit.isPresent() ? "" : wanted);
        }

        private void species() {
            Map<String, Integer> rows = new TreeMap<>();
            sketch.entries(columns.getOrDefault(ColumnRole.SPECIES, ""))
                    .forEach(code -> rows.merge(code, 1, Integer::sum));
            rows.remove("*");
            if (rows.isEmpty() || rows.size() > MOST_SPECIES) {
                return;
            }
            add(
                    "",
                    "# Species in the rows looked at. A code that is a slip belongs under recode_from of the right one.");
            new LinkedHashMap<>(rows).forEach((code, n) -> {
                add("[species." + TomlText.quoted(code) + "]   # " + n + (n == 1 ? " row" : " rows"));
                add("name = " + TomlText.quoted(code) + "   # name for people", "");
            });
            lines.remove(lines.size() - 1);
        }

        private void add(String... more) {
            lines.addAll(List.of(more));
        }

        private void gap(String line, String what) {
            add(line + "   " + GAP + ": " + what);
        }

        private void line(String line, String gap) {
            if (gap.isEmpty()) {
                add(line);
            } else {
                gap(line, gap);
            }
        }
    }
}
