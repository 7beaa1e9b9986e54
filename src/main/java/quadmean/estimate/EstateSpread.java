package quadmean.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import quadmean.model.EstateStand;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Robust;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/**
 * How the stands of an estate differ in an attribute and in how well it is known.
 *
 * @param attribute the attribute
 * @param means stands by their mean per unit area, in the unit that was asked for
 * @param errors stands by their sampling error (percent)
 * @param stands stands with plots
 * @param known how many of them have a sampling error
 * @param withinTarget how many of those meet the target
 * @param medianErrorPercent median of the sampling errors (percent); NaN where there are none
 * @param largest the stands with the largest totals, the largest first
 * @param worst the stands with the largest sampling errors, the largest first
 */
public record EstateSpread(
        Attribute attribute,
        Bins means,
        Bins errors,
        int stands,
        int known,
        int withinTarget,
        double medianErrorPercent,
        List<StandLine> largest,
        List<StandLine> worst) {
    /** Stands in each of the lists. */
    public static final int LISTED = 20;

    public EstateSpread {
        largest = List.copyOf(largest);
        worst = List.copyOf(worst);
    }

    /**
     * A stand of the lists.
     *
     * @param stand the stand
     * @param plots its plots
     * @param perArea its mean per hectare
     * @param total its total
     */
    public record StandLine(EstateStand stand, int plots, EstimateRow perArea, EstimateRow total) {}

    /** Numbers of a stand that it is sorted by; kept so that they are worked out once. */
    private record Figures(int stand, double mean, double total, double errorPercent) {}

    /**
     * The spread of an attribute over the stands of an estate.
     *
     * @param attribute an attribute that the estate estimates
     * @param units unit system of the classes of means
     * @param targetPercent allowed sampling error (percent)
     * @param confidence confidence level, in (0, 1)
     */
    public static EstateSpread of(
            EstateEstimator estate, Attribute attribute, UnitSystem units, double targetPercent, double confidence) {
        List<Figures> figures = IntStream.range(0, estate.size())
                .parallel()
                .filter(i -> estate.plots(i) > 0)
                .mapToObj(i -> figures(estate, i, attribute, confidence))
                .toList();
        var metric = attribute.unit(Basis.PER_AREA, UnitSystem.METRIC);
        var shown = attribute.unit(Basis.PER_AREA, units);
        double[] errors = figures.stream()
                .mapToDouble(Figures::errorPercent)
                .filter(Double::isFinite)
                .toArray();
        return new EstateSpread(
                attribute,
                Bins.of(figures.stream()
                        .mapToDouble(f -> metric.convert(f.mean(), shown))
                        .toArray()),
                Bins.of(errors),
                figures.size(),
                errors.length,
                (int) figures.stream()
                        .filter(f -> f.errorPercent() <= targetPercent)
                        .count(),
                Robust.median(errors),
                top(estate, figures, attribute, Figures::total),
                top(estate, figures, attribute, Figures::errorPercent));
    }

    private static Figures figures(EstateEstimator estate, int i, Attribute attribute, double confidence) {
        MeanEstimate mean = estate.perHectare(i, EstimateRow.ALL, attribute);
        return new Figures(
                i, mean.mean(), mean.mean() * estate.stand(i).areaHa(), mean.samplingErrorPercent(confidence));
    }

    private static List<StandLine> top(
            EstateEstimator estate, List<Figures> figures, Attribute attribute, ToDoubleFunction<Figures> by) {
        List<StandLine> lines = new ArrayList<>();
        figures.stream()
                .filter(f -> Double.isFinite(by.applyAsDouble(f)))
                .sorted(Comparator.comparingDouble(by).reversed())
                .limit(LISTED)
                .forEach(f -> lines.add(line(estate, f.stand(), attribute)));
        return lines;
    }

    private static StandLine line(EstateEstimator estate, int i, Attribute attribute) {
        List<EstimateRow> rows = estate.rows(i, EstimateRow.ALL);
        return new StandLine(
                estate.stand(i),
                estate.plots(i),
                row(rows, attribute, Basis.PER_AREA),
                row(rows, attribute, Basis.TOTAL));
    }

    private static EstimateRow row(List<EstimateRow> rows, Attribute attribute, Basis basis) {
        return rows.stream()
                .filter(r -> r.attribute() == attribute && r.basis() == basis)
                .findFirst()
                .orElseThrow();
    }
}
