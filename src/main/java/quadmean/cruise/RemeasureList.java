package quadmean.cruise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Expansion;
import quadmean.estimate.StandEstimate;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.model.FieldHeight;
import quadmean.model.Plot;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Stratum;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.volume.EquationBook;
import quadmean.volume.TreeEquation;

/**
 * The trees that are worth measuring again, most harmful first: by what their doubt does to the volume of the stand, not by
 * the doubt alone.
 */
final class RemeasureList {
    /** Rules whose breach is settled in the woods and not at the desk. */
    private static final Set<Rule> IN_THE_WOODS = EnumSet.of(
            Rule.READING_UNUSABLE,
            Rule.HEIGHT_OFF_CURVE,
            Rule.HEIGHT_IMPOSSIBLE,
            Rule.UNIT_SLIP,
            Rule.RATIO_UNLIKELY,
            Rule.DBH_UNLIKELY,
            Rule.TREE_TOO_FAR,
            Rule.RING_WRONG);

    private final Design design;
    private final CurveTable curves;
    private final EquationBook equations;
    private final double standM3;
    private final Map<String, List<Problem>> problems = new HashMap<>();
    private final Map<String, Double> perTreePerHa = new HashMap<>();

    private RemeasureList(
            Design design, Tally tally, CurveTable curves, EquationBook equations, StandEstimate estimate) {
        this.design = design;
        this.curves = curves;
        this.equations = equations;
        this.standM3 = estimate.row(EstimateRow.ALL, EstimateRow.ALL, Attribute.VOLUME, Basis.TOTAL)
                .map(EstimateRow::mean)
                .orElse(Double.NaN);
        tally.problems().stream()
                .filter(p -> IN_THE_WOODS.contains(p.rule()))
                .forEach(p -> problems.computeIfAbsent(p.file() + ":" + p.row(), k -> new ArrayList<>())
                        .add(p));
        for (Stratum stratum : design.stratumList()) {
            long plots = tally.plots().stream()
                    .filter(p -> p.stratum().equals(stratum.code()))
                    .count();
            perTreePerHa.put(stratum.code(), stratum.areaHa() / plots);
        }
    }

    static List<Remeasure> of(
            Design design, Tally tally, CurveTable curves, EquationBook equations, StandEstimate estimate) {
        RemeasureList list = new RemeasureList(design, tally, curves, equations, estimate);
        List<Remeasure> found = new ArrayList<>();
        for (Plot plot : tally.plots()) {
            double hectares = list.perTreePerHa.getOrDefault(plot.stratum(), Double.NaN)
                    / design.exceptions().inside(plot.id());
            plot.trees().forEach(t -> list.consider(t, hectares, found));
        }
        found.sort(Comparator.comparingDouble((Remeasure r) -> Double.isNaN(r.effectM3()) ? -1 : r.effectM3())
                .reversed());
        return found;
    }

    private void consider(Tree tree, double hectares, List<Remeasure> found) {
        List<Problem> own = problems.getOrDefault(tree.file() + ":" + tree.row(), List.of());
        FieldHeight field = tree.height();
        List<String> remarks = field == null ? List.of() : field.remarks();
        if (own.isEmpty() && remarks.isEmpty()) {
            return;
        }
        HeightedTree heighted = curves.fill(tree);
        double doubt = doubt(heighted, own);
        double stems = Expansion.treesPerHa(design.plot(), tree.dbhCm())
                * tree.detail().times()
                * hectares;
        boolean wholeTree = own.stream()
                .anyMatch(p ->
                        p.rule() == Rule.DBH_UNLIKELY || p.rule() == Rule.TREE_TOO_FAR || p.rule() == Rule.RING_WRONG);
        boolean counts =
                design.counting().counts(Attribute.VOLUME, tree.detail().status(), tree.dbhCm());
        double effect = counts ? stems * (wholeTree ? volume(heighted, 0) : swing(heighted, doubt)) : 0;
        found.add(new Remeasure(
                heighted,
                doubt,
                effect,
                100 * effect / standM3,
                own.stream().map(Problem::detail).toList(),
                remarks));
    }

    /** How far the height may be off (m): by its readings, or where the curve had to fill it by the curve and its scatter. */
    private static double doubt(HeightedTree heighted, List<Problem> own) {
        FieldHeight field = heighted.tree().height();
        if (field != null) {
            return field.sdM();
        }
        return own.isEmpty() ? Double.NaN : heighted.standardErrorM();
    }

    /** Half of what the volume of one tree moves between the height plus and minus its doubt (m³). */
    private double swing(HeightedTree heighted, double doubt) {
        return Math.abs(volume(heighted, doubt) - volume(heighted, -doubt)) / 2;
    }

    private double volume(HeightedTree heighted, double shift) {
        Tree tree = heighted.tree();
        return equations
                .find(tree.species())
                .map(e -> volume(e, tree.dbhCm(), heighted.heightM() + shift))
                .orElse(Double.NaN);
    }

    private static double volume(TreeEquation equation, double dbhCm, double heightM) {
        return heightM > 0 ? equation.volumeM3(dbhCm, heightM) : 0;
    }
}
