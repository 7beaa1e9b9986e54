package quadmean.stats;

import java.util.List;

/**
 * Products of independent estimates: basal area by count times volume per basal area from measured trees, or a count times two
 * such means. Degrees of freedom after Satterthwaite 1946 on the relative variances. Where the measured trees stand on the count
 * plots themselves the factors hang together: {@link DoubleSampling#ratio} has the whole error.
 */
public final class ProductEstimate {
    private ProductEstimate() {}

    /** The two variances in use. */
    public enum Variance {
        /** Squared percent errors add up (Bruce 1961, from memory): to the first order, and a little too large. */
        BRUCE("Bruce"),
        /** Πm² - Π(m² - se²), for two a²·v_b + b²·v_a - v_a·v_b: unbiased for independent factors (Goodman 1960, from memory). */
        GOODMAN("Goodman");

        private final String label;

        Variance(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /**
     * The product.
     *
     * @param factors independent estimates
     * @param form which variance
     * @return the product; n is the smallest of the factors', sd is NaN. Without error where a factor has none or the variance
     *     comes out negative
     */
    public static MeanEstimate of(List<MeanEstimate> factors, Variance form) {
        return of(factors, form, Working.silent());
    }

    /**
     * The same for two factors, step by step: what is known as x, without a unit of the values, and r, which has it.
     *
     * @param working receives the steps; for two factors only
     */
    public static MeanEstimate of(List<MeanEstimate> factors, Variance form, Working working) {
        double product = 1;
        double shrunk = 1;
        int n = Integer.MAX_VALUE;
        for (MeanEstimate f : factors) {
            product *= f.mean();
            shrunk *= f.mean() * f.mean() - f.variance();
            n = Math.min(n, f.n());
        }
        double first = 0;
        double squaresOverDf = 0;
        for (int i = 0; i < factors.size(); i++) {
            double part = factors.get(i).variance();
            for (int j = 0; j < factors.size(); j++) {
                part *= i == j ? 1 : factors.get(j).mean() * factors.get(j).mean();
            }
            first += part;
            squaresOverDf += part == 0 ? 0 : part * part / factors.get(i).df();
        }
        double variance = form == Variance.BRUCE ? first : product * product - shrunk;
        double df = first == 0 ? n - 1 : first * first / squaresOverDf;
        MeanEstimate e = new MeanEstimate(n, 0, product, Double.NaN, Double.NaN)
                .withVariance(variance < 0 ? Double.NaN : variance, df);
        if (factors.size() == 2) {
            show(factors.get(0), factors.get(1), e, form, working);
        }
        return e;
    }

    private static void show(MeanEstimate x, MeanEstimate r, MeanEstimate e, Variance form, Working working) {
        working.heading("Product of the two, variance after " + form.label());
        working.number("v_X", "variance of X", x.variance());
        working.given("v_r", "variance of r", r.variance(), Working.Scale.SQUARE);
        working.step("mean", "mean", "{X} × {r}", e.mean(), Working.Scale.VALUE);
        if (e.hasError()) {
            String less = form == Variance.GOODMAN ? " - {v_X} × {v_r}" : "";
            working.step("v", "variance", "{X}² × {v_r} + {r}² × {v_X}" + less, e.variance(), Working.Scale.SQUARE);
            working.error(e, "");
        }
    }
}
