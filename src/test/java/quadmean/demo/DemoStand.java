package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Makes the tally of the demonstration stand, which is invented from end to end: three strata, forty 1/10-acre plots,
 * dbh on every tree, clinometer readings on every fourth, and the mistakes that crews make. The same seed gives the same
 * bytes.
 */
public final class DemoStand {
    /** The seed of the shipped tally. */
    public static final long SEED = 20_260_401;

    private static final String HEADER =
            "plot,stratum,tree,species,dbh_in,top_pct,base_pct,dist_ft,grade,defect_pct,note";

    /** A stratum: plots in it, mean number of trees on a plot, mean dbh (in), shares of the species. */
    private record Cover(String code, int plots, double trees, double dbh, double[] shares) {}

    private static final String[] SPECIES = {"PSME", "LAOC", "ABGR", "PICO"};
    private static final List<Cover> COVERS = List.of(
            new Cover("N", 18, 17, 11.5, new double[] {0.55, 0.15, 0.30, 0.00}),
            new Cover("B", 14, 24, 8.5, new double[] {0.15, 0.20, 0.05, 0.60}),
            new Cover("C", 8, 11, 14.5, new double[] {0.35, 0.05, 0.60, 0.00}));

    private final Random random;
    private final List<String> rows = new ArrayList<>();
    private int trees;

    private DemoStand(long seed) {
        this.random = new Random(seed);
    }

    /** Writes the tally to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), tally(SEED));
    }

    /** The tally as CSV, line ends as on Unix. */
    public static String tally(long seed) {
        DemoStand stand = new DemoStand(seed);
        walk().forEach(visit -> stand.plot(visit.plot(), visit.cover()));
        stand.mistakes();
        stand.rows.replaceAll(DemoStand::graded);
        return HEADER + "\n" + String.join("\n", stand.rows) + "\n";
    }

    /** The row with a grade and a defect before its note; a row that stands twice gets the same twice. */
    private static String graded(String row) {
        String[] f = row.split(",", -1);
        Random random = new Random(SEED * 31 + row.hashCode() * 0x9E3779B97F4A7C15L);
        boolean big = !f[4].isEmpty() && Double.parseDouble(f[4]) >= 9;
        String grade = big ? String.valueOf(1 + random.nextInt(3)) : "";
        String defect = big && random.nextDouble() < 0.3 ? String.valueOf(5 * (1 + random.nextInt(5))) : "";
        String note = f[8];
        return String.join(",", java.util.Arrays.copyOf(f, 8)) + "," + grade + "," + defect + "," + note;
    }

    /** A plot and when it is visited, as a share of its stratum: the crew works in all strata from the first day on. */
    private record Visit(int plot, Cover cover, double when) {}

    private static List<Visit> walk() {
        List<Visit> visits = new ArrayList<>();
        for (Cover cover : COVERS) {
            for (int i = 0; i < cover.plots(); i++) {
                visits.add(new Visit(visits.size() + 1, cover, (i + 0.5) / cover.plots()));
            }
        }
        visits.sort(java.util.Comparator.comparingDouble(Visit::when));
        return visits;
    }

    private void plot(int plot, Cover cover) {
        boolean gap = plot == 9 || plot == 27;
        if (gap) {
            rows.add(plot + "," + cover.code() + ",,,,,,,no trees: " + (plot == 9 ? "rock" : "old landing"));
            return;
        }
        double density = cover.trees() * Math.exp(0.25 * random.nextGaussian() - 0.03);
        int n = Math.max(1, (int) Math.round(density + Math.sqrt(density) * random.nextGaussian() * 0.6));
        for (int tree = 1; tree <= n; tree++) {
            rows.add(tree(plot, cover, tree));
        }
    }

    private String tree(int plot, Cover cover, int number) {
        int species = pick(cover.shares());
        double dbh = Math.max(4.1, cover.dbh() * Math.exp(0.38 * random.nextGaussian() - 0.05));
        String row = String.format(Locale.ROOT, "%d,%s,%d,%s,%.1f", plot, cover.code(), number, SPECIES[species], dbh);
        trees++;
        return trees % 4 == 0 ? row + "," + readings(species, dbh) + "," : row + ",,,,";
    }

    /** Percent-scale readings from a taped distance that is often shorter than the tree is tall. */
    private String readings(int species, double dbh) {
        double[] a = {4.95, 4.90, 4.92, 4.65};
        double[] b = {-8.2, -7.0, -8.0, -5.6};
        double height = 4.5 + Math.exp(a[species] + b[species] / (dbh + 1)) * Math.exp(0.09 * random.nextGaussian());
        int distance = 50 + 10 * random.nextInt(6);
        double base = -100 * (5.2 + 6 * random.nextGaussian() * 0.5) / distance;
        double top = 100 * height / distance + base;
        return String.format(Locale.ROOT, "%d,%d,%d", Math.round(top), Math.round(base), distance);
    }

    private int pick(double[] shares) {
        double u = random.nextDouble();
        int i = 0;
        while (i < shares.length - 1 && u >= shares[i]) {
            u -= shares[i];
            i++;
        }
        return i;
    }

    /** A few mistakes, each on a row of its own. */
    private void mistakes() {
        change(first(20, "PSME"), r -> r.replace("PSME", "PSMF"));
        change(75, r -> withoutField(r, 4, "wet sheet"));
        change(measured(120), r -> withoutField(r, 6, ""));
        change(measured(200), DemoStand::lostDigit);
        change(330, r -> renumbered(r, rows.get(329)));
        rows.add(412, rows.get(411));
    }

    private void change(int row, java.util.function.UnaryOperator<String> slip) {
        rows.set(row, slip.apply(rows.get(row)));
    }

    /** The first row from here on of a species. */
    private int first(int from, String species) {
        int i = from;
        while (!rows.get(i).contains(species)) {
            i++;
        }
        return i;
    }

    /** The first row from here on that has readings. */
    private int measured(int from) {
        int i = from;
        while (rows.get(i).contains(",,,")) {
            i++;
        }
        return i;
    }

    private static String withoutField(String row, int field, String note) {
        String[] fields = row.split(",", -1);
        fields[field] = "";
        fields[8] = note;
        return String.join(",", fields);
    }

    /** The top reading keyed without its first digit. */
    private static String lostDigit(String row) {
        String[] fields = row.split(",", -1);
        fields[5] = fields[5].substring(1);
        return String.join(",", fields);
    }

    /** The row with the tree number of the row before it. */
    private static String renumbered(String row, String before) {
        String[] fields = row.split(",", -1);
        fields[2] = before.split(",", -1)[2];
        return String.join(",", fields);
    }
}
