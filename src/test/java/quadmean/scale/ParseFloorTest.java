package quadmean.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.scale.EstateFiles.Existing;
import quadmean.scale.EstateFiles.Packing;

/** The floor reads every row and every number: held against the JDK alone, line by line. */
class ParseFloorTest {
    private static final EstateSize SIZE = new EstateSize(60, 5, 9, 4);

    @TempDir
    private Path folder;

    private Path tally = Path.of("");

    @BeforeEach
    void estate() throws IOException {
        EstateFiles files = new EstateFiles(folder.resolve("one"), 1, Packing.PLAIN, Existing.REFUSE);
        new EstateGenerator(SIZE, files).write();
        tally = files.tally(0);
    }

    @ParameterizedTest
    @EnumSource(FloorReader.class)
    void readsWhatTheJdkReads(FloorReader reader) throws IOException, InterruptedException, ExecutionException {
        FloorSums plain = byLines();
        for (int threads : new int[] {1, 2, 13}) {
            same(plain, ParseFloor.read(tally, threads, reader));
        }
    }

    @ParameterizedTest
    @EnumSource(FloorReader.class)
    void readsFoldersOfPackedFiles(FloorReader reader) throws IOException, InterruptedException, ExecutionException {
        EstateFiles split = new EstateFiles(folder.resolve("split"), 3, Packing.GZIP, Existing.REFUSE);
        new EstateGenerator(SIZE, split).write();
        same(byLines(), ParseFloor.read(split.folder().resolve(split.tallyName()), 2, reader));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 1000, 20_000})
    void rangesJoinedAreTheFile(int pieces) throws IOException {
        StringBuilder joined = new StringBuilder();
        for (FileRange range : FileRange.cut(tally, pieces)) {
            try (InputStream in = range.open()) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                assertTrue(text.isEmpty() || text.endsWith("\n"), text);
                joined.append(text);
            }
        }
        assertEquals(Files.readString(tally), joined.toString());
    }

    @Test
    void aLastLineWithoutAnEndIsRead() throws IOException {
        Files.writeString(tally, "a\nbb\nccc");
        List<FileRange> ranges = FileRange.cut(tally, 4);
        assertEquals(8, ranges.get(ranges.size() - 1).to());
        assertEquals(
                List.of(0L, 2L, 5L, 8L), ranges.stream().map(FileRange::from).toList());
    }

    @Test
    void numbersAreThoseOfTheJdk() {
        Random random = new Random(15);
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(12) - 4);
            number(Double.toString(value));
            number(Long.toString((long) value));
            number(Integer.toString(i / 10) + "." + i % 10);
        }
        for (String text :
                List.of("0", "-0.0", "7.", ".5", "1e5", "123456789012345", "0.1234567890123456789", "1E-320", "NaN")) {
            number(text);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "-", "1.2.3", "1,5", "twelve", "--1", "1-"})
    void whatIsNoNumberIsRefused(String text) {
        assertThrows(NumberFormatException.class, () -> parse(text));
    }

    @Test
    void anEmptyFieldIsNoNumber() {
        assertEquals(Double.NaN, parse(""));
    }

    private static void number(String text) {
        assertEquals(Double.parseDouble(text), parse(text), 0, text);
    }

    private static double parse(String text) {
        char[] letters = ("x," + text + ",9").toCharArray();
        return CharNumbers.parse(letters, 2, text.length());
    }

    private FloorSums byLines() throws IOException {
        FloorSums sums = new FloorSums();
        for (String line :
                Files.readAllLines(tally).subList(1, Files.readAllLines(tally).size())) {
            String[] fields = line.split(",", -1);
            sums.row(value(fields[4]), value(fields[5]));
        }
        return sums;
    }

    private static double value(String text) {
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }

    /** Sums of tenths in another order differ by less than a hundredth of a tenth. */
    private static void same(FloorSums expected, FloorSums found) {
        assertEquals(expected.rows(), found.rows());
        assertEquals(expected.trees(), found.trees());
        assertEquals(expected.heights(), found.heights());
        assertEquals(expected.dbhSum(), found.dbhSum(), 1e-3);
        assertEquals(expected.heightSum(), found.heightSum(), 1e-3);
    }
}
