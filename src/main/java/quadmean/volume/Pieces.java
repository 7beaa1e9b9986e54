package quadmean.volume;

import java.util.Arrays;
import java.util.Locale;
import quadmean.model.Scaling;
import quadmean.model.Scaling.Lengths;
import quadmean.units.Unit;

/**
 * Lengths of the pieces that logs are scaled in: as few as the longest piece allows, as equal as the steps of length
 * allow, the longer at the butt (common practice, no source).
 *
 * @param lengths what becomes of a length
 * @param longestFt longest piece (ft); infinite if every log is scaled in one
 */
record Pieces(Lengths lengths, double longestFt) {
    static Pieces of(Scaling scaling) {
        double longest = Unit.METRE.convert(scaling.longestPieceM(), Unit.FOOT);
        double step = step(scaling.lengths());
        if (!(Steps.countDown(longest, step) >= 1)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "longest piece must be at least %s ft, got %s m", step, scaling.longestPieceM()));
        }
        return new Pieces(scaling.lengths(), longest);
    }

    /** Lengths of the pieces (ft), the top one first; none where the length rounds down to nothing. */
    double[] fromTop(double lengthFt) {
        return lengths == Lengths.AS_IS ? equal(lengthFt) : inSteps(lengthFt, step(lengths));
    }

    private double[] equal(double lengthFt) {
        int count = (int) Math.max(1, -Steps.countDown(-lengthFt / longestFt, 1));
        double[] pieces = new double[count];
        Arrays.fill(pieces, lengthFt / count);
        return pieces;
    }

    private double[] inSteps(double lengthFt, double step) {
        int steps = (int) Steps.countDown(lengthFt, step);
        double most = Steps.countDown(longestFt, step);
        int count = (int) Math.ceil(steps / most);
        double[] pieces = new double[steps == 0 ? 0 : Math.max(1, count)];
        for (int i = 0; i < pieces.length; i++) {
            int share = (steps + i) / pieces.length;
            pieces[i] = step * share;
        }
        return pieces;
    }

    private static double step(Lengths lengths) {
        return lengths == Lengths.EVEN_FOOT_DOWN ? 2 : 1;
    }
}
