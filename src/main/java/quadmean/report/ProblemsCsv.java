package quadmean.report;

import java.util.List;
import quadmean.model.Problem;

/** The list of problems as a file. */
public final class ProblemsCsv {
    private static final List<String> HEADER =
            List.of("file", "row", "column", "value", "rule", "policy", "problem", "rule_says", "to_do");

    private ProblemsCsv() {}

    /** One row for each problem; {@code row} is empty where the whole file is meant. */
    public static Content of(List<Problem> problems) {
        return Csv.of(HEADER, problems.stream().map(ProblemsCsv::row));
    }

    private static List<String> row(Problem p) {
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
