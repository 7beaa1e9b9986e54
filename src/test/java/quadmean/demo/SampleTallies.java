package quadmean.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import quadmean.measure.PointGauge;
import quadmean.measure.TractRectangle;
import quadmean.measure.TractRectangle.Images;
import quadmean.support.ReferenceFiles;
import quadmean.units.DistanceTo;

/**
 * Small tallies for the examples of sampling designs, cut out of trees that were really measured: 584 longleaf pines on 200 m × 200
 * m, 236 red oaks, and the Idaho points. Which tree came into which sample is constructed here; sizes and places are as published.
 */
public final class SampleTallies {
    private static final double SIDE = 200;
    private static final TractRectangle TRACT = new TractRectangle(SIDE, SIDE);

    /** A tally and the file that it belongs in. */
    public enum Tally {
        STRIPS("longleaf-strips.csv", SampleTallies::strips),
        COMPLETE("longleaf-complete.csv", SampleTallies::complete),
        HALF_SWEEPS("longleaf-half-sweeps.csv", SampleTallies::halfSweeps),
        MIRAGE("longleaf-mirage.csv", SampleTallies::mirage),
        THREE_P("red-oak-3p.csv", SampleTallies::threeP),
        POINT_3P("idaho-point-3p.csv", SampleTallies::pointThreeP),
        COUNT_POINTS("idaho-count-points.csv", SampleTallies::countPoints),
        TWO_FACTORS("idaho-two-factors.csv", SampleTallies::twoFactors);

        private final String file;
        private final Supplier<List<String>> lines;

        Tally(String file, Supplier<List<String>> lines) {
            this.file = file;
            this.lines = lines;
        }

        /** Where it belongs. */
        public Path path() {
            return Path.of("datasets", file);
        }

        /** The tally as CSV, line ends as on Unix. */
        public String text() {
            return String.join("\n", lines.get()) + "\n";
        }
    }

    private record Pine(double x, double y, String dbh) {
        double dbhCm() {
            return Double.parseDouble(dbh);
        }
    }

    private SampleTallies() {}

    /** Writes all of them. */
    public static void main(String[] args) throws IOException {
        for (Tally tally : Tally.values()) {
            Files.writeString(tally.path(), tally.text());
        }
    }

    private static List<Pine> pines() {
        return ReferenceFiles.csv("longleaf.csv").stream()
                .map(r -> new Pine(
                        ReferenceFiles.number(r, "x_m"), ReferenceFiles.number(r, "y_m"), r.getField("dbh_cm")))
                .toList();
    }

    /** Ten strips of 10 m × 200 m, one in each 20 m from west to east. */
    private static List<String> strips() {
        List<String> lines = start("strip,species,dbh_cm");
        for (int k = 0; k < 10; k++) {
            int from = 20 * k + 5;
            int strip = k + 1;
            pines().stream()
                    .filter(p -> p.x() >= from && p.x() < from + 10)
                    .forEach(p -> lines.add(strip + ",longleaf," + p.dbh()));
        }
        return lines;
    }

    /** Every pine, in four blocks, those in the west and those in the east a stratum each. */
    private static List<String> complete() {
        List<String> lines = start("block,stratum,species,dbh_cm");
        for (Pine p : pines()) {
            String side = p.x() < SIDE / 2 ? "W" : "E";
            lines.add(side + (p.y() < SIDE / 2 ? "1" : "2") + "," + side + ",longleaf," + p.dbh());
        }
        return lines;
    }

    /** The northern half of the sweep at 16 points 25 m and more inside, factor 4 m²/ha. */
    private static List<String> halfSweeps() {
        List<String> lines = start("point,species,dbh_cm");
        PointGauge gauge = new PointGauge(4);
        for (int k = 0; k < 16; k++) {
            double x = 25 + 50 * (k % 4);
            double y = 25 + 50 * (k / 4);
            int before = lines.size();
            for (Pine p : pines()) {
                double limit = gauge.limitingDistance(p.dbhCm(), DistanceTo.CENTRE);
                if (p.y() >= y && Math.hypot(p.x() - x, p.y() - y) <= limit) {
                    lines.add((k + 1) + ",longleaf," + p.dbh());
                }
            }
            ifEmpty(lines, before, (k + 1) + ",,");
        }
        return lines;
    }

    /** 25 plots of 0.05 ha with random centres, some over the edge: trees reached again from the images count again. */
    private static List<String> mirage() {
        List<String> lines = start("plot,species,dbh_cm,edge");
        Random random = new Random(1988);
        double radius = Math.sqrt(500 / Math.PI);
        for (int k = 1; k <= 25; k++) {
            double x = SIDE * random.nextDouble();
            double y = SIDE * random.nextDouble();
            int before = lines.size();
            for (Pine p : pines()) {
                int times = TRACT.mirage(x, y, p.x(), p.y(), radius, Images.EDGES_AND_CORNERS);
                if (times > 0) {
                    lines.add(k + ",longleaf," + p.dbh() + "," + (times == 1 ? "" : times));
                }
            }
            ifEmpty(lines, before, k + ",,,");
        }
        return lines;
    }

    /** All 236 oaks with 0.1·D² as the prediction, limit 100: about 46 are drawn, and they have dbh and height. */
    private static List<String> threeP() {
        List<String> lines = start("block,tree,species,prediction,dbh_in,height_ft");
        Random random = new Random(1965);
        ReferenceFiles.csv("redoak.csv").forEach(r -> {
            double d = ReferenceFiles.number(r, "dbh_in");
            double prediction = Math.round(d * d) / 10.0;
            boolean drawn = 1 + random.nextInt(LIMIT) <= prediction;
            String measured = drawn ? r.getField("dbh_in") + "," + r.getField("height_ft") : ",";
            lines.add("1," + r.getField("tree") + ",oak," + plain(prediction) + "," + measured);
        });
        return lines;
    }

    private static final int LIMIT = 100;

    /** Each tree of the first 24 Idaho points with its dbh in cm as the prediction; about a third are drawn, limit 120. */
    private static List<String> pointThreeP() {
        List<String> lines = start("plot,tree,species,prediction,dbh,height");
        Random random = new Random(24);
        for (String[] f : idaho()) {
            if (Integer.parseInt(f[0]) > 24) {
                continue;
            }
            if (f[3].isEmpty()) {
                lines.add(f[0] + "," + f[1] + ",,,,");
                continue;
            }
            long guess = Math.round(Double.parseDouble(f[3]) / 10);
            boolean drawn = 1 + random.nextInt(120) <= guess;
            lines.add(f[0] + "," + f[1] + "," + f[2] + "," + guess + "," + (drawn ? f[3] + "," + f[4] : ","));
        }
        return lines;
    }

    /** The 72 Idaho points, every third of them as it was measured; of the others the number of trees of each species. */
    private static List<String> countPoints() {
        List<String> lines = start("plot,species,count,dbh,height");
        for (String[] f : idaho()) {
            boolean measured = Integer.parseInt(f[0]) % 3 == 0;
            boolean empty = f[2].isEmpty();
            lines.add(f[0] + "," + f[2] + "," + (empty ? "" : "1") + "," + (measured ? f[3] + "," + f[4] : ","));
        }
        return lines;
    }

    /** Of the trees that factor 7 chose a quarter at random keep their dbh: so many a factor of 28 would have chosen. */
    private static List<String> twoFactors() {
        List<String> lines = start("plot,species,dbh,height");
        Random random = new Random(28);
        for (String[] f : idaho()) {
            boolean measured = !f[2].isEmpty() && random.nextInt(4) == 0;
            lines.add(f[0] + "," + f[2] + "," + (measured ? f[3] + "," + f[4] : ","));
        }
        return lines;
    }

    /** Rows of the field book, without the height of tree 67-6 and with species F and FG taken as grand fir. */
    private static List<String[]> idaho() {
        try {
            return Files.readAllLines(Path.of("datasets/idaho-points-1-72.csv"), StandardCharsets.UTF_8).stream()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .map(f -> new String[] {
                        f[0],
                        f[1],
                        f[3].isEmpty() ? "" : f[2].startsWith("F") ? "GF" : f[2],
                        f[3],
                        f[0].equals("67") && f[1].equals("6") ? "" : f[4]
                    })
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> start(String header) {
        return new ArrayList<>(List.of(header));
    }

    private static void ifEmpty(List<String> lines, int before, String row) {
        if (lines.size() == before) {
            lines.add(row);
        }
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
