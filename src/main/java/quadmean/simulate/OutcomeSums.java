package quadmean.simulate;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.estimate.EstimateRow;
import quadmean.model.IntervalRule;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * Sums over cruises of one attribute. Blocks of cruises have sums of their own, which are added in the order of the blocks, so that no
 * digit depends on the number of threads. Powers are of deviations from the truth, so that none is lost to size.
 */
final class OutcomeSums {
    private static final int CLASSES = 60;
    /** The histogram reaches so many standard deviations to either side. */
    private static final double SPREAD = 4;

    private final Attribute attribute;
    private final Basis basis;
    private final double truth;
    private final double sd;
    private final double step;
    private final double[] powers = new double[5];
    private final long[] classes = new long[CLASSES];
    private final Map<IntervalRule, Limits> limits = new EnumMap<>(IntervalRule.class);
    private long without;
    private long errors;
    private double se;
    private double variance;
    private double deviation;
    private double product;
    private double square;

    /** Limits of one kind. */
    private static final class Limits {
        private long all;
        private long below;
        private long above;
        private double half;
    }

    /**
     * Empty sums.
     *
     * @param truth true value
     * @param sd about how far estimates scatter, for the classes of the histogram; NaN if that is not known yet
     * @param step what estimates are whole multiples of; 0 where they may be anything. Classes hold whole numbers of steps, or some
     *     would hold more than their neighbours by their width alone
     */
    OutcomeSums(Attribute attribute, Basis basis, double truth, double sd, double step, Set<IntervalRule> rules) {
        this.attribute = attribute;
        this.basis = basis;
        this.truth = truth;
        this.step = step;
        this.sd = sd > 0 ? sd : 1e-9 * Math.max(Math.abs(truth), 1e-9);
        rules.forEach(r -> limits.put(r, new Limits()));
    }

    /** Empty sums of the same kind. */
    OutcomeSums empty() {
        return new OutcomeSums(attribute, basis, truth, sd, step, limits.keySet());
    }

    /** Empty sums whose histogram goes by the scatter of these. */
    OutcomeSums sized(Set<IntervalRule> rules) {
        return new OutcomeSums(attribute, basis, truth, sd(), step, rules);
    }

    boolean isOf(EstimateRow row) {
        return row.attribute() == attribute && row.basis() == basis;
    }

    /** Adds a cruise: its rows by rule. */
    void add(Map<IntervalRule, List<EstimateRow>> rows) {
        boolean isFirst = true;
        for (Map.Entry<IntervalRule, Limits> limit : limits.entrySet()) {
            EstimateRow row = rows.getOrDefault(limit.getKey(), List.of()).stream()
                    .filter(this::isOf)
                    .findFirst()
                    .orElseThrow();
            if (isFirst) {
                estimate(row);
                isFirst = false;
            }
            limits(limit.getValue(), row);
        }
    }

    private void estimate(EstimateRow row) {
        double d = row.mean() - truth;
        if (!Double.isFinite(d)) {
            without++;
            return;
        }
        double power = 1;
        for (int k = 0; k < powers.length; k++) {
            powers[k] += power;
            power *= d;
        }
        int at = (int) Math.floor((row.mean() - low()) / width());
        classes[Math.max(0, Math.min(CLASSES - 1, at))]++;
        if (Double.isFinite(row.se())) {
            errors++;
            se += row.se();
            variance += row.se() * row.se();
            deviation += d;
            square += d * d;
            product += d * row.se();
        }
    }

    /** Lower end of the histogram: nothing that is estimated here lies far below zero. */
    private double low() {
        double low = Math.max(0, truth - SPREAD * sd);
        return step > 0 ? (Math.floor(low / step) - 0.5) * step : low;
    }

    private double width() {
        double width = (truth + SPREAD * sd - Math.max(0, truth - SPREAD * sd)) / CLASSES;
        return step > 0 ? Math.ceil(width / step) * step : width;
    }

    private void limits(Limits sums, EstimateRow row) {
        if (Double.isFinite(row.lower()) && Double.isFinite(row.upper())) {
            sums.all++;
            sums.below += row.upper() < truth ? 1 : 0;
            sums.above += row.lower() > truth ? 1 : 0;
            sums.half += (row.upper() - row.lower()) / 2;
        }
    }

    /** Adds the sums of a later block. */
    void add(OutcomeSums later) {
        for (int k = 0; k < powers.length; k++) {
            powers[k] += later.powers[k];
        }
        for (int c = 0; c < CLASSES; c++) {
            classes[c] += later.classes[c];
        }
        without += later.without;
        errors += later.errors;
        se += later.se;
        variance += later.variance;
        deviation += later.deviation;
        square += later.square;
        product += later.product;
        limits.forEach((rule, sums) -> {
            Limits more = later.limits.getOrDefault(rule, new Limits());
            sums.all += more.all;
            sums.below += more.below;
            sums.above += more.above;
            sums.half += more.half;
        });
    }

    /** Standard deviation of the estimates. */
    double sd() {
        double n = powers[0];
        return Math.sqrt(Math.max(0, (powers[2] - powers[1] * powers[1] / n) / (n - 1)));
    }

    AttributeOutcome outcome() {
        double n = powers[0];
        double m = powers[1] / n;
        double m2 = powers[2] / n - m * m;
        double m3 = powers[3] / n - 3 * m * powers[2] / n + 2 * m * m * m;
        double m4 = powers[4] / n - 4 * m * powers[3] / n + 6 * m * m * powers[2] / n - 3 * m * m * m * m;
        double spread = sd();
        List<Coverage> coverages = limits.entrySet().stream()
                .map(e -> coverage(e.getKey(), e.getValue()))
                .toList();
        return new AttributeOutcome(
                attribute,
                basis,
                truth,
                (long) n,
                without,
                truth + m,
                spread,
                Math.sqrt(Math.max(0, m4 - m2 * m2) / n) / (2 * spread),
                m3 / Math.pow(m2, 1.5),
                se / errors,
                variance / errors,
                correlation(),
                coverages,
                new Histogram(low(), width(), Arrays.stream(classes).boxed().toList()));
    }

    private static Coverage coverage(IntervalRule rule, Limits l) {
        return new Coverage(rule, l.all, l.all - l.below - l.above, l.below, l.above, l.half / l.all);
    }

    private double correlation() {
        double n = errors;
        double both = product - deviation * se / n;
        return both / Math.sqrt((square - deviation * deviation / n) * (variance - se * se / n));
    }
}
