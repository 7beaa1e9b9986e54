package quadmean.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;

/**
 * An invented estate of 12 stands whose every number follows from a formula, so that {@code estate.R} makes the same. No stand, tree,
 * height or equation in it is real.
 *
 * @param seed moves the diameters
 * @param every of so many trees one has a height
 */
public record FormulaEstate(int seed, int every) {
    public static final int STANDS = 12;
    public static final double PLOT_HA = 0.04;
    private static final List<String> SPECIES = List.of("PSME", "TSHE", "ABGR");
    private static final List<Double> LOG_A = List.of(-9.8, -9.88, -9.7);

    /**
     * A tree.
     *
     * @param height height as measured (m); NaN if it was not
     */
    public record Row(int stand, int plot, int tree, String species, double dbh, double height) {
        String text() {
            return String.format(
                    Locale.ROOT,
                    "%d,%d,%s,%.1f,%s",
                    plot,
                    tree,
                    species,
                    dbh,
                    Double.isNaN(height) ? "" : String.format(Locale.ROOT, "%.1f", height));
        }
    }

    public static String code(int stand) {
        return String.format(Locale.ROOT, "S%02d", stand);
    }

    public static double areaHa(int stand) {
        return 5 + stand * 7 % 11 + 0.25 * stand;
    }

    public static String stratum(int stand) {
        return stand % 3 == 0 ? "north" : "south";
    }

    public static int plots(int stand) {
        return 3 + stand * 5 % 4;
    }

    public List<Row> trees(int stand, int plot) {
        List<Row> rows = new ArrayList<>();
        int trees = (stand * 3 + plot * 5) % 9;
        for (int tree = 1; tree <= trees; tree++) {
            int kind = stand == 4 ? 0 : (stand + plot + tree) % 3;
            double dbh = (80 + (stand * 37 + plot * 101 + tree * 53 + seed * 89) % 467) / 10.0;
            double x = dbh / (1.2 + 0.17 * dbh);
            double measured = Math.floor((1.3 + x * x + (stand + tree) % 5 * 0.3) * 10 + 0.5) / 10;
            rows.add(new Row(
                    stand,
                    plot,
                    tree,
                    SPECIES.get(kind),
                    dbh,
                    (tree + plot + seed) % every == 0 ? measured : Double.NaN));
        }
        return rows;
    }

    /** The lines of a plot, without their stand. */
    public List<String> lines(int stand, int plot) {
        List<Row> trees = trees(stand, plot);
        return trees.isEmpty()
                ? List.of(plot + ",,,,")
                : trees.stream().map(Row::text).toList();
    }

    /** The lines of the tally of a stand. */
    public List<String> lines(int stand) {
        List<String> lines = new ArrayList<>();
        for (int plot = 1; plot <= plots(stand); plot++) {
            lines.addAll(lines(stand, plot));
        }
        return lines;
    }

    /** The tally of all stands. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int stand = 1; stand <= STANDS; stand++) {
            String code = code(stand);
            lines(stand).forEach(line -> lines.add(code + "," + line));
        }
        return lines;
    }

    /** Volume by the equation of a species (m³). */
    public static double volume(String species, double dbh, double height) {
        return Math.exp(LOG_A.get(SPECIES.indexOf(species)) + 1.78 * Math.log(dbh) + 1.08 * Math.log(height));
    }

    private static String equations() {
        return SPECIES.stream()
                .map(s -> """
                [species.%s]
                name = "%1$s, invented"
                [volume.%1$s]
                form = "schumacher_hall"
                a = %s
                b = 1.78
                c = 1.08
                log_base = "e"
                dbh_unit = "cm"
                height_unit = "m"
                volume_unit = "m3"
                source = "made up"
                standing = "invented"
                """.formatted(s, LOG_A.get(SPECIES.indexOf(s))))
                .collect(Collectors.joining());
    }

    private static String design(String cruise, String tally, String more) {
        return """
                schema = 1
                [cruise]
                name = "By formula"
                units = "metric"
                seed = 11
                %s
                [plot]
                kind = "fixed"
                area = 0.04
                [height]
                off_curve = 1000
                [[tally]]
                file = "%s"
                [tally.columns]
                plot = "plot"
                tree = "tree"
                species = "species"
                dbh = { name = "dbh", unit = "cm" }
                height = { name = "height", unit = "m" }
                """.formatted(cruise, tally) + more + equations();
    }

    /** Design and tally of one stand. */
    public Design stand(Path folder, int stand) throws IOException {
        Files.writeString(
                folder.resolve("stand.csv"), "plot,tree,species,dbh,height\n" + String.join("\n", lines(stand)) + "\n");
        String policies = "[policy]\nratio-unlikely = \"keep\"\nunit-slip = \"keep\"\nheight-off-curve = \"keep\"\n";
        return read(folder.resolve("stand.toml"), design("area = " + areaHa(stand), "stand.csv", policies));
    }

    /** Design and table of stands of the estate; the tally is whatever is in the file. */
    public static Design estate(Path folder, String tally, String regionColumn, String more) throws IOException {
        StringBuilder stands = new StringBuilder("stand,ha,own,region,stratum\n");
        for (int s = 1; s <= STANDS; s++) {
            stands.append(code(s) + "," + areaHa(s) + "," + code(s) + ",R" + s % 2 + "," + stratum(s) + "\n");
        }
        Files.writeString(folder.resolve("stands.csv"), stands);
        String estate = "stand = \"stand\"\n[estate.columns]\nstand = \"stand\"\narea = \"ha\"\nregion = \""
                + regionColumn + "\"\nstratum = \"stratum\"\n[estate]\nstands = \"stands.csv\"\n" + more;
        return read(folder.resolve("estate.toml"), design("", tally, estate));
    }

    private static Design read(Path file, String text) throws IOException {
        DesignReading reading = DesignReader.read(Files.writeString(file, text));
        assertEquals(List.of(), reading.problems(), text);
        return Objects.requireNonNull(reading.design());
    }

    /** Header of the tally of an estate. */
    public static final String HEADER = "stand,plot,tree,species,dbh,height\n";
}
