package quadmean.cruise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import quadmean.design.Design;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.stats.Robust;
import quadmean.units.Unit;

/** Finds diameters far from those of their species, on the log scale and by a scale that outliers do not move. */
final class DbhScreen {
    /** Fewer trees than this show no pattern to be far from: common practice, no source. */
    private static final int LEAST_TREES = 10;

    /** Robust standard deviations: common practice, no source. */
    private static final double FAR = 5;

    /** Diameters of a plantation may be all alike; a spread under five percent is taken for five. */
    private static final double LEAST_SPREAD = 0.05;

    private DbhScreen() {}

    static Map<Tree, Finding> find(Design design, List<Tree> trees) {
        Map<String, List<Tree>> bySpecies = new TreeMap<>();
        trees.forEach(t ->
                bySpecies.computeIfAbsent(t.species(), k -> new ArrayList<>()).add(t));
        Map<Tree, Finding> found = new HashMap<>();
        bySpecies.values().stream()
                .filter(peers -> peers.size() >= LEAST_TREES)
                .forEach(peers -> screen(design, peers, found));
        return found;
    }

    private static void screen(Design design, List<Tree> peers, Map<Tree, Finding> found) {
        double[] logs = peers.stream().mapToDouble(t -> Math.log(t.dbhCm())).toArray();
        double middle = Robust.median(logs);
        double spread = Robust.sd(logs, middle);
        double scale = Math.max(LEAST_SPREAD, spread);
        Unit unit = design.units().diameter();
        for (Tree tree : peers) {
            double off = Math.abs(Math.log(tree.dbhCm()) - middle) / scale;
            if (off <= FAR) {
                continue;
            }
            double usual = Math.exp(middle);
            Optional<String> slip = UnitSlip.explain(
                    tree.dbhCm(), usual, usual * Math.min(1, 2 * scale), UnitSlip.TENFOLD, UnitSlip.INCHES);
            String detail = String.format(
                    Locale.ROOT,
                    "tree %s: dbh %.1f %s; the middle of its species is %.1f %s, %.1f robust standard deviations away%s",
                    tree.label(),
                    Unit.CENTIMETRE.convert(tree.dbhCm(), unit),
                    unit.symbol(),
                    Unit.CENTIMETRE.convert(usual, unit),
                    unit.symbol(),
                    off,
                    slip.map(s -> "; it would fit if " + s + " were confused").orElse(""));
            found.put(
                    tree,
                    new Finding(slip.isPresent() ? Rule.UNIT_SLIP : Rule.DBH_UNLIKELY, Finding.Subject.DBH, detail));
        }
    }
}
