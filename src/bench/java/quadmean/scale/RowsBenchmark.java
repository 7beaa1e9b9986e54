package quadmean.scale;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.field.EstateFile;
import quadmean.field.EstatePosition;
import quadmean.field.EstateRange;
import quadmean.field.EstateRanges;
import quadmean.field.EstateSink;
import quadmean.field.EstateTable;
import quadmean.field.RangeReader;
import quadmean.field.RowFindings;
import quadmean.field.TallyReader;
import quadmean.model.EstateStand;
import quadmean.model.Problem;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.scale.EstateFiles.Existing;
import quadmean.scale.EstateFiles.Packing;

/**
 * Milliseconds for the rows of a tally, from the file to checked trees: those of a stand, gathered into plots, and those of an
 * estate, handed on one by one. Both hold about the same number of trees.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class RowsBenchmark {
    private static final int STANDS = 250;
    private static final int PLOTS = 20;
    private static final int TREES = 20;
    private static final int MEMORY = 1 << 17;

    private static final String STAND = """
            schema = 1
            [cruise]
            name = "Invented stand"
            units = "metric"
            area = 100
            [plot]
            kind = "fixed"
            area = 0.04
            [[tally]]
            file = "stand.csv"
            [tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            height = { name = "height", unit = "m" }
            [species.PSME]
            [species.TSHE]
            [species.THPL]
            [species.ALRU2]
            [species.ABGR]
            """;

    private Path folder = Path.of("");
    private @Nullable Design stand;
    private @Nullable Design estate;
    private final Map<String, Integer> stands = new HashMap<>();

    /** About 100 000 rows: an estate, and the same rows as one stand whose plots are numbered through. */
    @Setup
    public void write() throws IOException {
        folder = Files.createTempDirectory("rows");
        EstateFiles files = new EstateFiles(folder, 1, Packing.PLAIN, Existing.REFUSE);
        new EstateGenerator(new EstateSize(STANDS, PLOTS, TREES, 11), files).write();
        estate = read(files.design());
        for (EstateStand one : EstateTable.read(estate(), estate().estate().orElseThrow(), RowsBenchmark::unexpected)) {
            stands.put(one.code(), stands.size());
        }
        stand = read(oneStand(files.tally(0)));
    }

    private Path oneStand(Path tally) throws IOException {
        List<String> rows = new ArrayList<>(List.of("plot,tree,species,dbh,height"));
        try (Stream<String> lines = Files.lines(tally)) {
            lines.skip(1).forEach(line -> rows.add(line.replaceFirst(",", "-")));
        }
        Files.write(folder.resolve("stand.csv"), rows);
        return Files.writeString(folder.resolve("stand.toml"), STAND);
    }

    private static Design read(Path file) throws IOException {
        return Objects.requireNonNull(DesignReader.read(file).design(), () -> "the design " + file + " has mistakes");
    }

    private static void unexpected(Problem problem) {
        throw new IllegalStateException(problem.toString());
    }

    private Design estate() {
        return Objects.requireNonNull(estate);
    }

    /** Removes the files. */
    @TearDown
    public void remove() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** Rows into the plots of a stand. */
    @Benchmark
    public Tally rowsOfAStand() throws IOException {
        Tally tally = TallyReader.read(Objects.requireNonNull(stand));
        if (tally.isRefused()) {
            throw new IllegalStateException(tally.problems().get(0).toString());
        }
        return tally;
    }

    /** Rows of an estate, by one thread, by a reader that has seen none before. */
    @Benchmark
    public long rowsOfAnEstate() throws IOException {
        Counter counter = new Counter();
        RangeReader reader = new RangeReader(estate(), counter, MEMORY);
        List<EstateFile> files = quadmean.field.EstateFiles.open(estate(), RowsBenchmark::unexpected);
        try (EstateRanges ranges = EstateRanges.of(
                files, EstatePosition.START, EstateRanges.USUAL_BYTES, stands::containsKey)) {
            for (EstateRange range = ranges.next(); range != null; range = ranges.next()) {
                reader.read(range).problems().forEach(RowsBenchmark::unexpected);
                ranges.giveBack(range);
            }
        }
        if (counter.trees == 0) {
            throw new IllegalStateException("no tree came through");
        }
        return counter.trees;
    }

    /** Takes trees as they are and counts them. */
    private final class Counter implements EstateSink {
        private long trees;

        @Override
        public int stand(String code) {
            return stands.getOrDefault(code, -1);
        }

        @Override
        public int kind(int ofStand) {
            return 0;
        }

        @Override
        public void begin(int ofStand, String plot, long line) {
            // plots are not added up
        }

        @Override
        public int work(int ofStand, Tree tree, Use use, RowFindings problems) {
            return 0;
        }

        @Override
        public void add(int number) {
            trees++;
        }

        @Override
        public void end() {
            // plots are not added up
        }
    }
}
