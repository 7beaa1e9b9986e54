package quadmean.field;

import java.util.function.Consumer;
import java.util.function.Function;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** The problems of a whole file, or of its header. */
final class FileProblems {
    private final Function<Rule, Policy> policies;
    private final String file;
    private final Consumer<Problem> sink;

    FileProblems(Function<Rule, Policy> policies, String file, Consumer<Problem> sink) {
        this.policies = policies;
        this.file = file;
        this.sink = sink;
    }

    /** The same for another sheet of the file. */
    FileProblems called(String other) {
        return new FileProblems(policies, other, sink);
    }

    /** Notes a problem and tells what the design wants done about it. */
    Policy add(Rule rule, long row, String column, String value, String detail) {
        Policy policy = policies.apply(rule);
        sink.accept(new Problem(file, row, column, value, rule, policy, detail));
        return policy;
    }

    void unreadable(String detail) {
        add(Rule.FILE_UNREADABLE, 0, "", "", detail);
    }
}
