package quadmean.cli;

import java.util.Locale;
import java.util.Optional;
import quadmean.measure.BestDistance;
import quadmean.measure.HeightErrors;
import quadmean.measure.LaserSighting;
import quadmean.measure.Lean;
import quadmean.measure.LeanDirection;
import quadmean.measure.Sighting;
import quadmean.measure.TreeReadings;
import quadmean.units.AngleScale;

/** What a height leaves to say: where to stand, what a lean or a false zero does, what errors were taken. */
final class HeightAdvice {
    private final Figures figures;
    private final HeightErrors errors;

    HeightAdvice(Figures figures, HeightErrors errors) {
        this.figures = figures;
        this.errors = errors;
    }

    /** The best distance, where there is one. */
    Optional<String> best(TreeReadings tree) {
        return BestDistance.of(first(tree), errors)
                .map(best -> "Best distance for this tree " + figures.length(best.distance(), 0) + ", ± "
                        + figures.first(best.heightSd(), 2) + " for one reading; from "
                        + figures.range(best.nearest(), best.farthest(), 0)
                        + " the error is at most a tenth larger. Where tip and base are seen well counts more.");
    }

    /** The best distance alone. */
    Optional<String> bestInShort(TreeReadings tree) {
        return BestDistance.of(first(tree), errors).map(best -> figures.length(best.distance(), 0));
    }

    /** What an error of the instrument's zero does to this height; the readings are taken as they are. */
    String indexError(TreeReadings tree, AngleScale scale, double units) {
        double shift = tree.sightings().stream()
                        .mapToDouble(s -> s.shiftByIndexError(Math.atan(scale.tangent(units))))
                        .sum()
                / tree.sightings().size();
        return "Index error of " + signed(units, 2) + " " + scale.id() + ": the height comes out "
                + figures.off(shift)
                + "; it is not taken off above.";
    }

    /** What a lean does at worst. */
    String lean(TreeReadings tree, double angle) {
        Sighting sighting = first(tree);
        Lean lean = new Lean(angle);
        String name = "Lean of " + Figures.number(Math.toDegrees(angle), 1) + "°: ";
        if (sighting instanceof LaserSighting) {
            return name + "the three-shot height is the vertical one whatever the lean.";
        }
        return name + "at worst " + figures.off(lean.misreading(LeanDirection.TOWARD, sighting)) + " if toward you, "
                + figures.off(lean.misreading(LeanDirection.AWAY, sighting)) + " if away, "
                + figures.off(lean.misreading(LeanDirection.ACROSS, sighting))
                + " if across: sight at right angles to the lean, or from two opposite sides.";
    }

    /** The errors behind ±, and where they come from. */
    static String errorsTaken(HeightOptions options) {
        String given = "given by you";
        String practice = "common practice, no source";
        boolean sloping = options.groundSlope != null;
        return "Errors taken: reading "
                + (options.readingSd == null ? "0.25° (" + practice : options.readingSd + " (" + given)
                + "), distance "
                + (options.distanceSd == null ? "0.1m (" + practice : options.distanceSd + " (" + given)
                + ")"
                + (sloping
                        ? ", slope " + (options.slopeSd == null ? "0.5° (" + practice : options.slopeSd + " (" + given)
                                + ")"
                        : "")
                + ".";
    }

    static String signed(double value, int decimals) {
        return String.format(Locale.ROOT, "%+." + decimals + "f", value);
    }

    private static Sighting first(TreeReadings tree) {
        return tree.sightings().get(0);
    }
}
