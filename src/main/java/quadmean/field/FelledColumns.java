package quadmean.field;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.HeaderUnits;
import quadmean.design.Nearest;
import quadmean.model.Rule;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Finds the columns of a table of felled trees: as the options say, or by the names in its header. */
final class FelledColumns {
    private static final Set<String> VOLUME_WORDS =
            Set.of("volume", "vol", "v", "totalvolume", "totvol", "stemvolume", "cubicvolume", "treevolume");

    private final List<String> header;
    private final FelledOptions options;
    private final FileProblems problems;
    private final Map<ColumnRole, String> guess;

    private FelledColumns(List<String> header, FelledOptions options, FileProblems problems) {
        this.header = header;
        this.options = options;
        this.problems = problems;
        this.guess =
                ColumnGuess.of(header.stream().filter(name -> !isOfPoint(name)).toList());
    }

    /**
     * A column in use.
     *
     * @param name its name in the header
     * @param unit unit of a measured one
     */
    record Column(String name, @Nullable Unit unit) {}

    /** The columns by what they hold; what is missing is noted, and then the measured ones are not all there. */
    static Map<FelledOptions.Measure, Column> find(List<String> header, FelledOptions options, FileProblems problems) {
        return new FelledColumns(header, options, problems).find();
    }

    private Map<FelledOptions.Measure, Column> find() {
        Map<FelledOptions.Measure, Column> columns = new EnumMap<>(FelledOptions.Measure.class);
        Set<String> names = new HashSet<>();
        for (FelledOptions.Measure measure : FelledOptions.Measure.values()) {
            column(measure).ifPresent(c -> {
                columns.put(measure, c);
                if (!names.add(c.name())) {
                    wrong(
                            measure,
                            c.name(),
                            "the column \"" + c.name() + "\" cannot hold two things; --" + measure.option()
                                    + " is one of them");
                    columns.remove(measure);
                }
            });
        }
        return columns;
    }

    private Optional<Column> column(FelledOptions.Measure measure) {
        String asked = options.columns().get(measure);
        if (asked != null) {
            return asked(measure, asked);
        }
        boolean isOptional = measure == FelledOptions.Measure.TREE;
        if (!isOptional && !options.needs(measure)) {
            return Optional.empty();
        }
        String guessed = measure == FelledOptions.Measure.VOLUME ? volume() : guess.get(measure.role());
        if (guessed == null) {
            if (options.needs(measure)) {
                wrong(
                        measure,
                        "",
                        "no column is plainly the " + measure.option() + "; name it with --" + measure.option()
                                + "; the header has " + String.join(", ", header));
            }
            return Optional.empty();
        }
        return withUnit(measure, guessed, null);
    }

    /** A column of points must be named, and is then no dbh, whatever it is called. */
    private boolean isOfPoint(String name) {
        return options.columns().entrySet().stream()
                .filter(e -> e.getKey().isOfPoint())
                .anyMatch(e -> e.getValue().equals(name) || e.getValue().startsWith(name + ":"));
    }

    /** NAME or NAME:UNIT; a header that has the whole text is taken at its word. */
    private Optional<Column> asked(FelledOptions.Measure measure, String asked) {
        int colon = asked.lastIndexOf(':');
        Quantity quantity = measure.quantity();
        Optional<Unit> unit = quantity == null || colon < 0 || header.contains(asked)
                ? Optional.empty()
                : Unit.parse(quantity, asked.substring(colon + 1).strip());
        String name = unit.isPresent() ? asked.substring(0, colon) : asked;
        int at = header.indexOf(name);
        if (at >= 0 && header.lastIndexOf(name) == at) {
            return withUnit(measure, name, unit.orElse(null));
        }
        String hint = at >= 0
                ? "the header has \"" + name + "\" twice"
                : "no column \"" + name + "\" for " + measure.option() + "; "
                        + Nearest.to(name, header)
                                .map(n -> "did you mean \"" + n + "\"?")
                                .orElse("the header has " + String.join(", ", header));
        wrong(measure, name, hint);
        return Optional.empty();
    }

    private Optional<Column> withUnit(FelledOptions.Measure measure, String name, @Nullable Unit said) {
        Quantity quantity = measure.quantity();
        if (quantity == null) {
            return Optional.of(new Column(name, null));
        }
        Function<String, Optional<Unit>> reader =
                quantity == Quantity.VOLUME ? HeaderUnits::volume : HeaderUnits::length;
        Unit shown = reader.apply(name).orElse(said);
        if (shown == null) {
            String units = String.join(
                    ", ", Unit.of(quantity).stream().map(Unit::symbol).toList());
            wrong(
                    measure,
                    name,
                    "the unit of \"" + name + "\" is not known; write --" + measure.option() + " \"" + name
                            + ":UNIT\" with one of " + units);
            return Optional.empty();
        }
        if (said != null && said != shown) {
            wrong(
                    measure,
                    name,
                    "the header says " + shown.symbol() + ", --" + measure.option() + " says " + said.symbol());
            return Optional.empty();
        }
        return Optional.of(new Column(name, shown));
    }

    private @Nullable String volume() {
        return header.stream()
                .filter(name -> header.indexOf(name) == header.lastIndexOf(name))
                .filter(name -> VOLUME_WORDS.contains(
                        HeaderUnits.bare(name).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "")))
                .findFirst()
                .orElse(null);
    }

    private void wrong(FelledOptions.Measure measure, String column, String detail) {
        problems.add(Rule.FELLED_COLUMN, 1, column.isEmpty() ? measure.option() : column, "", detail);
    }

    /** The columns in words, for outputs. */
    static List<String> words(Map<FelledOptions.Measure, Column> columns) {
        List<String> words = new ArrayList<>();
        columns.forEach((measure, c) -> words.add(measure.option() + " \"" + c.name() + "\""
                + (c.unit() == null ? "" : " (" + c.unit().symbol() + ")")));
        return words;
    }
}
