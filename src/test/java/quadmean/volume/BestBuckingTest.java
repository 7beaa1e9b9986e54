package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quadmean.model.LogSettings;
import quadmean.model.LogSettings.Method;
import quadmean.model.Price;
import quadmean.model.Price.PriceUnit;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.support.Tolerance;

/** The best value against every way there is to cut small stems, over seeded random cases. */
class BestBuckingTest {
    private static final double WASTE_M = 0.4;
    private static final double TRIM_M = 0.1;
    private static final double STUMP_M = 0.3;

    /** A small stem, two or three products with limits, and prices. */
    private record Case(StemToCut stem, Product[] products, double[] perM3) {
        static Case of(long seed) {
            Random random = new Random(seed);
            double height = 8 + 6 * random.nextDouble();
            StemProfile profile =
                    new OrmerodProfile(15 + 30 * random.nextDouble(), 0.5 + random.nextDouble(), height, 1.3);
            Product[] products = new Product[2 + random.nextInt(2)];
            double[] perM3 = new double[products.length];
            for (int i = 0; i < products.length; i++) {
                double min = 5 + 20 * random.nextDouble();
                double max = random.nextBoolean() ? min + 15 * random.nextDouble() : Double.POSITIVE_INFINITY;
                Double[] lengths = {(15 + random.nextInt(25)) / 10.0, (15 + random.nextInt(25)) / 10.0};
                products[i] = BuckerTest.product("p" + i, min, max, lengths);
                perM3[i] = random.nextInt(4) * 20;
            }
            double top = height - random.nextInt(3);
            return new Case(new StemToCut(profile, "X", "", "", top, 0, 800), products, perM3);
        }

        Bucked buck(Method method) {
            LogSettings settings = BuckerTest.settings(method, WASTE_M, products);
            Price[] prices = new Price[perM3.length];
            Arrays.setAll(prices, i -> new Price("p" + i, "*", perM3[i], PriceUnit.CUBIC_METRE));
            PriceList list = BuckerTest.prices(prices);
            return Bucker.of(settings, Optional.of(list), BuckerTest.MEASURE).buck(stem);
        }

        /** The largest sum over all sequences of logs and pieces from a height up, by trying each. */
        double best(double fromM) {
            double best = 0;
            if (fromM + WASTE_M <= stem.topM()) {
                best = best(fromM + WASTE_M);
            }
            for (int i = 0; i < products.length; i++) {
                for (double length : products[i].lengthsM()) {
                    double large = stem.profile().dibCm(fromM);
                    double small = stem.profile().dibCm(fromM + length);
                    boolean fits = fromM + length + TRIM_M <= stem.topM() + 1e-9
                            && small >= products[i].minSmallEndCm()
                            && large <= products[i].maxLargeEndCm();
                    if (fits) {
                        double value = perM3[i] * Math.PI / 80_000 * (large * large + small * small) * length;
                        best = Math.max(best, value + best(fromM + length + TRIM_M));
                    }
                }
            }
            return best;
        }
    }

    private static double value(Bucked bucked) {
        return bucked.logs().stream().mapToDouble(CutLog::value).sum();
    }

    @Test
    void noWayToCutFetchesMore() {
        int withLogs = 0;
        int better = 0;
        for (long seed = 1; seed <= 300; seed++) {
            Case c = Case.of(seed);
            double best = value(c.buck(Method.BEST_VALUE));
            double byLengths = value(c.buck(Method.LENGTHS));
            Tolerance.relative("sums in another order", 1e-9).check(c.best(STUMP_M), best, "seed " + seed);
            assertTrue(best >= byLengths * (1 - 1e-9), "seed " + seed + ": " + best + " under " + byLengths);
            withLogs += best > 0 ? 1 : 0;
            better += best > byLengths * 1.0001 ? 1 : 0;
        }
        assertTrue(withLogs > 150 && better > 50, "cases that say something: " + withLogs + ", " + better);
    }

    /** Logs follow one another, keep their trim, and stay within stem and limits. */
    @Test
    void whatIsCutCanBeCut() {
        for (long seed = 1; seed <= 100; seed++) {
            Case c = Case.of(seed);
            for (Method method : Method.values()) {
                double free = STUMP_M;
                List<CutLog> logs = c.buck(method).logs();
                for (CutLog log : logs) {
                    assertEquals(logs.indexOf(log) + 1, log.number());
                    assertTrue(log.fromM() >= free - 1e-9, "seed " + seed);
                    free = log.fromM() + log.lengthM() + TRIM_M;
                }
                assertTrue(logs.isEmpty() || free <= c.stem().topM() + 1e-6, "seed " + seed);
            }
        }
    }
}
