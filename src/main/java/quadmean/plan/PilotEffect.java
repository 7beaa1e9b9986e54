package quadmean.plan;

import java.util.List;
import java.util.OptionalInt;

/**
 * What the uncertainty of a pilot means for the number of plots.
 *
 * @param df degrees of freedom of the pilot's spread
 * @param cvPercent coefficient of variation that it showed (percent)
 * @param limits what the true one may be
 */
public record PilotEffect(double df, double cvPercent, List<Limit> limits) {
    public PilotEffect {
        limits = List.copyOf(limits);
    }

    /**
     * A one-sided limit.
     *
     * @param confidence confidence that the true spread is below it, in (0, 1)
     * @param cvPercent coefficient of variation at the limit (percent)
     * @param plots plots that the first target takes then, by the first option; empty if out of reach
     */
    public record Limit(double confidence, double cvPercent, OptionalInt plots) {}
}
