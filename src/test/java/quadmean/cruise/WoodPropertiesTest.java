package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.support.SmallWoodlot;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;

/** What holds of the wood of any cruise, tried on eight plots of 60 invented trees. */
class WoodPropertiesTest {
    private static final SmallWoodlot LOT = lot();
    private static List<EstimateRow> rows = List.of();

    @TempDir
    private Path folder;

    @BeforeAll
    static void runOnce(@TempDir Path folder) {
        rows = rows(LOT, folder);
    }

    private static SmallWoodlot lot() {
        Random random = new Random(1);
        StringBuilder rows =
                new StringBuilder("plot,tree,species,dbh,height,merch,logs,count,status,broken,grade,defect\n");
        for (int i = 0; i < 36; i++) {
            double dbh = 5 + 20 * random.nextDouble();
            rows.append(String.format(
                    Locale.ROOT,
                    "%d,%d,%s,%.1f,%.1f,,,%d,,,,%d%n",
                    i % 8,
                    i,
                    i % 3 == 0 ? "ABGR" : "PSME",
                    dbh,
                    4.5 + 5 * dbh + 10 * random.nextDouble(),
                    1 + random.nextInt(3),
                    5 * random.nextInt(4)));
        }
        // the error budget would cut every stem several times more, and no row depends on it
        SmallWoodlot quick = new SmallWoodlot().plus("[estimate]\nbudget = \"none\"\n");
        return new SmallWoodlot(quick.design(), rows.toString());
    }

    @Test
    void productsAddUpToAllOfThem() {
        addsUp(r -> r.part().log() == 0, r -> r.part().product(), EstimateRow::species);
    }

    @Test
    void placesInTheStemAddUpToAllLogs() {
        addsUp(r -> r.part().product().equals("*"), r -> r.part().place(), EstimateRow::species);
    }

    @Test
    void speciesAddUpToAllOfThem() {
        addsUp(
                r -> r.attribute() != Attribute.QUADRATIC_MEAN_DIAMETER,
                EstimateRow::species,
                r -> r.part().toString());
    }

    /** In each group of rows alike but for one thing, the row for all is the sum of the others. */
    private void addsUp(
            Predicate<EstimateRow> among, Function<EstimateRow, String> by, Function<EstimateRow, String> rest) {
        Map<String, List<EstimateRow>> groups = rows.stream()
                .filter(among)
                .filter(r -> r.attribute().isOfLogs() || r.part().equals(Part.ALL))
                .collect(Collectors.groupingBy(r -> rest.apply(r) + " " + r.attribute() + " " + r.basis()));
        long tried = 0;
        for (List<EstimateRow> group : groups.values()) {
            if (group.size() > 1) {
                tried++;
                EstimateRow all = group.stream()
                        .filter(r -> by.apply(r).equals("*"))
                        .findFirst()
                        .orElseThrow();
                double sum = group.stream()
                        .filter(r -> r != all)
                        .mapToDouble(EstimateRow::mean)
                        .sum();
                Tolerance.ROUNDING.check(sum, all.mean(), all.toString());
            }
        }
        assertTrue(tried > 9, "groups of rows: " + tried);
    }

    @Test
    void netNeverExceedsGross() {
        Map<String, Double> means = means(rows);
        int tried = 0;
        for (String key : means.keySet()) {
            if (key.contains(" LOG_VOLUME ") || key.contains(" BOARD_FEET ")) {
                String net =
                        key.replace(" LOG_VOLUME ", " NET_LOG_VOLUME ").replace(" BOARD_FEET ", " NET_BOARD_FEET ");
                assertTrue(means.get(net) <= means.get(key) * (1 + 1e-12), key);
                tried++;
            }
        }
        assertTrue(tried > 20);
    }

    @Test
    void theOrderOfRowsDoesNotMatter() {
        List<String> lines = new ArrayList<>(Arrays.asList(LOT.tally().split("\\R")));
        String header = lines.remove(0);
        Collections.shuffle(lines, new Random(7));
        alike(means(rows), means(new SmallWoodlot(LOT.design(), header + "\n" + String.join("\n", lines) + "\n")), 1);
    }

    @Test
    void twiceTheTreesAreTwiceTheWood() {
        String doubled = LOT.tally();
        for (int count = 3; count > 0; count--) {
            doubled = doubled.replace(",,," + count + ",", ",,," + 2 * count + ",");
        }
        alike(means(rows), means(new SmallWoodlot(LOT.design(), doubled)), 2);
    }

    /** A row that stands for two trees is as two rows. */
    @Test
    void aCountStandsForRows() {
        String row = "1,1,PSME,20,104.5,,,,,,,10";
        SmallWoodlot lot = new SmallWoodlot();
        SmallWoodlot counted = lot.where(row, row.replace("104.5,,,", "104.5,,,2"));
        SmallWoodlot written = lot.where(row, row + "\n" + row.replace("1,1,", "1,7,"));
        alike(means(counted), means(written), 1);
    }

    /** The same tally under a metric design of the same sizes: 12.5 ft are 3.81 m, in whole hundredths of both. */
    @Test
    void aMetricDesignGivesTheSameWood() {
        SmallWoodlot us = LOT.with("stump = 0.5", "stump = 0")
                .with("trim = 0.5", "trim = 0")
                .with("lengths = [16]", "lengths = [25]")
                .with("lengths = [8]", "lengths = [12.5]");
        SmallWoodlot metric = us.with("units = \"us\"", "units = \"metric\"")
                .with("area = 40", "area = 16.1874256896")
                .with("area = 0.1", "area = 0.040468564224")
                .with("lengths = [25]", "lengths = [7.62]")
                .with("lengths = [12.5]", "lengths = [3.81]")
                .with("min_small_end = 8", "min_small_end = 20.32")
                .with("min_small_end = 4", "min_small_end = 10.16")
                .with("trim = 0", "trim = 0\nlongest_piece = 6.096")
                .plus("[height]\nbreast_height = 1.3716");
        alike(means(us), means(metric), 1);
    }

    private void alike(Map<String, Double> expected, Map<String, Double> actual, double factor) {
        assertEquals(expected.keySet(), actual.keySet());
        expected.forEach((key, mean) ->
                Tolerance.ROUNDING.check(key.contains("QUADRATIC") ? mean : factor * mean, actual.get(key), key));
    }

    private Map<String, Double> means(SmallWoodlot lot) {
        return means(rows(lot, folder));
    }

    private static List<EstimateRow> rows(SmallWoodlot lot, Path folder) {
        return lot.run(folder).estimate().rows();
    }

    /** Means by everything that names a row. */
    private static Map<String, Double> means(List<EstimateRow> rows) {
        Map<String, Double> means = new LinkedHashMap<>();
        rows.forEach(r -> means.put(r.species() + " " + r.part() + " " + r.attribute() + " " + r.basis(), r.mean()));
        return means;
    }
}
