package quadmean.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;

/**
 * How often limits held in simulated cruises that stopped once their limits were narrow enough, on two completely mapped stands; from
 * {@code stopping-coverage.csv}, which a test makes again.
 */
public final class StoppingCoverage {
    /** Rule of rows where the number of plots was fixed beforehand. */
    public static final String FIXED = "fixed";

    private static final String TABLE = "stopping-coverage.csv";

    private StoppingCoverage() {}

    /**
     * One way to stop on one stand.
     *
     * @param stand the stand
     * @param cvPercent its coefficient of variation between plots
     * @param confidence what the limits say of themselves, in (0, 1)
     * @param targetPercent half width to reach, in percent of the mean
     * @param rule {@code sequential}, {@code two_stage}, or {@code fixed}
     * @param subset plots in a subset
     * @param minimum plots before the first look
     * @param runs simulated cruises
     * @param coveragePercent share of them whose limits held the truth
     * @param meanPlots plots on average
     */
    public record Row(
            String stand,
            double cvPercent,
            double confidence,
            double targetPercent,
            String rule,
            int subset,
            int minimum,
            int runs,
            double coveragePercent,
            double meanPlots) {}

    /** All rows. */
    public static List<Row> rows() {
        try (InputStream in = StoppingCoverage.class.getResourceAsStream(TABLE)) {
            if (in == null) {
                throw new IllegalStateException(TABLE + " is not in the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(StoppingCoverage::row)
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own " + TABLE, e);
        }
    }

    /** The rows nearest to a design's confidence and target: all rules and minimums, stand by stand. */
    public static List<Row> near(double confidence, double targetPercent) {
        List<Row> all = rows();
        double level = nearest(all.stream().mapToDouble(Row::confidence).toArray(), confidence);
        double target = nearest(all.stream().mapToDouble(Row::targetPercent).toArray(), targetPercent);
        return all.stream()
                .filter(r -> r.confidence() == level && r.targetPercent() == target)
                .toList();
    }

    private static double nearest(double[] values, double wanted) {
        return java.util.Arrays.stream(values)
                .boxed()
                .min(Comparator.comparingDouble((Double v) -> Math.abs(v - wanted)))
                .orElseThrow();
    }

    private static Row row(String line) {
        String[] f = line.split(",", -1);
        return new Row(
                f[0],
                Double.parseDouble(f[1]),
                Double.parseDouble(f[2]),
                Double.parseDouble(f[3]),
                f[4],
                Integer.parseInt(f[5]),
                Integer.parseInt(f[6]),
                Integer.parseInt(f[7]),
                Double.parseDouble(f[8]),
                Double.parseDouble(f[9]));
    }
}
