package quadmean.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import quadmean.model.Rule;

/**
 * One table of a design file. Each question for a key makes the key known; {@link #close} reports those nobody asked for.
 * Problems are collected, and a harmless value stands in for a bad one, so that one reading finds them all.
 */
final class Section {
    private final TomlTable table;
    private final String path;
    private final TomlPosition position;
    private final ProblemLog log;
    private final Set<String> known = new LinkedHashSet<>();

    private Section(TomlTable table, String path, TomlPosition position, ProblemLog log) {
        this.table = table;
        this.path = path;
        this.position = position;
        this.log = log;
    }

    static Section root(TomlTable table, ProblemLog log) {
        return new Section(table, "", TomlPosition.positionAt(1, 1), log);
    }

    String path() {
        return path;
    }

    /** Keys present, in file order. */
    Set<String> keys() {
        return table.keySet();
    }

    /** Makes keys known that are read elsewhere. */
    void knows(String... keys) {
        known.addAll(List.of(keys));
    }

    boolean has(String key) {
        known.add(key);
        return table.keySet().contains(key);
    }

    void problem(Rule rule, String key, String value, String detail) {
        log.add(rule, positionOf(key), name(key), value, detail);
    }

    Optional<String> text(String key) {
        return typed(key, String.class, "text in quotes");
    }

    String requiredText(String key) {
        Optional<String> found = text(key);
        if (found.isPresent() && found.get().isBlank()) {
            problem(Rule.DESIGN_VALUE, key, "", name(key) + " must not be empty");
        }
        return found.orElseGet(() -> has(key) ? "" : missing(key, "text in quotes", ""));
    }

    OptionalDouble number(String key, Range range) {
        if (!has(key)) {
            return OptionalDouble.empty();
        }
        if (!(table.get(List.of(key)) instanceof Number n)) {
            wrongType(key, "a number");
            return OptionalDouble.empty();
        }
        double value = n.doubleValue();
        if (!range.holds(value)) {
            problem(Rule.DESIGN_VALUE, key, show(value), name(key) + " = " + show(value) + " is not " + range.label());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    double number(String key, Range range, double defaultValue) {
        return number(key, range).orElse(defaultValue);
    }

    double requiredNumber(String key, Range range) {
        if (!has(key)) {
            return missing(key, range.label(), 1.0);
        }
        return number(key, range).orElse(1.0);
    }

    Optional<Long> whole(String key) {
        return typed(key, Long.class, "a whole number");
    }

    /** One of several words; the problem names the nearest. */
    <T> Optional<T> choice(String key, Map<String, T> options) {
        Optional<String> word = text(key);
        if (word.isEmpty()) {
            return Optional.empty();
        }
        @Nullable T found = options.get(word.get());
        if (found == null) {
            String hint = Nearest.to(word.get(), options.keySet())
                    .map(w -> "; did you mean \"" + w + "\"?")
                    .orElse("");
            problem(
                    Rule.DESIGN_VALUE,
                    key,
                    word.get(),
                    name(key) + " = \"" + word.get() + "\" is not one of " + String.join(", ", options.keySet())
                            + hint);
        }
        return Optional.ofNullable(found);
    }

    <T> Optional<T> requiredChoice(String key, Map<String, T> options) {
        if (!has(key)) {
            missing(key, "one of " + String.join(", ", options.keySet()), "");
            return Optional.empty();
        }
        return choice(key, options);
    }

    List<String> texts(String key) {
        if (!has(key)) {
            return List.of();
        }
        if (!(table.get(List.of(key)) instanceof TomlArray array)
                || !array.toList().stream().allMatch(String.class::isInstance)) {
            wrongType(key, "a list of texts, such as [\"1-12\", \"20\"]");
            return List.of();
        }
        return array.toList().stream().map(String.class::cast).toList();
    }

    /** A list of numbers; empty, with the problem noted, if it is missing or anything else. */
    List<Double> requiredNumbers(String key, Range range) {
        if (!has(key)) {
            return missing(key, "a list of numbers, such as [6, 8, 10]", List.of());
        }
        return numbers(key, table.get(List.of(key)), range, "a list of numbers, such as [6, 8, 10]");
    }

    /** A list of lists of numbers; empty, with the problem noted, if it is missing or anything else. */
    List<List<Double>> requiredNumberRows(String key, Range range) {
        String wanted = "a list of lists of numbers, such as [[1, 2], [3, 4]]";
        if (!has(key)) {
            return missing(key, wanted, List.of());
        }
        if (!(table.get(List.of(key)) instanceof TomlArray array)
                || array.isEmpty()
                || !array.toList().stream().allMatch(TomlArray.class::isInstance)) {
            wrongType(key, wanted);
            return List.of();
        }
        List<List<Double>> rows = array.toList().stream()
                .map(row -> numbers(key, row, range, wanted))
                .toList();
        return rows.stream().anyMatch(List::isEmpty) ? List.of() : rows;
    }

    private List<Double> numbers(String key, @Nullable Object value, Range range, String wanted) {
        if (!(value instanceof TomlArray array)
                || array.isEmpty()
                || !array.toList().stream().allMatch(Number.class::isInstance)) {
            wrongType(key, wanted);
            return List.of();
        }
        List<Double> numbers =
                array.toList().stream().map(n -> ((Number) n).doubleValue()).toList();
        List<Double> wrong = numbers.stream().filter(n -> !range.holds(n)).toList();
        wrong.forEach(n -> problem(
                Rule.DESIGN_VALUE, key, show(n), name(key) + " has " + show(n) + ", which is not " + range.label()));
        return wrong.isEmpty() ? numbers : List.of();
    }

    /** A list of numbers, those outside the range reported and left out; empty if it is not there. */
    List<Double> numbers(String key, Range range) {
        if (!has(key)) {
            return List.of();
        }
        if (!(table.get(List.of(key)) instanceof TomlArray array)
                || !array.toList().stream().allMatch(Number.class::isInstance)) {
            wrongType(key, "a list of numbers, such as [16, 12]");
            return List.of();
        }
        List<Double> values = new ArrayList<>();
        for (Object item : array.toList()) {
            double value = ((Number) item).doubleValue();
            if (range.holds(value)) {
                values.add(value);
            } else {
                problem(
                        Rule.DESIGN_VALUE,
                        key,
                        show(value),
                        name(key) + " has " + show(value) + ", which is not " + range.label());
            }
        }
        return values;
    }

    /** Whether a list stands there with nothing in it. */
    boolean isEmptyList(String key) {
        return has(key) && table.get(List.of(key)) instanceof TomlArray array && array.isEmpty();
    }

    /** A table that must be there; an empty one stands in if it is not. */
    Section requiredTable(String key) {
        if (!has(key)) {
            missing(key, "a table [" + name(key) + "]", "");
        }
        return table(key);
    }

    /** A table, empty if it is not there; what would be missing in something else than a table is not reported too. */
    Section table(String key) {
        if (has(key)) {
            if (table.get(List.of(key)) instanceof TomlTable child) {
                return new Section(child, name(key), positionOf(key), log);
            }
            wrongType(key, "a table [" + name(key) + "]");
            return new Section(org.tomlj.Toml.parse(""), name(key), position, new ProblemLog(""));
        }
        return new Section(org.tomlj.Toml.parse(""), name(key), position, log);
    }

    /** All tables under a key, such as {@code [species.DF]}. */
    Map<String, Section> tables(String key) {
        Section parent = table(key);
        Map<String, Section> children = new LinkedHashMap<>();
        parent.keys().forEach(k -> children.put(k, parent.table(k)));
        return children;
    }

    /** An array of tables, such as {@code [[stratum]]}; empty if there is none. */
    List<Section> tableList(String key) {
        List<Section> sections = new ArrayList<>();
        if (!has(key)) {
            return sections;
        }
        if (!(table.get(List.of(key)) instanceof TomlArray array)
                || !array.toList().stream().allMatch(TomlTable.class::isInstance)) {
            wrongType(key, "a list of tables [[" + name(key) + "]]");
            return sections;
        }
        for (int i = 0; i < array.size(); i++) {
            sections.add(new Section(array.getTable(i), name(key), array.inputPositionOf(i), log));
        }
        return sections;
    }

    boolean isText(String key) {
        return has(key) && table.get(List.of(key)) instanceof String;
    }

    boolean isTable(String key) {
        return has(key) && table.get(List.of(key)) instanceof TomlTable;
    }

    /** Reports keys that nobody asked for, with the nearest known one. */
    void close() {
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                String hint = Nearest.to(key, known)
                        .map(k -> "did you mean \"" + k + "\"?")
                        .orElse("known here: " + String.join(", ", known));
                problem(Rule.DESIGN_KEY, key, key, "there is no key \"" + name(key) + "\"; " + hint);
            }
        }
    }

    private <T> Optional<T> typed(String key, Class<T> type, String wanted) {
        if (!has(key)) {
            return Optional.empty();
        }
        Object value = table.get(List.of(key));
        if (!type.isInstance(value)) {
            wrongType(key, wanted);
            return Optional.empty();
        }
        return Optional.of(type.cast(value));
    }

    private <T> T missing(String key, String wanted, T standIn) {
        log.add(Rule.DESIGN_MISSING, position, name(key), "", "\"" + name(key) + "\" is missing: " + wanted);
        return standIn;
    }

    private void wrongType(String key, String wanted) {
        Object value = table.get(List.of(key));
        String shown = value instanceof TomlTable ? "a table" : value instanceof TomlArray ? "a list" : "" + value;
        problem(Rule.DESIGN_TYPE, key, shown, name(key) + " must be " + wanted);
    }

    private TomlPosition positionOf(String key) {
        TomlPosition at = table.inputPositionOf(List.of(key));
        return at == null ? position : at;
    }

    private String name(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** A number as people write it. */
    static String show(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.valueOf(value);
    }
}
