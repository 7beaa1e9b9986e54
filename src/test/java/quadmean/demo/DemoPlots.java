package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Twelve permanent plots at two dates, five years apart. Invented from end to end. */
public final class DemoPlots {
    private static final String HEADER = "plot,stratum,tree,species,dbh_in,height_ft,status";
    private static final String[] SPECIES = {"PSME", "LAOC", "ABGR", "PICO"};
    private static final long SEED = 20260420;

    private final Random random = new Random(SEED);
    private final List<String> before = new ArrayList<>(List.of(HEADER));
    private final List<String> after = new ArrayList<>(List.of(HEADER));

    private DemoPlots() {}

    /** Writes both tallies to the folder named by the first argument. */
    public static void main(String[] args) throws IOException {
        List<String> both = tallies();
        Files.writeString(Path.of(args[0], "demo-plots-2021.csv"), both.get(0));
        Files.writeString(Path.of(args[0], "demo-plots-2026.csv"), both.get(1));
    }

    /** The tallies of the earlier and the later date as CSV, line ends as on Unix. */
    public static List<String> tallies() {
        DemoPlots plots = new DemoPlots();
        for (int plot = 1; plot <= 12; plot++) {
            plots.plot(plot, plot <= 7 ? "N" : "B");
        }
        return List.of(String.join("\n", plots.before) + "\n", String.join("\n", plots.after) + "\n");
    }

    private void plot(int plot, String stratum) {
        boolean north = stratum.equals("N");
        int trees = (north ? 16 : 24) + random.nextInt(8);
        boolean thinned = plot == 9 || plot == 10;
        for (int tree = 1; tree <= trees; tree++) {
            String species = north ? SPECIES[random.nextInt(3)] : SPECIES[random.nextInt(2) * 3];
            double dbh = Math.max(4.1, (north ? 11 : 8) * Math.exp(0.35 * random.nextGaussian()));
            double grown = dbh + Math.max(0, 0.9 + 0.35 * random.nextGaussian());
            boolean dies = random.nextDouble() < 0.06;
            boolean cut = thinned && random.nextDouble() < 0.3;
            boolean measured = tree % 3 == 1;
            before.add(row(plot, stratum, tree, species, dbh, measured, "live"));
            if (!cut) {
                after.add(row(
                        plot, stratum, tree, species, dies ? dbh : grown, measured && !dies, dies ? "dead" : "live"));
            }
        }
        for (int k = 1; k <= random.nextInt(4); k++) {
            after.add(row(plot, stratum, trees + k, north ? "ABGR" : "PICO", 4.1 + random.nextDouble(), false, "live"));
        }
    }

    private String row(
            int plot, String stratum, int tree, String species, double dbh, boolean measured, String status) {
        double height = 4.5 + 115 * Math.exp(-6.5 / dbh) * Math.exp(0.05 * random.nextGaussian());
        return String.format(
                Locale.ROOT,
                "%d,%s,%d,%s,%.1f,%s,%s",
                plot,
                stratum,
                tree,
                species,
                dbh,
                measured ? String.format(Locale.ROOT, "%.0f", height) : "",
                status);
    }
}
