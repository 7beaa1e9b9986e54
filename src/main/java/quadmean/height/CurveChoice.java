package quadmean.height;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quadmean.model.CurveForm;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;
import quadmean.units.Unit;

/** Chooses a curve: the form asked for, or the converged one with the smallest AICc. */
final class CurveChoice {
    private CurveChoice() {}

    static SpeciesCurve pooled(List<Tree> trees, HeightSettings settings) {
        List<Tree> measured = measured(trees);
        List<CurveFit> fits = fitAll(List.of(CurveForm.values()), measured, settings);
        Optional<CurveFit> best = best(fits);
        String reason = best.map(f -> "all species together: " + f.form().label() + " has the smallest AICc")
                .orElse("no form fits the " + measured.size() + " heights of all species together");
        HeightCurve curve =
                best.map(f -> curve(SpeciesCurve.POOLED, f, measured, settings)).orElse(null);
        return new SpeciesCurve(SpeciesCurve.POOLED, measured.size(), fits, curve, reason);
    }

    static SpeciesCurve forSpecies(String species, List<Tree> trees, SpeciesCurve pooled, HeightSettings settings) {
        List<Tree> measured = measured(trees);
        if (measured.size() < settings.minHeights()) {
            String why = String.format(
                    Locale.ROOT,
                    "%d heights, %d needed for a curve of its own",
                    measured.size(),
                    settings.minHeights());
            return fallBack(species, measured.size(), List.of(), pooled, why);
        }
        CurveForm wanted = settings.formBySpecies().get(species);
        List<CurveForm> forms = wanted == null ? List.of(CurveForm.values()) : List.of(wanted);
        List<CurveFit> fits = fitAll(forms, measured, settings);
        Optional<CurveFit> best = best(fits);
        if (best.isEmpty()) {
            return fallBack(species, measured.size(), fits, pooled, "no usable fit");
        }
        CurveFit fit = best.get();
        String reason = fit.form().label() + (wanted == null ? " has the smallest AICc" : " as the design asks");
        return new SpeciesCurve(species, measured.size(), fits, curve(species, fit, measured, settings), reason);
    }

    private static SpeciesCurve fallBack(
            String species, int heights, List<CurveFit> fits, SpeciesCurve pooled, String why) {
        HeightCurve curve = pooled.chosen();
        String then = curve == null ? "and no pooled curve either: heights stay unknown" : "pooled curve used";
        return new SpeciesCurve(species, heights, fits, curve, why + "; " + then);
    }

    private static List<CurveFit> fitAll(List<CurveForm> forms, List<Tree> measured, HeightSettings settings) {
        double[] d = diameters(measured, settings);
        double[] h = measured.stream()
                .mapToDouble(t ->
                        Unit.METRE.convert(height(t).metres(), settings.units().length()))
                .toArray();
        return forms.stream()
                .map(form -> CurveFitter.fit(form, d, h, settings.breastHeight()))
                .toList();
    }

    private static Optional<CurveFit> best(List<CurveFit> fits) {
        return fits.stream()
                .filter(f -> f.status() == FitStatus.CONVERGED)
                .min(Comparator.comparingDouble(CurveFit::aicc));
    }

    private static HeightCurve curve(String species, CurveFit fit, List<Tree> measured, HeightSettings settings) {
        double[] d = measured.stream().mapToDouble(Tree::dbhCm).toArray();
        return new HeightCurve(
                species,
                fit.form(),
                Objects.requireNonNull(fit.fit(), "a converged fit has an optimum")
                        .parameters(),
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

    static double[] diameters(List<Tree> trees, HeightSettings settings) {
        return trees.stream()
                .mapToDouble(
                        t -> Unit.CENTIMETRE.convert(t.dbhCm(), settings.units().diameter()))
                .toArray();
    }
}
