package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    private Path temp;

    private static Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static Map<String, Content> files(String... namesAndTexts) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], text(namesAndTexts[i + 1]));
        }
        return files;
    }

    @Test
    void createsTheFolderAndReplacesEarlierOutputs() throws IOException {
        Path folder = temp.resolve("a/b");
        OutputFolder.write(folder, List.of(), files("x.csv", "old"));
        List<Path> written = OutputFolder.write(folder, List.of(), files("y.csv", "y", "x.csv", "new"));
        assertEquals(List.of(folder.resolve("y.csv"), folder.resolve("x.csv")), written);
        assertEquals("new", Files.readString(folder.resolve("x.csv")));
        assertEquals(List.of("x.csv", "y.csv"), names(folder));
    }

    @Test
    void refusesToReplaceAnInput() throws IOException {
        Path input = Files.writeString(temp.resolve("trees.csv"), "field data");
        InputOverwriteException e = assertThrows(
                InputOverwriteException.class,
                () -> OutputFolder.write(temp, List.of(input), files("a.csv", "a", "trees.csv", "t")));
        assertTrue(e.getMessage().contains("trees.csv"), e.getMessage());
        assertEquals("field data", Files.readString(input));
        assertEquals(List.of("trees.csv"), names(temp));
    }

    @Test
    void knowsAnInputByAnotherName() throws IOException {
        Path input = Files.writeString(temp.resolve("tally.csv"), "field data");
        Path folder = Files.createDirectory(temp.resolve("out"));
        Files.createSymbolicLink(folder.resolve("trees.csv"), input);
        assertThrows(
                InputOverwriteException.class,
                () -> OutputFolder.write(folder, List.of(input), files("trees.csv", "t")));
        Path roundabout = temp.resolve("out/../out/new.csv");
        assertThrows(
                InputOverwriteException.class,
                () -> OutputFolder.write(folder, List.of(roundabout), files("new.csv", "t")));
        assertEquals("field data", Files.readString(input));
    }

    @Test
    void failureWhileWritingLeavesEverythingAsItWas() throws IOException {
        OutputFolder.write(temp, List.of(), files("a.csv", "old"));
        Map<String, Content> files = files("a.csv", "new");
        files.put("b.csv", out -> {
            out.write('h');
            throw new IOException("disk full");
        });
        assertThrows(IOException.class, () -> OutputFolder.write(temp, List.of(), files));
        files.put("b.csv", out -> {
            throw new IllegalStateException("defect");
        });
        assertThrows(IllegalStateException.class, () -> OutputFolder.write(temp, List.of(), files));
        assertEquals("old", Files.readString(temp.resolve("a.csv")));
        assertEquals(List.of("a.csv"), names(temp));
    }

    @Test
    void aFolderInTheWayIsAnErrorBeforeAnythingIsWritten() throws IOException {
        Files.createDirectory(temp.resolve("b.csv"));
        assertThrows(IOException.class, () -> OutputFolder.write(temp, List.of(), files("a.csv", "a", "b.csv", "b")));
        assertFalse(Files.exists(temp.resolve("a.csv")));
    }

    @Test
    void aFileInThePlaceOfTheFolderIsAnError() throws IOException {
        Path file = Files.writeString(temp.resolve("out"), "a file");
        assertThrows(IOException.class, () -> OutputFolder.write(file, List.of(), files("a.csv", "a")));
        assertEquals("a file", Files.readString(file));
    }

    @Test
    void takesPlainNamesOnly() {
        assertThrows(IllegalArgumentException.class, () -> OutputFolder.write(temp, List.of(), files("../a.csv", "a")));
        assertThrows(IllegalArgumentException.class, () -> OutputFolder.write(temp, List.of(), files("x/a.csv", "a")));
    }
}
