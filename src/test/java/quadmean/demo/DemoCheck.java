package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * A checker's tally of twelve plots of the demonstration stand, invented like it. The checker reads as the crews do but for
 * what is planted: crew Sumac reads each dbh 0.3 in high, one Douglas-fir was written down as a grand fir, and two trees near
 * the edge of their plots were missed.
 */
public final class DemoCheck {
    /** Plots of the crew that reads high. */
    public static final List<Integer> SUMAC = List.of(8, 9, 10, 11, 12, 13, 24, 25, 26, 27, 28, 36, 37, 38);

    /** The crew's tree whose species the checker has otherwise. */
    public static final String MIXED_UP = "ABGR";

    private static final String HEADER =
            "plot,stratum,tree,species,dbh_in,top_pct,base_pct,dist_ft,grade,defect_pct,point_ft,note";

    private static final int PLOTS = 12;
    private static final double SLIP = 0.3;
    private static final long SEED = 20260412;

    /** Plots with a mistake of the desk, which {@code check} finds, and the two without trees: nothing to plant there. */
    private final Set<String> spared;

    private final Random random = new Random(SEED);
    private final List<String[]> cruise;

    private DemoCheck() {
        this.cruise = DemoStand.tally(DemoStand.SEED)
                .lines()
                .skip(1)
                .map(l -> l.split(",", -1))
                .toList();
        this.spared = Set.of(26, 77, 125, 205, 332, 414).stream()
                .map(line -> cruise.get(line - 2)[0])
                .collect(java.util.stream.Collectors.toSet());
    }

    /** Writes the tally to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), tally());
    }

    /** The tally as CSV, line ends as on Unix. */
    public static String tally() {
        return new DemoCheck().rows();
    }

    private String rows() {
        List<String> rows = new ArrayList<>();
        List<String> chosen = chosen();
        String mixed = chosen.get(1);
        List<String> missing = List.of(chosen.get(4), chosen.get(9));
        boolean isMixed = false;
        for (String plot : chosen) {
            List<String[]> own = cruise.stream().filter(f -> f[0].equals(plot)).toList();
            for (String[] f : own) {
                boolean swap = !isMixed && plot.equals(mixed) && f[3].equals(MIXED_UP);
                isMixed |= swap;
                rows.add(again(f, swap));
            }
            if (missing.contains(plot)) {
                rows.add(missed(own.get(0), own.size() + 1, missing.indexOf(plot)));
            }
        }
        return HEADER + "\n" + String.join("\n", rows) + "\n";
    }

    /** Twelve plots drawn at random among those without mistakes of the desk, in the order of their numbers. */
    private List<String> chosen() {
        List<String> plots = new ArrayList<>(cruise.stream()
                .map(f -> f[0])
                .distinct()
                .filter(p -> !spared.contains(p))
                .sorted(java.util.Comparator.comparingInt(Integer::parseInt))
                .toList());
        Collections.shuffle(plots, random);
        return plots.subList(0, PLOTS).stream()
                .sorted(java.util.Comparator.comparingInt(Integer::parseInt))
                .toList();
    }

    /** The checker's row for a tree of the crew. */
    private String again(String[] f, boolean swap) {
        if (f[3].isEmpty()) {
            return String.join(",", f[0], f[1], "", "", "", "", "", "", "", "", "", "no trees");
        }
        double truth = Double.parseDouble(f[4]) - (SUMAC.contains(Integer.parseInt(f[0])) ? SLIP : 0);
        double u = random.nextDouble();
        double dbh = truth + (u < 0.1 ? -0.1 : u > 0.9 ? 0.1 : 0);
        String top = f[5].isEmpty() ? "" : String.valueOf(Integer.parseInt(f[5]) + random.nextInt(3) - 1);
        return String.join(
                ",",
                f[0],
                f[1],
                f[2],
                swap ? "PSME" : f[3],
                String.format(Locale.ROOT, "%.1f", dbh),
                top,
                f[6],
                f[7],
                f[8],
                f[9],
                "",
                "");
    }

    /** A tree that the crew took for out; the plots are circles of 37.24 ft radius. */
    private static String missed(String[] first, int number, int which) {
        return String.join(
                ",",
                first[0],
                first[1],
                String.valueOf(number),
                which == 0 ? "LAOC" : "PSME",
                which == 0 ? "12.4" : "9.7",
                "",
                "",
                "",
                which == 0 ? "2" : "3",
                "",
                which == 0 ? "36.8" : "37.1",
                "not in the crew's tally");
    }
}
