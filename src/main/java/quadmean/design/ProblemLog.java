package quadmean.design;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tomlj.TomlPosition;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** Collects the problems of one design file, all of which refuse it. */
final class ProblemLog {
    private final String file;
    private final Set<Problem> problems = new LinkedHashSet<>();

    ProblemLog(String file) {
        this.file = file;
    }

    void add(Rule rule, TomlPosition at, String key, String value, String detail) {
        String place = detail + " (line " + at.line() + ", column " + at.column() + ")";
        problems.add(new Problem(file, at.line(), key, value, rule, Policy.REFUSE, place));
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
