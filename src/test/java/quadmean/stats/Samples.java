package quadmean.stats;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import quadmean.support.ReferenceFiles;

/** Samples for the tests of this room: of the longleaf quadrats, and made up from a seed. */
final class Samples {
    private Samples() {}

    /** A column of longleaf-quadrats.csv for the quadrats of these ids; id k stands in row k. */
    static double[] quadrats(double[] ids, String column) {
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        return Arrays.stream(ids)
                .map(id -> ReferenceFiles.number(rows.get((int) id - 1), column))
                .toArray();
    }

    /** Positive values with a coefficient of variation near 50 %. */
    static double[] positive(int n, Random random) {
        return random.doubles(n).map(u -> 1 + 9 * u).toArray();
    }

    static double[] times(double k, double[] values) {
        return Arrays.stream(values).map(v -> k * v).toArray();
    }

    static double[] shuffled(double[] values, Random random) {
        double[] copy = values.clone();
        for (int i = copy.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double kept = copy[i];
            copy[i] = copy[j];
            copy[j] = kept;
        }
        return copy;
    }

    /** A generator for one of many runs; Random alone starts alike for seeds that follow each other. */
    static Random random(long seed) {
        return new Random(new SplittableRandom(seed).nextLong());
    }
}
