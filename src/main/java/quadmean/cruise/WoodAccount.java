package quadmean.cruise;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import quadmean.model.Tree;
import quadmean.model.ValidRange;
import quadmean.units.Attribute;
import quadmean.volume.CutLog;
import quadmean.volume.NoLogs;
import quadmean.volume.ScaledLog;
import quadmean.volume.TreeEquation;

/** What could not be worked out of the wood of trees, and what was worked out on thin ground. */
final class WoodAccount {
    /** More trees than this are counted and not named. */
    private static final int MOST_NAMED = 12;

    private final Map<Attribute, TreeSet<String>> missing = new EnumMap<>(Attribute.class);
    private final Map<String, List<String>> withoutValue = new LinkedHashMap<>();
    private final Map<NoLogs, Integer> withoutLogs = new EnumMap<>(NoLogs.class);
    private final Map<String, List<String>> outside = new TreeMap<>();
    private final TreeSet<String> unpriced = new TreeSet<>();
    private int logs;
    private int logsBesideTable;
    private double feet;
    private double feetBesideTable;

    /** Notes why an attribute is not known of a tree. */
    double missing(Attribute attribute, String why) {
        missing.computeIfAbsent(attribute, k -> new TreeSet<>()).add(why);
        return Double.NaN;
    }

    /** Notes a tree for which an equation has no value, so that it counts with none. */
    double withoutValue(Attribute attribute, TreeEquation.Gap gap, Tree tree) {
        withoutValue
                .computeIfAbsent(attribute.label() + ", as " + gap.label(), k -> new ArrayList<>())
                .add(tree.label());
        return 0;
    }

    /** Notes a tree outside the range that an equation was made from. */
    void range(String equation, ValidRange range, Tree tree, double heightM) {
        if (range.excludes(tree.dbhCm(), heightM)) {
            outside.computeIfAbsent(equation, k -> new ArrayList<>()).add(tree.label());
        }
    }

    void noLogs(NoLogs reason, Tree tree) {
        withoutLogs.merge(reason, tree.detail().count(), Integer::sum);
    }

    /** Notes a log: what it was scaled by. */
    void log(int trees, ScaledLog scaled) {
        logs += trees;
        feet += trees * scaled.boardFeet();
        if (scaled.besideTable()) {
            logsBesideTable += trees;
            feetBesideTable += trees * scaled.boardFeetBesideTable();
        }
    }

    void unpriced(CutLog log, Tree tree) {
        unpriced.add(log.product() + " of " + tree.species());
    }

    /** For attributes that are not known of every tree, why. */
    Map<Attribute, String> missing() {
        Map<Attribute, String> why = new EnumMap<>(Attribute.class);
        reasons().forEach((attribute, reasons) -> why.put(attribute, String.join("; ", reasons)));
        return why;
    }

    /** The same reasons one by one. */
    Map<Attribute, Set<String>> reasons() {
        Map<Attribute, Set<String>> why = new EnumMap<>(Attribute.class);
        missing.forEach((attribute, reasons) -> alike(attribute)
                .forEach(a -> why.computeIfAbsent(a, k -> new LinkedHashSet<>()).addAll(reasons)));
        return why;
    }

    /** What is not known either where an attribute is not. */
    private static List<Attribute> alike(Attribute attribute) {
        return switch (attribute) {
            case VOLUME -> List.of(Attribute.VOLUME, Attribute.GREEN_WEIGHT);
            case BIOMASS -> List.of(Attribute.BIOMASS, Attribute.CARBON);
            case BOARD_FEET -> List.of(Attribute.BOARD_FEET, Attribute.NET_BOARD_FEET);
            case LOG_VOLUME ->
                List.of(
                        Attribute.LOG_VOLUME,
                        Attribute.NET_LOG_VOLUME,
                        Attribute.BOARD_FEET,
                        Attribute.NET_BOARD_FEET,
                        Attribute.VALUE);
            default -> List.of(attribute);
        };
    }

    /** What is odd about the trees noted since the last call, without their names. */
    List<String> takeRemarks() {
        if (withoutValue.isEmpty() && outside.isEmpty()) {
            return List.of();
        }
        List<String> remarks = new ArrayList<>();
        withoutValue.keySet().forEach(what -> remarks.add("with no " + what + ", counted with none"));
        outside.keySet()
                .forEach(
                        equation -> remarks.add("outside the sizes that an equation was made from (" + equation + ")"));
        withoutValue.clear();
        outside.clear();
        return remarks;
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        withoutValue.forEach((what, trees) -> notes.add(count(trees.size()) + " with no " + what
                + (trees.size() == 1 ? ", which counts with none: " : ", which count with none: ") + named(trees)
                + "."));
        outside.forEach((equation, trees) -> notes.add(count(trees.size())
                + " outside the sizes that an equation was made from (" + equation + "): " + named(trees) + "."));
        if (!withoutLogs.isEmpty()) {
            List<String> reasons = new ArrayList<>();
            withoutLogs.forEach((reason, n) -> reasons.add(n + " " + reason.label()));
            int trees = withoutLogs.values().stream().mapToInt(n -> n).sum();
            notes.add("No log is cut from " + count(trees) + (trees == 1 ? " that counts" : " that count")
                    + " in volume: " + String.join(", ", reasons) + ".");
        }
        if (logsBesideTable > 0) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%d of %d logs lie outside the table of the log rule and were scaled by the formula that stands in for"
                            + " it: %.1f %% of the board feet tallied.",
                    logsBesideTable,
                    logs,
                    100 * feetBesideTable / feet));
        }
        if (!unpriced.isEmpty()) {
            notes.add("No price, and so no value: " + String.join(", ", unpriced) + ".");
        }
        return notes;
    }

    private static String count(int trees) {
        return trees + (trees == 1 ? " tree" : " trees");
    }

    private static String named(List<String> trees) {
        List<String> first = trees.subList(0, Math.min(MOST_NAMED, trees.size()));
        int more = trees.size() - first.size();
        return String.join(", ", first) + (more == 0 ? "" : " and " + more + " more");
    }
}
