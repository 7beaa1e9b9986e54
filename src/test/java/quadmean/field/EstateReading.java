package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.model.Problem;
import quadmean.model.Tree;

/** The tally of an estate read range by range: what came of it, for tests to compare. */
final class EstateReading implements EstateSink {
    /** Table of stands that {@link #design} names. */
    static final String STANDS = "stand,ha\nS1,12.5\nS2,3\n";

    final List<Problem> problems = new ArrayList<>();
    /** Plots in the order of the tally, each with the number of its trees, such as {@code S1/4=7}. */
    final List<String> plots = new ArrayList<>();

    final List<Tree> trees = new ArrayList<>();
    private final List<Tree> worked = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private final List<String> stands = List.of("S1", "S2");
    long used;
    long dropped;
    long kept;
    /** Whether the rows of some plot lie apart. */
    boolean isScattered;

    private String plot = "";
    private int treesOfPlot;

    /** An estate of the design of a stand: its area left out, its tally with a column for the stand. */
    static String design(String ofStand) {
        return ofStand.replace("area = 10\n", "").replace("[tally.columns]\n", "[tally.columns]\nstand = \"stand\"\n")
                + "\n[estate]\nstands = \"stands.csv\"\n[estate.columns]\nstand = \"stand\"\narea = \"ha\"\n";
    }

    static @Nullable Design open(Path folder, String design) throws IOException {
        Files.writeString(folder.resolve("stands.csv"), STANDS);
        DesignReading reading = DesignReader.read(Files.writeString(folder.resolve("e.toml"), design(design)));
        return reading.design();
    }

    /**
     * Reads all tallies of a design.
     *
     * @param usualBytes bytes of a range, about
     */
    static EstateReading of(Design design, int usualBytes) throws IOException {
        EstateReading all = new EstateReading();
        List<EstateFile> files = EstateFiles.open(design, all.problems::add);
        RangeReader reader = new RangeReader(design, all, 1000);
        try (EstateRanges ranges = EstateRanges.of(files, EstatePosition.START, usualBytes, all.stands::contains)) {
            for (EstateRange range = ranges.next(); range != null; range = ranges.next()) {
                EstateRows rows = reader.read(range);
                all.problems.addAll(rows.problems());
                all.used += rows.used();
                all.dropped += rows.dropped();
                all.kept += rows.kept();
                ranges.giveBack(range);
            }
        } catch (BrokenTallyException e) {
            all.problems.add(e.problem());
        }
        return all;
    }

    static EstateReading of(Path folder, String design, int usualBytes) throws IOException {
        Files.writeString(folder.resolve("stands.csv"), STANDS);
        DesignReading reading = DesignReader.read(Files.writeString(folder.resolve("e.toml"), design(design)));
        assertEquals(List.of(), reading.problems(), design);
        return of(Objects.requireNonNull(reading.design()), usualBytes);
    }

    /** All of it as text. */
    String text() {
        return String.join("\n", problems.stream().map(String::valueOf).toList()) + "\n" + String.join(" ", plots)
                + "\n"
                + used + "+" + dropped + " kept " + kept + "\n"
                + String.join(
                        "\n",
                        trees.stream().map(t -> t.species() + " " + t.dbhCm()).toList());
    }

    @Override
    public int stand(String code) {
        return stands.indexOf(code);
    }

    @Override
    public int kind(int stand) {
        return 0;
    }

    @Override
    public void begin(int stand, String id, long line) {
        plot = stands.get(stand) + "/" + id;
        treesOfPlot = 0;
        isScattered |= !seen.add(plot);
    }

    @Override
    public int work(int stand, Tree tree, Use use, RowFindings found) {
        worked.add(tree);
        return worked.size() - 1;
    }

    @Override
    public void add(int number) {
        treesOfPlot++;
        trees.add(worked.get(number));
    }

    @Override
    public void end() {
        plots.add(plot + "=" + treesOfPlot);
    }
}
