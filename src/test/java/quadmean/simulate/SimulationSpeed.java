package quadmean.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.model.Progress;
import quadmean.simulate.Trials.Stand;

/** Counts simulated cruises a second: twenty points with mirage on the longleaf map of 584 trees. No test; it asserts nothing. */
public final class SimulationSpeed {
    private static final double MB = 1 << 20;

    private SimulationSpeed() {}

    /**
     * Runs the cruises and prints how fast they were, and what memory held halfway and at the end.
     *
     * @param args number of cruises: {@code 100000}
     */
    public static void main(String[] args) throws IOException {
        long cruises = Long.parseLong(args[0]);
        Path folder = Files.createTempDirectory("speed");
        Design design = Trials.design(folder, Methods.SIMPLE_RANDOM.design(Stand.LONGLEAF, 20));
        Simulator simulator = Simulator.of(design, Stand.LONGLEAF.forest(design), 1);
        Progress memory = (work, done, of) -> {
            if (done == of || (done >= of / 2 && done < of / 2 + 32)) {
                System.gc();
                Runtime r = Runtime.getRuntime();
                System.out.printf(
                        Locale.ROOT,
                        "%d of %d blocks: %.1f MB in use%n",
                        done,
                        of,
                        (r.totalMemory() - r.freeMemory()) / MB);
            }
        };
        long start = System.nanoTime();
        SimulationResult result = simulator.run(cruises, 1, EnumSet.of(IntervalRule.STUDENT_T), memory);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "%d cruises in %.1f s: %.0f cruises/s on %d processors; %s%n",
                cruises,
                seconds,
                cruises / seconds,
                Runtime.getRuntime().availableProcessors(),
                result.target().orElseThrow());
    }
}
