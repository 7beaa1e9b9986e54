package quadmean.stats;

/**
 * How one value x at or above a limit L pulls at shape c and scale b of a Weibull distribution: derivatives of ln f(x) - ln(1 - F(L)),
 * with z = (x-a)/b (by calculus). Their weighted sums vanish at the fit of largest likelihood; with the curvatures they give
 * its error under any sampling design (Binder 1983, from memory).
 *
 * @param weibull the distribution
 * @param limit least value that was taken; the location for none
 */
public record WeibullScore(Weibull weibull, double limit) {

    /** Derivative by the shape. */
    public double byShape(double x) {
        return 1 / weibull.shape() + Math.log(z(x)) - excess(x, 1);
    }

    /** Derivative by the scale. */
    public double byScale(double x) {
        return weibull.shape() / weibull.scale() * (excess(x, 0) - 1);
    }

    /** Second derivative by the shape. */
    public double byShapeTwice(double x) {
        return -1 / (weibull.shape() * weibull.shape()) - excess(x, 2);
    }

    /** Second derivative by the scale. */
    public double byScaleTwice(double x) {
        double c = weibull.shape();
        return c / (weibull.scale() * weibull.scale()) * (1 - (c + 1) * excess(x, 0));
    }

    /** Derivative by both. */
    public double byBoth(double x) {
        return (excess(x, 0) - 1 + weibull.shape() * excess(x, 1)) / weibull.scale();
    }

    /** z^c·ln^k z less the same of the limit. */
    private double excess(double x, int k) {
        return term(z(x), k) - (limit <= weibull.location() ? 0 : term(z(limit), k));
    }

    private double term(double z, int k) {
        return Math.pow(z, weibull.shape()) * Math.pow(Math.log(z), k);
    }

    private double z(double x) {
        return (x - weibull.location()) / weibull.scale();
    }
}
