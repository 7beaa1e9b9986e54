package quadmean.height;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.model.CurveForm;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;
import quadmean.units.Unit;

/** Finds a curve for a set of trees: its own, or a borrowed one where it has too few heights or no usable fit. */
final class CurveChoice {
    private final HeightSettings settings;
    private final List<CurveForm> forms;

    /**
     * A choice among forms.
     *
     * @param forms the forms to try
     */
    CurveChoice(HeightSettings settings, List<CurveForm> forms) {
        this.settings = settings;
        this.forms = forms;
    }

    SpeciesCurve pooled(List<Tree> trees) {
        List<Tree> measured = measured(trees);
        List<CurveFit> fits = fitAll(forms, trees);
        Optional<CurveRule.Choice> best =
                CurveRule.choose(fits, settings.units().length());
        String reason = best.map(CurveRule.Choice::reason)
                .orElse("no form fits the " + measured.size() + " heights of all species together");
        HeightCurve curve = best.map(c -> curve(SpeciesCurve.POOLED, CurveScope.POOLED, c.fit(), measured))
                .orElse(null);
        return new SpeciesCurve(SpeciesCurve.POOLED, CurveScope.POOLED, measured.size(), fits, curve, null, reason);
    }

    /**
     * The curve of a species or group.
     *
     * @param code its code
     * @param trees its trees
     * @param lender where it borrows if need be
     */
    SpeciesCurve search(String code, CurveScope scope, List<Tree> trees, SpeciesCurve lender) {
        List<Tree> measured = measured(trees);
        if (measured.size() < settings.minHeights()) {
            String why = String.format(
                    Locale.ROOT,
                    "%d %s, %d needed for a curve of its own",
                    measured.size(),
                    measured.size() == 1 ? "height" : "heights",
                    settings.minHeights());
            return borrow(code, scope, measured, List.of(), lender, why);
        }
        CurveForm wanted =
                scope == CurveScope.SPECIES ? settings.formBySpecies().get(code) : null;
        List<CurveFit> fits = fitAll(wanted == null ? forms : List.of(wanted), trees);
        Optional<CurveRule.Choice> best =
                CurveRule.choose(fits, settings.units().length());
        if (best.isEmpty()) {
            return borrow(code, scope, measured, fits, lender, "no usable fit");
        }
        String reason = wanted == null ? best.get().reason() : wanted.label() + " as the design asks";
        HeightCurve curve = curve(code, scope, best.get().fit(), measured);
        PlotCalibration calibration = scope == CurveScope.SPECIES ? calibration(curve, measured) : null;
        return new SpeciesCurve(code, scope, measured.size(), fits, curve, calibration, reason);
    }

    private @Nullable PlotCalibration calibration(HeightCurve curve, List<Tree> measured) {
        return switch (settings.calibration()) {
            case NEVER -> null;
            case WHERE_IT_HELPS -> PlotCalibration.judge(curve, measured);
        };
    }

    private SpeciesCurve borrow(
            String code, CurveScope scope, List<Tree> measured, List<CurveFit> fits, SpeciesCurve lender, String why) {
        HeightCurve lent = lender.chosen();
        if (lent == null) {
            String then = why + "; and no pooled curve either: heights stay unknown";
            return new SpeciesCurve(code, scope, measured.size(), fits, null, null, then);
        }
        SpeciesRatio ratio = scope == CurveScope.SPECIES ? ratio(lent, measured) : SpeciesRatio.NONE;
        String whose = lent.scope() == CurveScope.POOLED ? "pooled curve" : "curve of group " + lent.species();
        return new SpeciesCurve(
                code,
                scope,
                measured.size(),
                fits,
                lent.scaled(ratio),
                null,
                why + "; " + whose + " used " + ratio.words());
    }

    private static SpeciesRatio ratio(HeightCurve lent, List<Tree> measured) {
        double breastHeight = lent.units().length().convert(lent.breastHeight(), Unit.METRE);
        return SpeciesRatio.of(measured.stream()
                .mapToDouble(t -> (height(t).metres() - breastHeight) / (lent.heightMetres(t.dbhCm()) - breastHeight))
                .toArray());
    }

    private List<CurveFit> fitAll(List<CurveForm> candidates, List<Tree> trees) {
        List<Tree> measured = measured(trees);
        double[] d = diameters(measured);
        double[] h = measured.stream()
                .mapToDouble(t ->
                        Unit.METRE.convert(height(t).metres(), settings.units().length()))
                .toArray();
        double smallest = Arrays.stream(diameters(trees)).min().orElse(Double.NaN);
        CurveFitter fitter = CurveFitter.of(d, h, settings.breastHeight(), smallest, settings.weights());
        return candidates.parallelStream().map(fitter::fit).toList();
    }

    private HeightCurve curve(String code, CurveScope scope, CurveFit fit, List<Tree> measured) {
        double[] d = measured.stream().mapToDouble(Tree::dbhCm).toArray();
        return new HeightCurve(
                code,
                scope,
                fit,
                SpeciesRatio.NONE,
                settings.units(),
                settings.breastHeight(),
                d.length,
                Arrays.stream(d).min().orElseThrow(),
                Arrays.stream(d).max().orElseThrow());
    }

    static List<Tree> measured(List<Tree> trees) {
        return trees.stream().filter(t -> t.height() != null).toList();
    }

    static FieldHeight height(Tree tree) {
        return Objects.requireNonNull(tree.height(), () -> "tree " + tree.label() + " has no field height");
    }

    private double[] diameters(List<Tree> trees) {
        return trees.stream()
                .mapToDouble(
                        t -> Unit.CENTIMETRE.convert(t.dbhCm(), settings.units().diameter()))
                .toArray();
    }
}
