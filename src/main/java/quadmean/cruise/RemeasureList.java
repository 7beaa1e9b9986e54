package quadmean.cruise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Expansion;
import quadmean.estimate.StandEstimate;
import quadmean.height.CurveTable;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Plot;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Stratum;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.stats.Moments;
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
    private final Tally tally;
    private final CurveTable curves;
    private final EquationBook equations;
    private final double standM3;
    private final Map<String, List<Problem>> problems = new HashMap<>();
    private final Map<String, Double> perTreePerHa = new HashMap<>();

    private RemeasureList(
            Design design, Tally tally, CurveTable curves, EquationBook equations, StandEstimate estimate) {
        this.design = design;
        this.tally = tally;
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
                * tree.detail().count()
                * hectares;
        boolean wholeTree = own.stream()
                .anyMatch(p ->
                        p.rule() == Rule.DBH_UNLIKELY || p.rule() == Rule.TREE_TOO_FAR || p.rule() == Rule.RING_WRONG);
        double effect = stems * (wholeTree ? volume(heighted, 0) : swing(heighted, doubt));
        found.add(new Remeasure(
                heighted,
                doubt,
                effect,
                100 * effect / standM3,
                own.stream().map(Problem::detail).toList(),
                remarks));
    }

    /** How far the height may be off (m). */
    private double doubt(HeightedTree heighted, List<Problem> own) {
        FieldHeight field = heighted.tree().height();
        if (field != null) {
            return field.sdM();
        }
        if (own.isEmpty() || heighted.source() == HeightSource.NONE) {
            return Double.NaN;
        }
        return scatter(heighted.tree().species());
    }

    /** Standard deviation of the field heights about the curve in use for a species (m). */
    private double scatter(String species) {
        HeightCurve curve = curves.curve(species);
        if (curve == null) {
            return Double.NaN;
        }
        boolean pooled = curve.species().equals(SpeciesCurve.POOLED);
        double[] residuals = TreeChecks.wholeTrees(tally).stream()
                .filter(t -> t.height() != null && (pooled || t.species().equals(species)))
                .mapToDouble(t -> Objects.requireNonNull(t.height()).metres() - curve.heightMetres(t.dbhCm()))
                .toArray();
        return Moments.of(residuals).sd();
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
