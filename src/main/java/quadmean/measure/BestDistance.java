package quadmean.measure;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import quadmean.units.AngleScale;

/**
 * The horizontal distance that makes the error of a height least. The optimum is flat: what matters more is to see tip
 * and base, and the lean.
 *
 * @param distance best horizontal distance (m)
 * @param heightSd standard deviation of the height there (m)
 * @param nearest nearest distance at which the error is at most a tenth larger (m)
 * @param farthest farthest such distance (m)
 */
public record BestDistance(double distance, double heightSd, double nearest, double farthest) {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** The search runs from a fiftieth of the height to fifty heights. */
    private static final double SPAN = Math.log(50);

    private static final double STEP = 1e-7;
    private static final double TENTH_MORE = 1.1;

    /**
     * The best distance for the tree of a sighting, the eye staying at its level against the base. In the three-shot
     * method there is none: the nearer, the smaller the error, as long as the tip is seen.
     *
     * @return empty for the three-shot method, and where the errors given have no least distance
     */
    public static Optional<BestDistance> of(Sighting sighting, HeightErrors errors) {
        return sighting instanceof LaserSighting
                ? Optional.empty()
                : of(
                        sighting.height(),
                        sighting.eyeAboveBase(),
                        sighting.readings().scale(),
                        errors);
    }

    /**
     * The best distance for a tree.
     *
     * @param heightM height of the mark above the base (m), above 0
     * @param eyeAboveBaseM eye above the base (m), negative below it
     * @param scale scale to be read
     * @param errors errors of the readings and of the distance
     * @return empty where the errors given have no least distance, as without a distance or a reading error
     */
    public static Optional<BestDistance> of(
            double heightM, double eyeAboveBaseM, AngleScale scale, HeightErrors errors) {
        Checks.positive(heightM, "the height");
        Checks.finite(eyeAboveBaseM, "the eye above the base");
        DoubleUnaryOperator sd = x -> errors.heightSd(at(heightM * Math.exp(x), heightM, eyeAboveBaseM, scale));
        double best = least(sd);
        if (!(Math.abs(best) < SPAN - 2 * STEP)) {
            return Optional.empty();
        }
        double limit = TENTH_MORE * sd.applyAsDouble(best);
        return Optional.of(new BestDistance(
                heightM * Math.exp(best),
                sd.applyAsDouble(best),
                heightM * Math.exp(crossing(sd, limit, best, -SPAN)),
                heightM * Math.exp(crossing(sd, limit, best, SPAN))));
    }

    private static Sighting at(double distance, double height, double eye, AngleScale scale) {
        double top = scale.reading((height - eye) / distance);
        return new HorizontalSighting(new Readings(scale, top, scale.reading(-eye / distance)), distance);
    }

    /** Golden section; the error has one minimum only. */
    private static double least(DoubleUnaryOperator f) {
        double low = -SPAN;
        double high = SPAN;
        while (high - low > STEP) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (f.applyAsDouble(left) <= f.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }

    private static double crossing(DoubleUnaryOperator f, double limit, double inside, double outside) {
        double in = inside;
        double out = outside;
        while (Math.abs(out - in) > STEP) {
            double middle = (in + out) / 2;
            if (f.applyAsDouble(middle) <= limit) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }
}
