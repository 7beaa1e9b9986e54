package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;
import quadmean.volume.EquationBook;

/** The parts of the error that come from the scatter of trees about curves and equations, and from the equations themselves. */
final class Modelling {
    private static final double LN_10 = Math.log(10);

    private final List<TreeEffect> effects;
    private final double areaHa;

    /**
     * Parts of a stand.
     *
     * @param areaHa area of the stand (ha)
     */
    Modelling(List<TreeEffect> effects, double areaHa) {
        this.effects = effects;
        this.areaHa = areaHa;
    }

    /**
     * Scatter of heights about the curves. A filled tree has the mean height of its size and no scatter of its own, so that plots do not
     * show it; but each tree of the stand scatters for itself, and over all of them it averages out: the sum over the trees that a
     * sampled tree stands for, k of them on the area A, has the variance k·s², and the mean per hectare that over A². Under a regression
     * a plot may stand for less than nothing, k being negative: what it adds is taken off.
     */
    ErrorPart heightScatter() {
        double variance = 0;
        for (TreeEffect e : effects) {
            double sd = e.tree().scatterSdM();
            if (sd > 0 && e.treesPerHa() != 0) {
                variance += Math.pow(e.perMetre() * sd, 2) / (e.treesPerHa() * areaHa);
            }
        }
        return new ErrorPart(
                Source.HEIGHT_SCATTER,
                Kind.ADDED,
                variance,
                "Each tree of the stand whose height is taken from a curve has its own; over all of them that averages out.");
    }

    /** Scatter of trees about the equations, the same way; exp(σ²) - 1 is the relative variance of a lognormal value. */
    ErrorPart equationScatter(Attribute attribute, EquationBook volumes) {
        double variance = 0;
        List<String> without = new ArrayList<>();
        for (TreeEffect e : effects) {
            String species = e.tree().tree().species();
            double sd = attribute == Attribute.VOLUME
                    ? volumes.find(species).map(v -> naturalSd(v.spec())).orElse(0.0)
                    : 0;
            if (sd == 0 && !without.contains(species)) {
                without.add(species);
            }
            if (sd > 0 && e.treesPerHa() != 0) {
                variance += e.value() * e.value() * Math.expm1(sd * sd) / (e.treesPerHa() * areaHa);
            }
        }
        String unknown = without.isEmpty()
                ? ""
                : "not stated for "
                        + String.join(", ", without.stream().sorted().toList());
        return variance == 0
                ? new ErrorPart(
                        Source.EQUATION_SCATTER,
                        Kind.UNKNOWN,
                        Double.NaN,
                        "Not known, and not in the total: no residual_sd for " + attribute.label() + ".")
                : new ErrorPart(
                        Source.EQUATION_SCATTER,
                        Kind.ADDED,
                        variance,
                        "From the residual_sd of the equations" + (unknown.isEmpty() ? "" : " (" + unknown + ")")
                                + "; over the trees of the stand it averages out.");
    }

    private static double naturalSd(VolumeSpec spec) {
        return spec.residualSd() * (spec.logBase() == VolumeSpec.LogBase.TEN ? LN_10 : 1);
    }

    /** An error that all volumes share. */
    static ErrorPart equations(double mean, double percent) {
        return Double.isNaN(percent)
                ? new ErrorPart(
                        Source.EQUATIONS,
                        Kind.UNKNOWN,
                        Double.NaN,
                        "Not known, and not in the total; state equation_sd under [errors] (percent).")
                : new ErrorPart(
                        Source.EQUATIONS,
                        Kind.ADDED,
                        Math.pow(mean * percent / 100, 2),
                        String.format(
                                Locale.ROOT,
                                "An error that all volumes by the equations share, standard deviation %.3g %% as the design"
                                        + " says; plots do not show it.",
                                percent));
    }
}
