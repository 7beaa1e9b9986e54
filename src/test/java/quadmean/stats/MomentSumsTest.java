package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments out of sums are those of the values: by two passes, and by decimals of 60 digits. */
class MomentSumsTest {
    /** Rounding of doubles over a few hundred values. */
    private static final double ROUNDING = 1e-13;

    private static List<double[]> units(int seed, int n, double level, double spread) {
        Random random = new Random(seed);
        List<double[]> units = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double first = random.nextInt(4) == 0 ? 0 : level + spread * random.nextGaussian();
            units.add(new double[] {first, level + spread * random.nextDouble(), random.nextInt(9) == 0 ? 40 : 0});
        }
        return units;
    }

    private static MomentSums sums(List<double[]> units) {
        MomentSums sums = MomentSums.none(3);
        units.forEach(sums::add);
        return sums;
    }

    private static double[] column(List<double[]> units, int i) {
        return units.stream().mapToDouble(u -> u[i]).toArray();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 30, 1e4})
    void momentsAreThoseOfTheValues(double level) {
        for (int seed = 1; seed <= 20; seed++) {
            List<double[]> units = units(seed, 2 + 15 * seed, level, 7);
            for (int i = 0; i < 3; i++) {
                Moments of = Moments.of(column(units, i));
                Moments by = sums(units).moments(i, units.size());
                assertEquals(of.mean(), by.mean(), ROUNDING * Math.abs(of.mean()));
                assertEquals(of.variance(), by.variance(), ROUNDING * of.variance());
            }
        }
    }

    /** Squares of 17 digits, of which 32 are kept. */
    @Test
    void smallDifferencesOfLargeNumbersAreKept() {
        for (int seed = 1; seed <= 20; seed++) {
            List<double[]> units = units(seed, 200, 1e8, 1);
            units.forEach(u -> u[0] = u[0] == 0 ? 1e8 : u[0]);
            for (int i = 0; i < 2; i++) {
                Moments by = sums(units).moments(i, units.size());
                double exact = variance(column(units, i));
                assertEquals(exact, by.variance(), ROUNDING * exact);
            }
        }
    }

    private static double variance(double[] values) {
        BigDecimal n = BigDecimal.valueOf(values.length);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal squares = BigDecimal.ZERO;
        for (double v : values) {
            BigDecimal exact = new BigDecimal(v);
            sum = sum.add(exact);
            squares = squares.add(exact.multiply(exact));
        }
        MathContext digits = new MathContext(60);
        return squares.subtract(sum.multiply(sum).divide(n, digits))
                .divide(n.subtract(BigDecimal.ONE), digits)
                .doubleValue();
    }

    @Test
    void beyondIsTheMomentOfTheDifference() {
        List<double[]> units = units(5, 150, 30, 7);
        double ratio = 0.37;
        Moments of =
                Moments.of(units.stream().mapToDouble(u -> u[1] - ratio * u[0]).toArray());
        Moments by = sums(units).beyond(ratio, units.size());
        assertEquals(of.mean(), by.mean(), ROUNDING * Math.abs(of.mean()));
        assertEquals(of.variance(), by.variance(), ROUNDING * of.variance());
    }

    /** Also where values vary more than their mean, as those of rare species do. */
    @Test
    void orderAndPartsChangeNoBit() {
        for (int seed = 1; seed <= 60; seed++) {
            List<double[]> units = units(seed, 50 + 10 * seed, seed % 2 == 0 ? 0 : 20, 11);
            MomentSums once = sums(units);
            List<double[]> shuffled = new ArrayList<>(units);
            Collections.shuffle(shuffled, new Random(seed));
            int cut = new Random(seed).nextInt(units.size());
            MomentSums parts = sums(shuffled.subList(cut, units.size()));
            parts.add(sums(shuffled.subList(0, cut)));
            for (int i = 0; i < 3; i++) {
                assertEquals(once.moments(i, units.size()), parts.moments(i, units.size()), "seed " + seed);
            }
            assertEquals(once.beyond(0.3, units.size()), parts.beyond(0.3, units.size()), "seed " + seed);
            assertEquals(parts, MomentSums.of(3, parts.parts(), parts.above()));
        }
    }

    @Test
    void unitsOfZerosNeedNotBeAdded() {
        MomentSums sums = sums(List.of(new double[] {3, 1, 0}));
        assertEquals(Moments.of(new double[] {3, 0, 0, 0}), sums.moments(0, 4));
        assertEquals(Double.NaN, sums.moments(0, 1).variance());
        assertEquals(1, sums.above());
    }
}
