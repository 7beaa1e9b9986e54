package quadmean.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * How numbers of zero and more are spread: classes of equal width from zero on. The lower limit belongs to a class, the upper to the
 * next.
 *
 * @param width width of a class: 1, 2 or 5 times a power of ten
 * @param counts how many numbers lie in each class
 * @param beyond how many lie beyond the last class
 */
public record Bins(double width, List<Long> counts, long beyond) {
    private static final int MOST = 20;
    /** A few wild numbers must not squeeze all others into one class: common practice, no source. */
    private static final double SHARE_INSIDE = 0.95;

    private static final double[] STEPS = {1, 2, 5, 10};

    public Bins {
        counts = List.copyOf(counts);
    }

    /** The spread of numbers; those that are not finite have no part in it. No classes without numbers above zero. */
    static Bins of(double[] values) {
        double[] known = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        double reach = known.length == 0 ? 0 : known[(int) Math.ceil(SHARE_INSIDE * known.length) - 1];
        if (!(reach > 0)) {
            reach = known.length == 0 ? 0 : known[known.length - 1];
        }
        if (!(reach > 0)) {
            return new Bins(1, List.of(), 0);
        }
        double width = width(reach);
        List<Long> counts = new ArrayList<>(Collections.nCopies((int) Math.floor(reach / width) + 1, 0L));
        long beyond = 0;
        for (double value : known) {
            int at = (int) Math.min(counts.size(), Math.floor(Math.max(0, value) / width));
            if (at < counts.size()) {
                counts.set(at, counts.get(at) + 1);
            } else {
                beyond++;
            }
        }
        return new Bins(width, counts, beyond);
    }

    /** The smallest width in round numbers that needs no more than the most classes. */
    private static double width(double reach) {
        double least = reach / (MOST - 1);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        return Arrays.stream(STEPS)
                .map(s -> s * power)
                .filter(w -> w >= least)
                .findFirst()
                .orElse(10 * power);
    }

    /** Lower limit of a class, counted from 0. */
    public double lower(int i) {
        return i * width;
    }
}
