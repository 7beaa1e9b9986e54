package quadmean.stats;

import java.util.Arrays;

/**
 * Sums of some numbers of each unit, of their squares, and of the product of the first two: all that means, variances and one
 * covariance take, of any number of units, in parts that can be added up. Each sum is kept in two doubles, about 32 digits: what
 * rounding takes from the first goes into the second (Dekker 1971, from memory), so that the first is the sum as it rounds. Units may
 * come in any order and in any parts; the moments are the same to the last bit but for chances of about one in 2⁴⁰. Not for use by
 * several threads at once.
 */
public final class MomentSums {
    private static final int PER_NUMBER = 4;

    private final int numbers;

    /** For each number high and low part of its sum, and of that of its squares; then those of the product. */
    private final double[] parts;

    private long above;

    private MomentSums(int numbers, double[] parts) {
        this.numbers = numbers;
        this.parts = parts;
    }

    /**
     * No units yet.
     *
     * @param numbers how many numbers a unit has, 2 or more
     */
    public static MomentSums none(int numbers) {
        Arguments.atLeast(numbers, 2, "numbers of a unit");
        return new MomentSums(numbers, new double[PER_NUMBER * numbers + 2]);
    }

    /**
     * Sums as they were kept.
     *
     * @param parts as {@link #parts} gave them
     * @param above as {@link #above} gave it
     */
    public static MomentSums of(int numbers, double[] parts, long above) {
        Arguments.sameLength(parts.length, PER_NUMBER * numbers + 2, "sums and their parts");
        MomentSums sums = new MomentSums(numbers, parts.clone());
        sums.above = above;
        return sums;
    }

    /** Adds a unit; units of nothing but zeros need not be added. */
    public void add(double[] values) {
        for (int i = 0; i < numbers; i++) {
            plus(PER_NUMBER * i, values[i], 0);
            plusProduct(PER_NUMBER * i + 2, values[i], values[i]);
        }
        plusProduct(PER_NUMBER * numbers, values[0], values[1]);
        above += values[0] > 0 ? 1 : 0;
    }

    /** Adds the units of other sums of the same numbers. */
    public void add(MomentSums other) {
        for (int at = 0; at < parts.length; at += 2) {
            plus(at, other.parts[at], other.parts[at + 1]);
        }
        above += other.above;
    }

    private void plusProduct(int at, double a, double b) {
        double product = a * b;
        plus(at, product, Math.fma(a, b, -product));
    }

    private void plus(int at, double high, double low) {
        double before = parts[at];
        double sum = before + high;
        double rest = rest(before, high, sum) + (parts[at + 1] + low);
        parts[at] = sum + rest;
        parts[at + 1] = rest - (parts[at] - sum);
    }

    /** What rounding took from a sum of two (Knuth, from memory). */
    private static double rest(double a, double b, double sum) {
        double taken = sum - a;
        return (a - (sum - taken)) + (b - taken);
    }

    /**
     * Mean and variance of one of the numbers.
     *
     * @param i which number, from 0
     * @param n units, those of nothing but zeros too
     */
    public Moments moments(int i, int n) {
        double variance = n < 2 ? Double.NaN : Math.max(0, centred(PER_NUMBER * i + 2, i, i, n)) / (n - 1);
        return new Moments(n, n == 0 ? Double.NaN : sum(i) / n, variance);
    }

    /**
     * Mean and variance of what the second number is beyond a multiple of the first, y - r·x.
     *
     * @param ratio the multiple r
     * @param n units, those of nothing but zeros too
     */
    public Moments beyond(double ratio, int n) {
        double squares = centred(PER_NUMBER + 2, 1, 1, n)
                - 2 * ratio * centred(PER_NUMBER * numbers, 0, 1, n)
                + ratio * ratio * centred(2, 0, 0, n);
        return new Moments(n, (sum(1) - ratio * sum(0)) / n, n < 2 ? Double.NaN : Math.max(0, squares) / (n - 1));
    }

    /** The sum of one of the numbers. */
    public double sum(int i) {
        return parts[PER_NUMBER * i] + parts[PER_NUMBER * i + 1];
    }

    /** Σab - Σa·Σb/n, the difference taken in both parts. */
    private double centred(int at, int a, int b, int n) {
        double highA = parts[PER_NUMBER * a];
        double highB = parts[PER_NUMBER * b];
        double product = highA * highB;
        double rest = Math.fma(highA, highB, -product)
                + highA * parts[PER_NUMBER * b + 1]
                + highB * parts[PER_NUMBER * a + 1];
        double quotient = product / n;
        double remainder = (Math.fma(-quotient, n, product) + rest) / n;
        double difference = parts[at] - quotient;
        return difference + (rest(parts[at], -quotient, difference) + (parts[at + 1] - remainder));
    }

    /** How many units have a first number above zero. */
    public long above() {
        return above;
    }

    /** The sums in parts, to be kept and made again by {@link #of}. */
    public double[] parts() {
        return parts.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MomentSums sums && above == sums.above && Arrays.equals(parts, sums.parts);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts);
    }
}
