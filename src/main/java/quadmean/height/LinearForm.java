package quadmean.height;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import quadmean.stats.StraightLine;

/** Straight lines through transformed heights: where the search for a curve starts. */
final class LinearForm {
    /** An asymptote is guessed at these multiples of the tallest tree; common practice, no source. */
    private static final double[] ABOVE_TALLEST = {1.05, 1.3, 2, 5};

    private LinearForm() {}

    /** One coordinate of tree i. */
    interface Axis {
        double at(int i);
    }

    /** Intercept and slope of a straight line through n points. */
    static double[] line(int n, Axis x, Axis y) {
        StraightLine line = StraightLine.through(along(n, x), along(n, y));
        return new double[] {line.intercept(), line.slope()};
    }

    private static double[] along(int n, Axis axis) {
        return IntStream.range(0, n).mapToDouble(axis::at).toArray();
    }

    /** What to do with a guess of the asymptote. */
    interface Guess {
        double[] from(double asymptote);
    }

    /** Starts from several guesses of the asymptote; a parameter that is not finite makes a start no start. */
    static List<double[]> overAsymptotes(double[] y, Guess guess) {
        double top = Arrays.stream(y).max().orElseThrow();
        return DoubleStream.of(ABOVE_TALLEST)
                .mapToObj(f -> guess.from(f * top))
                .filter(p -> Arrays.stream(p).allMatch(Double::isFinite))
                .toList();
    }
}
