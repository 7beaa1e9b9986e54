package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** Collects the problems of one boundary file. */
final class BoundaryLog {
    private final String file;
    private final Function<Rule, Policy> policies;
    private final List<Problem> problems = new ArrayList<>();

    BoundaryLog(String file, Function<Rule, Policy> policies) {
        this.file = file;
        this.policies = policies;
    }

    void add(Rule rule, long line, String place, String value, String detail) {
        problems.add(new Problem(file, line, place, value, rule, policies.apply(rule), detail));
    }

    /** A problem of a feature. */
    void add(Rule rule, RawFeature feature, String value, String detail) {
        add(rule, feature.line(), feature.place(), value, detail);
    }

    /** A problem of the file. */
    void unreadable(String detail) {
        add(Rule.BOUNDARY_UNREADABLE, 0, "", "", detail);
    }

    boolean refuses() {
        return problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
