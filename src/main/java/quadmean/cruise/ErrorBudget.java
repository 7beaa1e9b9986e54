package quadmean.cruise;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StudentT;
import quadmean.units.Attribute;

/**
 * The whole error of an estimate of the stand, as far as it is known: the variation between plots, which holds the independent errors of
 * reading the sampled trees, and the parts that plots have in common, which are added as independent of it. Per hectare, in metric
 * units.
 *
 * @param attribute what is estimated
 * @param sampling the estimate with the error between plots
 * @param units what that error counts, as a plural: plots, or clusters of them
 * @param confidence confidence level, in (0, 1)
 * @param parts all parts, that between plots first
 */
public record ErrorBudget(
        Attribute attribute, MeanEstimate sampling, String units, double confidence, List<ErrorPart> parts) {
    public ErrorBudget {
        parts = List.copyOf(parts);
    }

    /** Variance of all parts that count; never negative. */
    public double totalVariance() {
        return Math.max(
                0,
                parts.stream()
                        .filter(ErrorPart::isCounted)
                        .mapToDouble(ErrorPart::variance)
                        .sum());
    }

    /** Standard error of all parts that count. */
    public double totalSe() {
        return Math.sqrt(totalVariance());
    }

    /**
     * Degrees of freedom of the total after Satterthwaite (1946, from memory), the added parts taken as known exactly.
     *
     * @return infinity without an error between plots
     */
    public double df() {
        double share = totalVariance() / sampling.variance();
        return share * share * sampling.df();
    }

    /** Half the width of limits ± t·SE with the total error, in percent of the estimate. */
    public double totalErrorPercent() {
        return 100 * StudentT.critical(confidence, df()) * totalSe() / Math.abs(sampling.mean());
    }

    /** Share of the total variance. */
    public double share(ErrorPart part) {
        return part.variance() / totalVariance();
    }

    /** Share of the total variance that a remedy would take away. */
    public double gain(Remedy remedy) {
        return parts.stream()
                        .filter(p -> p.kind() != Kind.UNKNOWN && !Double.isNaN(p.variance()))
                        .mapToDouble(p -> remedy.takes(p) * Math.max(0, p.variance()))
                        .sum()
                / totalVariance();
    }

    /** What would help most; empty where there is no error to lessen. */
    public Optional<Remedy> best() {
        return Arrays.stream(Remedy.values()).filter(r -> gain(r) > 0).max(Comparator.comparingDouble(this::gain));
    }

    /** What would help most, with what each remedy would take off the variance and the standard error. */
    public String advice() {
        if (best().isEmpty()) {
            return "There is no error here that more " + units + ", more heights or better readings would lessen.";
        }
        String best = best().get().label(units);
        StringBuilder words = new StringBuilder(
                best.substring(0, 1).toUpperCase(Locale.ROOT) + best.substring(1) + " would help most: ");
        String mark = "";
        for (Remedy r : Arrays.stream(Remedy.values())
                .sorted(Comparator.comparingDouble(this::gain).reversed())
                .toList()) {
            words.append(mark)
                    .append(String.format(
                            Locale.ROOT,
                            "%s would take %s off the total variance",
                            r.measure(units),
                            percent(gain(r))));
            mark = "; ";
        }
        return words.append('.').toString();
    }

    private static String percent(double share) {
        double percent = 100 * share;
        return percent > 0 && percent < 0.1
                ? "less than 0.1 %"
                : String.format(Locale.ROOT, percent >= 10 ? "%.0f %%" : "%.1f %%", percent);
    }

    /** The parts that are not known, in words; empty if all are. */
    public String notKnown() {
        return String.join(
                "; ",
                parts.stream()
                        .filter(p -> p.kind() == Kind.UNKNOWN)
                        .map(this::label)
                        .toList());
    }

    /** The name of a part; that of the sampling error names the units that it counts. */
    public String label(ErrorPart part) {
        return part.source() == ErrorPart.Source.PLOTS
                ? "between " + units
                : part.source().label();
    }

    /** What parts with a negative variance mean, in a sentence for each; empty if there are none. */
    public String offsets() {
        return String.join(
                " ",
                parts.stream()
                        .filter(p -> p.isCounted() && p.variance() < 0)
                        .map(p -> "The part of " + label(p) + " takes " + percent(-share(p))
                                + " off the total variance instead of adding to it: its errors and those between "
                                + units
                                + " tend to offset each other in this tally, as far as that can be told from it.")
                        .toList());
    }
}
