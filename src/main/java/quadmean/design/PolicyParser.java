package quadmean.design;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.model.Policy;
import quadmean.model.Rule;

/** Reads {@code [policy]}. */
final class PolicyParser {
    private PolicyParser() {}

    static Map<Rule, Policy> parse(Section root) {
        Section s = root.table("policy");
        Map<Rule, Policy> policies = new EnumMap<>(Rule.class);
        for (Rule rule : Rule.values()) {
            Map<String, Policy> allowed = new LinkedHashMap<>();
            for (Policy policy : Policy.values()) {
                if (rule.allowed().contains(policy)) {
                    allowed.put(policy.id(), policy);
                }
            }
            s.choice(rule.code(), allowed).ifPresent(p -> policies.put(rule, p));
        }
        s.close();
        return policies;
    }
}
