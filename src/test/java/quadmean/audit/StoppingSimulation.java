package quadmean.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quadmean.stats.FixedWidth;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.StudentT;
import quadmean.support.ReferenceFiles;

/**
 * How often limits hold where a cruise stops once they are narrow enough, on completely mapped stands: plots drawn with replacement
 * from quadrats, in subsets of five. Makes {@code stopping-coverage.csv}.
 */
public final class StoppingSimulation {
    static final String HEADER =
            "stand,cv_percent,confidence,target_percent,rule,subset,minimum,runs,coverage_percent,mean_plots,seed";

    private static final int SUBSET = 5;
    private static final int MOST = 2000;
    static final int RUNS = 10_000;
    static final long SEED = 20_260_415;

    private final Map<Long, Double> critical = new HashMap<>();

    /** Writes the table to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), table(RUNS));
    }

    /** The table as CSV, line ends as on Unix. */
    static String table(int runs) {
        StoppingSimulation work = new StoppingSimulation();
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        Map<String, double[]> stands = Map.of(
                "longleaf pine on 25 m quadrats", quadrats("longleaf.csv", 200, 25),
                "tropical forest on 20 m quadrats", quadrats("waka.csv", 100, 20));
        for (String stand : stands.keySet().stream().sorted().toList()) {
            for (double confidence : new double[] {0.90, 0.95}) {
                for (double target : new double[] {10, 15, 20}) {
                    for (FixedWidth rule : FixedWidth.values()) {
                        for (int minimum : new int[] {5, 20, 40}) {
                            text.append(work.row(stand, stands.get(stand), confidence, target, rule, minimum, runs));
                        }
                    }
                    text.append(work.row(stand, stands.get(stand), confidence, target, null, 0, runs));
                }
            }
        }
        return text.toString();
    }

    /** Basal area of square quadrats of a mapped stand (m²). */
    static double[] quadrats(String file, double side, double width) {
        int across = (int) Math.round(side / width);
        double[] sums = new double[across * across];
        ReferenceFiles.csv(file).forEach(row -> {
            int i = (int) Math.min(across - 1, ReferenceFiles.number(row, "x_m") / width);
            int j = (int) Math.min(across - 1, ReferenceFiles.number(row, "y_m") / width);
            double dbh = ReferenceFiles.number(row, "dbh_cm") / 100;
            sums[j * across + i] += Math.PI / 4 * dbh * dbh;
        });
        return sums;
    }

    /** Without a rule: a number of plots fixed beforehand, as the true variation asks for. */
    private String row(
            String stand,
            double[] values,
            double confidence,
            double target,
            @Nullable FixedWidth rule,
            int minimum,
            int runs) {
        Moments truth = Moments.of(values);
        double cv = 100 * Math.sqrt(truth.variance() * (values.length - 1) / values.length) / truth.mean();
        SplittableRandom random = new SplittableRandom(SEED);
        int hits = 0;
        long plots = 0;
        for (int run = 0; run < runs; run++) {
            MeanEstimate end = rule == null
                    ? sample(values, fixed(cv, target, confidence), random)
                    : run(values, confidence, target, rule, minimum, random);
            double half = t(confidence, end.df()) * end.se();
            hits += Math.abs(end.mean() - truth.mean()) <= half ? 1 : 0;
            plots += end.n();
        }
        return String.format(
                        Locale.ROOT,
                        "%s,%.1f,%s,%.0f,%s,%d,%d,%d,%.1f,%.1f,%d%n",
                        stand,
                        cv,
                        confidence,
                        target,
                        rule == null ? "fixed" : rule.id(),
                        SUBSET,
                        minimum,
                        runs,
                        100.0 * hits / runs,
                        (double) plots / runs,
                        SEED)
                .replace("\r\n", "\n");
    }

    private int fixed(double cv, double target, double confidence) {
        int n = SUBSET;
        while (t(confidence, n - 1) * cv / Math.sqrt(n) > target) {
            n += SUBSET;
        }
        return n;
    }

    private MeanEstimate run(
            double[] values, double confidence, double target, FixedWidth rule, int minimum, SplittableRandom random) {
        List<Double> seen = new ArrayList<>();
        MeanEstimate first = null;
        while (true) {
            for (int i = 0; i < SUBSET; i++) {
                seen.add(values[random.nextInt(values.length)]);
            }
            if (seen.size() < minimum) {
                continue;
            }
            MeanEstimate now = estimate(seen);
            first = first == null ? now : first;
            if (rule.mayStop(first, now, target, confidence) || seen.size() >= MOST) {
                return rule.reported(first, now);
            }
        }
    }

    private static MeanEstimate sample(double[] values, int n, SplittableRandom random) {
        List<Double> seen = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            seen.add(values[random.nextInt(values.length)]);
        }
        return estimate(seen);
    }

    private static MeanEstimate estimate(List<Double> values) {
        double sum = 0;
        double squares = 0;
        for (double v : values) {
            sum += v;
            squares += v * v;
        }
        int n = values.size();
        double mean = sum / n;
        double variance = Math.max(0, (squares - n * mean * mean) / (n - 1));
        return new MeanEstimate(n, n - 1, mean, Math.sqrt(variance / n), Math.sqrt(variance));
    }

    private double t(double confidence, double df) {
        return critical.computeIfAbsent(
                Math.round(1e4 * confidence) * 1_000_000 + Math.round(df), k -> StudentT.critical(confidence, df));
    }
}
