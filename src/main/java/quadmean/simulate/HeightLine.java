package quadmean.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import quadmean.model.MappedTree;
import quadmean.model.StandClass;

/**
 * Heights over dbh as a table has them, straight from class to class, with scatter that is lognormal about the height above breast height.
 * Beyond the table the last two classes go on; a species that the table does not name has the line of all.
 */
final class HeightLine {
    private static final double BREAST_HEIGHT_M = 1.3;
    /** Below the table a tree has at least this much above breast height (m). */
    private static final double LEAST_M = 0.1;

    private final Map<String, List<StandClass>> lines;
    private final double scatterPercent;

    private HeightLine(Map<String, List<StandClass>> lines, double scatterPercent) {
        this.lines = lines;
        this.scatterPercent = scatterPercent;
    }

    static HeightLine of(List<StandClass> classes, ForestRules rules) {
        Map<String, List<StandClass>> lines = new TreeMap<>();
        classes.stream()
                .filter(c -> !Double.isNaN(c.heightM()))
                .sorted(Comparator.comparingDouble(StandClass::dbhCm))
                .forEach(c -> {
                    lines.computeIfAbsent(c.species(), s -> new ArrayList<>()).add(c);
                    if (!c.species().isEmpty()) {
                        lines.computeIfAbsent("", s -> new ArrayList<>()).add(c);
                    }
                });
        return new HeightLine(lines, rules.heightScatterPercent());
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    String words() {
        return "Heights that the map does not have are made up from the table, with a scatter of "
                + Plain.of(scatterPercent, 3) + " %.";
    }

    /** The trees, each with a height. */
    List<MappedTree> fill(List<MappedTree> trees, long seed) {
        SplittableRandom random = new SplittableRandom(seed ^ 0x5DEECE66DL);
        return trees.stream()
                .map(t -> Double.isNaN(t.heightM()) ? t.withHeight(height(t, random)) : t)
                .toList();
    }

    private double height(MappedTree tree, SplittableRandom random) {
        List<StandClass> line = lines.getOrDefault(tree.species(), lines.getOrDefault("", List.of()));
        double mean = Math.max(LEAST_M, at(line, tree.dbhCm()) - BREAST_HEIGHT_M);
        return BREAST_HEIGHT_M + mean * Auxiliary.error(scatterPercent, random);
    }

    private static double at(List<StandClass> line, double dbhCm) {
        int last = line.size() - 1;
        if (last == 0) {
            return line.get(0).heightM();
        }
        int k = 0;
        while (k < last - 1 && line.get(k + 1).dbhCm() < dbhCm) {
            k++;
        }
        StandClass a = line.get(k);
        StandClass b = line.get(k + 1);
        double width = b.dbhCm() - a.dbhCm();
        return width == 0 ? a.heightM() : a.heightM() + (b.heightM() - a.heightM()) * (dbhCm - a.dbhCm()) / width;
    }
}
