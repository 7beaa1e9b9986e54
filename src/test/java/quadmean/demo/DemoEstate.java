package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * Makes an estate that is invented from end to end: forty stands in two regions and two strata, three to six prism points in each, one
 * stand with a single point and one with none, heights on every fourth tree, and mistakes. The same seed gives the same bytes.
 */
public final class DemoEstate {
    /** The seed of the shipped files. */
    public static final long SEED = 20_260_501;

    private static final int STANDS = 40;
    private static final int ONE_POINT = 13;
    private static final int NO_POINT = 31;
    private static final double FACTOR = 20; // ft2/ac
    private static final String[] SPECIES = {"PSME", "TSHE", "THPL"};

    /** A kind of wood: basal area (ft²/ac), middle dbh (in), shares of the species. */
    private record Wood(String code, double basalArea, double dbh, double[] shares) {}

    private static final List<Wood> WOODS = List.of(
            new Wood("young", 120, 11, new double[] {0.70, 0.25, 0.05}),
            new Wood("old", 210, 20, new double[] {0.45, 0.30, 0.25}));

    private static final List<String> REGIONS = List.of("hills", "river");

    private final Random random = new Random(SEED);
    private final List<String> stands = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private int trees;

    private DemoEstate() {
        for (int number = 1; number <= STANDS; number++) {
            stand(number);
        }
        mistakes();
    }

    /** Writes the table of stands and the tally to the files named by the arguments. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), standTable());
        Files.writeString(Path.of(args[1]), tally());
    }

    /** The table of stands as CSV, line ends as on Unix. */
    public static String standTable() {
        return "stand,area_ac,region,stratum\n" + String.join("\n", new DemoEstate().stands) + "\n";
    }

    /** The tally as CSV, line ends as on Unix. */
    public static String tally() {
        return "stand,point,tree,species,dbh_in,height_ft\n" + String.join("\n", new DemoEstate().rows) + "\n";
    }

    private void stand(int number) {
        int region = number <= STANDS / 2 ? 0 : 1;
        Wood wood = WOODS.get(random.nextInt(3) == 0 ? 1 : 0);
        String code = String.format(Locale.ROOT, "%s%02d", region == 0 ? "H" : "R", number);
        stands.add(String.format(
                Locale.ROOT, "%s,%.1f,%s,%s", code, 20 + 120 * random.nextDouble(), REGIONS.get(region), wood.code()));
        double level = Math.exp(0.25 * random.nextGaussian());
        int points = number == NO_POINT ? 0 : number == ONE_POINT ? 1 : 3 + random.nextInt(4);
        for (int point = 1; point <= points; point++) {
            point(code, point, wood, region, level * Math.exp(0.2 * random.nextGaussian()));
        }
    }

    private void point(String stand, int point, Wood wood, int region, double level) {
        double expected = wood.basalArea() * level / FACTOR;
        int n = (int) Math.round(expected + 0.8 * Math.sqrt(expected) * random.nextGaussian());
        if (n <= 0) {
            rows.add(stand + "," + point + ",,,,");
        }
        for (int tree = 1; tree <= n; tree++) {
            int species = pick(wood.shares());
            double dbh = Math.max(5, wood.dbh() * Math.exp(0.35 * random.nextGaussian()));
            trees++;
            rows.add(String.format(
                    Locale.ROOT,
                    "%s,%d,%d,%s,%.1f,%s",
                    stand,
                    point,
                    tree,
                    SPECIES[species],
                    dbh,
                    trees % 4 == 0 ? height(species, region, dbh) : ""));
        }
    }

    /** A height (ft) by a curve of its species and region, and a scatter. */
    private String height(int species, int region, double dbh) {
        double[] a = {5.20, 5.10, 4.95};
        double[] b = {-9.0, -8.2, -8.8};
        double tall = 4.5 + Math.exp(a[species] - 0.12 * region + b[species] / (dbh + 1));
        return String.format(Locale.ROOT, "%.0f", tall * Math.exp(0.08 * random.nextGaussian()));
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

    /** Mistakes, each on rows of its own. */
    private void mistakes() {
        change(41, row -> field(row, 4, ""));
        change(150, row -> field(row, 3, "PSMF"));
        change(222, row -> field(row, 4, "1l.4"));
        change(measured(400), row -> row.substring(0, row.length() - 1)); // short of its last digit
        change(611, row -> field(row, 2, rows.get(610).split(",", -1)[2]));
        rows.add(701, rows.get(700));
        rows.addAll(List.of("R99,1,1,PSME,14.2,", "R99,1,2,TSHE,9.8,"));
    }

    /** The first row from here on with a height. */
    private int measured(int from) {
        int i = from;
        while (rows.get(i).endsWith(",")) {
            i++;
        }
        return i;
    }

    private void change(int row, UnaryOperator<String> slip) {
        rows.set(row, slip.apply(rows.get(row)));
    }

    private static String field(String row, int at, String value) {
        String[] fields = row.split(",", -1);
        fields[at] = value;
        return String.join(",", fields);
    }
}
