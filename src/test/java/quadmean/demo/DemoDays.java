package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The tally of the demonstration stand after some days: two of its four subsets are walked, and three plots of the third. Each subset
 * is every fourth plot of the demonstration stand, as its crews number them.
 */
public final class DemoDays {
    private static final int SUBSETS = 4;
    private static final int WHOLE = 2;
    private static final List<Integer> OF_THE_THIRD = List.of(3, 7, 11);

    private DemoDays() {}

    /** Writes the tally to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), tally());
    }

    /** Plots of a subset, counted from 1. */
    public static List<Integer> subset(int number) {
        return IntStream.rangeClosed(1, 40)
                .filter(p -> (p - 1) % SUBSETS == number - 1)
                .boxed()
                .toList();
    }

    /** The tally as CSV, line ends as on Unix. */
    public static String tally() {
        List<String> lines = DemoStand.tally(DemoStand.SEED).lines().toList();
        return lines.get(0) + "\n"
                + lines.stream()
                        .skip(1)
                        .filter(l -> isRun(Integer.parseInt(l.split(",", -1)[0])))
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static boolean isRun(int plot) {
        return (plot - 1) % SUBSETS < WHOLE || OF_THE_THIRD.contains(plot);
    }
}
