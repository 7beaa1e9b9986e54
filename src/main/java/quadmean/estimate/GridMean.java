package quadmean.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotFacts.Place;
import quadmean.model.VarianceForm;
import quadmean.stats.GridPosition;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.SystematicVariance;
import quadmean.stats.Working;

/** The mean of plots on a grid, with the variance that the design names. */
final class GridMean implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        return form(Objects.requireNonNull(drawn.rules().variance()))
                .estimate(drawn.sample(drawn.values(value)), grid(drawn), working);
    }

    @Override
    public double[] spread(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        double[] values = drawn.values(value);
        Moments m = Moments.of(values);
        double shrink = m.sd() > 0 ? mean(drawn, value).sd() / m.sd() : 1;
        return Double.isNaN(shrink)
                ? new double[0]
                : Arrays.stream(values)
                        .map(v -> m.mean() + shrink * (v - m.mean()))
                        .toArray();
    }

    private static List<GridPosition> grid(DrawnPlots drawn) {
        return drawn.plots().stream().map(GridMean::position).toList();
    }

    private static GridPosition position(SampledPlot plot) {
        Place place = Objects.requireNonNull(plot.facts().place());
        return new GridPosition(place.row(), place.column());
    }

    private static SystematicVariance form(VarianceForm named) {
        return switch (named) {
            case SUCCESSIVE_DIFFERENCES -> SystematicVariance.SUCCESSIVE_DIFFERENCES;
            case NEIGHBOUR_DIFFERENCES -> SystematicVariance.NEIGHBOUR_DIFFERENCES;
            case OVERLAPPING_BLOCKS -> SystematicVariance.OVERLAPPING_BLOCKS;
            case SIMPLE_RANDOM -> SystematicVariance.AS_SIMPLE_RANDOM;
            default -> throw new IllegalArgumentException(named + " is no variance of a mean");
        };
    }

    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        return Optional.of(Resampling.ofPlots(
                drawn.inOrder(),
                same -> same,
                "Plots of the grid are resampled as if they were random: the limits do not follow the variance by neighbours, which"
                        + " stands in the standard errors."));
    }
}
