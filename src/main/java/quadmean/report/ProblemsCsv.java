package quadmean.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import quadmean.model.Problem;

/** The list of problems as a file. */
public final class ProblemsCsv {
    static final List<String> HEADER =
            List.of("file", "row", "column", "value", "rule", "policy", "problem", "rule_says", "to_do");

    private ProblemsCsv() {}

    /** One row for each problem; {@code row} is empty where the whole file is meant. */
    public static Content of(List<Problem> problems) {
        return Csv.of(HEADER, problems.stream().map(ProblemsCsv::cells));
    }

    /** Whether a file begins as such a list does, so that writing a new list over it loses no other data. */
    public static boolean isOne(Path file) throws IOException {
        byte[] header = (String.join(",", HEADER) + "\n").getBytes(StandardCharsets.UTF_8);
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(header, in.readNBytes(header.length));
        }
    }

    /** The cells of a row. */
    static List<String> cells(Problem p) {
        return List.of(
                p.file(),
                p.row() > 0 ? Long.toString(p.row()) : "",
                p.column(),
                p.value(),
                p.rule().code(),
                p.policy().id(),
                p.detail(),
                p.rule().sentence(),
                p.rule().remedy());
    }
}
