package quadmean.volume;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quadmean.model.FelledTree;
import quadmean.stats.LinearFit;
import quadmean.units.UnitSystem;

/**
 * One form fitted to felled trees.
 *
 * @param form the form
 * @param weights the weights used
 * @param units units of the coefficients
 * @param trees the trees
 * @param status what came of it
 * @param remark why there is no equation, or what to mind; empty if nothing
 * @param fit the regression; null with too few trees
 * @param fitted fitted volumes (m³), one for each tree; NaN where unknown
 * @param deleted the volumes (m³) that fits without the tree itself predict; NaN where unknown
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record VolumeFit(
        VolumeFitForm form,
        VolumeFitWeights weights,
        UnitSystem units,
        List<FelledTree> trees,
        VolumeFitStatus status,
        String remark,
        @Nullable LinearFit fit,
        double[] fitted,
        double[] deleted) {
    private static final int LEVERAGE_RULE = 3;
    private static final int COOK_RULE = 4;

    public VolumeFit {
        trees = List.copyOf(trees);
    }

    /** Whether the form gave an equation. */
    public boolean isUsable() {
        return status == VolumeFitStatus.FITTED;
    }

    /** Residual standard deviation on the scale of the regression; NaN without one. */
    public double sigma() {
        return fit == null ? Double.NaN : fit.sigma();
    }

    /** R², where it compares with others': for V and ln V with intercept and equal weights; else NaN. */
    public double rSquared() {
        boolean means =
                form.isLogarithmic() || (form == VolumeFitForm.COMBINED_VARIABLE && weights == VolumeFitWeights.EQUAL);
        return means && fit != null && fit.hasFullRank() ? fit.rSquared() : Double.NaN;
    }

    /** Root mean square of observed volume minus the volume that a fit without the tree predicts (m³). */
    public double leaveOneOutM3() {
        return Math.sqrt(IntStream.range(0, trees.size())
                .mapToDouble(i -> trees.get(i).volumeM3() - deleted[i])
                .map(e -> e * e)
                .average()
                .orElse(Double.NaN));
    }

    /** The same of the differences in percent of the observed volumes. */
    public double leaveOneOutPercent() {
        return 100
                * Math.sqrt(IntStream.range(0, trees.size())
                        .mapToDouble(i -> 1 - deleted[i] / trees.get(i).volumeM3())
                        .map(e -> e * e)
                        .average()
                        .orElse(Double.NaN));
    }

    /** How much the fitted volumes of all trees together are too high, in percent; negative if too low. */
    public double biasPercent() {
        return VolumeBias.percent(this, IntStream.range(0, trees.size()).toArray());
    }

    /** The same by dbh class. */
    public List<VolumeBias> biasByClass() {
        return VolumeBias.byClass(this);
    }

    /** Cook's distance above which a tree counts as influential: 4/n (common practice, no source). */
    public double cookLimit() {
        return (double) COOK_RULE / trees.size();
    }

    /** Leverage above which a tree counts as influential: 3p/n (common practice, no source). */
    public double leverageLimit() {
        return (double) LEVERAGE_RULE * form.coefficients().size() / trees.size();
    }

    /** Positions of the trees that move the fit most, in the order of the table. */
    public List<Integer> influential() {
        LinearFit regression = fit;
        return regression == null || !regression.hasFullRank()
                ? List.of()
                : IntStream.range(0, trees.size())
                        .filter(i ->
                                regression.cook(i) > cookLimit() || regression.leverages()[i] > leverageLimit())
                        .boxed()
                        .toList();
    }
}
