package quadmean.audit;

import java.util.Optional;
import quadmean.stats.PairedDifference;
import quadmean.stats.PairedDifference.Equivalence;
import quadmean.units.Attribute;

/**
 * What the differences between crew and checker do to the value of plots and stand.
 *
 * @param attribute the attribute
 * @param paired crew less checker, per hectare, plot by plot
 * @param meanChecked mean of the checker's plots (per hectare)
 * @param equivalence whether the mean difference is shown to lie inside the margin; empty without a margin
 * @param standTotal estimate of the stand as cruised, in the metric unit of the total; NaN if there is none
 * @param reason why there is nothing to compare; empty if there is
 */
public record ValueCheck(
        Attribute attribute,
        PairedDifference paired,
        double meanChecked,
        Optional<Equivalence> equivalence,
        double standTotal,
        String reason) {

    /** Nothing to compare. */
    static ValueCheck none(Attribute attribute, String reason) {
        PairedDifference empty = PairedDifference.of(new double[0]);
        return new ValueCheck(attribute, empty, Double.NaN, Optional.empty(), Double.NaN, reason);
    }

    /** Mean difference in percent of the checker's mean. */
    public double percent() {
        return 100 * paired.mean() / meanChecked;
    }

    /** The stand's total times the ratio of checked to cruised plots. */
    public double standAsChecked() {
        return standTotal * meanChecked / (meanChecked + paired.mean());
    }
}
