package quadmean.measure;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several readings of one tree, to the same mark.
 *
 * @param sightings one or more
 * @param distances whether they share the distance
 */
public record TreeReadings(List<Sighting> sightings, DistanceUse distances) {
    /** @throws IllegalArgumentException if there is no sighting */
    public TreeReadings {
        sightings = List.copyOf(sightings);
        if (sightings.isEmpty()) {
            throw new IllegalArgumentException("a tree needs at least one sighting");
        }
    }

    /** Mean height (m). */
    public double meanHeight() {
        return sightings.stream().mapToDouble(Sighting::height).sum() / sightings.size();
    }

    /** The formula of {@link #meanHeight} with its numbers, in metres and tangents. */
    public String working() {
        String sum = sightings.stream().map(Sighting::working).collect(Collectors.joining(" + "));
        return sightings.size() == 1 ? sum : "(" + sum + ") / " + sightings.size();
    }

    /** Largest less smallest height (m). */
    public double spread() {
        return sightings.stream().mapToDouble(Sighting::height).max().orElseThrow()
                - sightings.stream().mapToDouble(Sighting::height).min().orElseThrow();
    }

    /** Standard deviation of the heights as read (m), divisor n - 1; NaN for one reading. */
    public double observedSd() {
        double mean = meanHeight();
        double squares = sightings.stream()
                .mapToDouble(s -> (s.height() - mean) * (s.height() - mean))
                .sum();
        return sightings.size() > 1 ? Math.sqrt(squares / (sightings.size() - 1)) : Double.NaN;
    }

    /** Whether two of the heights differ by more than {@link CommonPractice#AGREEMENT} of the mean. */
    public boolean disagree() {
        return spread() > CommonPractice.AGREEMENT * meanHeight();
    }

    /**
     * Standard deviation of the mean height (m). Reading errors are independent; errors of distance and slope are so
     * only with {@link DistanceUse#OWN_DISTANCES}.
     */
    public double meanSd(HeightErrors errors) {
        List<ErrorShares> shares = sightings.stream().map(errors::shares).toList();
        double own = shares.stream().mapToDouble(ErrorShares::own).sum();
        double shared = distances == DistanceUse.OWN_DISTANCES
                ? shares.stream().mapToDouble(ErrorShares::shared).sum()
                : sum(shares).shared();
        return Math.sqrt(own + shared) / sightings.size();
    }

    private static ErrorShares sum(List<ErrorShares> shares) {
        return new ErrorShares(
                shares.stream().mapToDouble(ErrorShares::distance).sum(),
                shares.stream().mapToDouble(ErrorShares::topDistance).sum(),
                shares.stream().mapToDouble(ErrorShares::topAngle).sum(),
                shares.stream().mapToDouble(ErrorShares::baseAngle).sum(),
                shares.stream().mapToDouble(ErrorShares::groundSlope).sum());
    }
}
