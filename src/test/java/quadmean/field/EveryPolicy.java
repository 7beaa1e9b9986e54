package quadmean.field;

import java.util.stream.Stream;
import quadmean.model.Policy;
import quadmean.model.Rule;

/** A table of policies for a design. */
final class EveryPolicy {
    private EveryPolicy() {}

    /** One policy for every rule that allows it; dropping, else the usual one, for the others. */
    static String lines(Policy policy) {
        StringBuilder table = new StringBuilder("[policy]\n");
        for (Rule rule : Rule.values()) {
            if (rule.allowed().size() > 1) {
                Policy p = Stream.of(policy, Policy.DROP)
                        .filter(rule.allowed()::contains)
                        .findFirst()
                        .orElse(rule.defaultPolicy());
                table.append(rule.code()).append(" = \"").append(p.id()).append("\"\n");
            }
        }
        return table.toString();
    }
}
