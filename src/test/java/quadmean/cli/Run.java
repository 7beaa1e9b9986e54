package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import quadmean.support.SmallDesign;

/**
 * A run of the program.
 *
 * @param code exit code
 * @param out what it printed as its result
 * @param err what it printed besides
 */
record Run(int code, String out, String err) {
    /** Six trees on three plots that suit {@link SmallDesign}. */
    static final String TALLY = """
            plot,tree,species,dbh,height
            1,1,PSME,30,20
            1,2,PSME,25,18
            2,1,PSME,40,24
            2,2,PSME,12,9
            2,3,PSME,33,21
            3,1,PSME,28,19
            """;

    static Run of(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Run(code, out.toString(), err.toString());
    }

    void assertCode(int expected) {
        assertEquals(expected, code, out + err);
    }

    /** Writes a design and a tally beside it. */
    static Path cruise(Path folder, SmallDesign design, String tally) throws IOException {
        Files.writeString(folder.resolve("tally.csv"), tally);
        return design.write(folder);
    }

    /** Bytes of the files of a folder, by name, as text that tells them apart. */
    static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> list = Files.list(folder)) {
            for (Path p : list.filter(Files::isRegularFile).toList()) {
                files.put(
                        p.getFileName().toString(),
                        new String(Files.readAllBytes(p), java.nio.charset.StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
