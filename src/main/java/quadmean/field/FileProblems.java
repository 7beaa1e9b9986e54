package quadmean.field;

import java.util.function.Consumer;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** The problems of a whole file, or of its header. */
final class FileProblems {
    private final Design design;
    private final String file;
    private final Consumer<Problem> sink;

    FileProblems(Design design, String file, Consumer<Problem> sink) {
        this.design = design;
        this.file = file;
        this.sink = sink;
    }

    /** The same for another sheet of the file. */
    FileProblems called(String other) {
        return new FileProblems(design, other, sink);
    }

    /** Notes a problem and tells what the design wants done about it. */
    Policy add(Rule rule, long row, String column, String value, String detail) {
        Policy policy = design.policy(rule);
        sink.accept(new Problem(file, row, column, value, rule, policy, detail));
        return policy;
    }

    void unreadable(String detail) {
        add(Rule.FILE_UNREADABLE, 0, "", "", detail);
    }
}
