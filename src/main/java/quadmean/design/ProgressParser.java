package quadmean.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quadmean.design.ProgressSettings.Assigned;
import quadmean.design.ProgressSettings.Subset;
import quadmean.model.Rule;
import quadmean.model.StoppingRule;

/** Reads {@code [progress]}; all of it has defaults. */
final class ProgressParser {
    private ProgressParser() {}

    static ProgressSettings parse(Section root) {
        Section s = root.table("progress");
        ProgressSettings usual = ProgressSettings.USUAL;
        ProgressSettings settings = new ProgressSettings(
                s.choice("rule", Options.of(StoppingRule.values(), StoppingRule::id))
                        .orElse(usual.rule()),
                (int) s.number("minimum_plots", Range.AT_LEAST_THREE, usual.minimumPlots()),
                s.choice("crews_assigned", Options.of(Assigned.values(), Assigned::id))
                        .orElse(usual.assigned()),
                subsets(s));
        s.close();
        return settings;
    }

    private static List<Subset> subsets(Section progress) {
        List<Subset> subsets = new ArrayList<>();
        Set<String> plots = new HashSet<>();
        for (Section s : progress.tableList("subset")) {
            Subset subset =
                    new Subset(s.text("name").orElse("" + (subsets.size() + 1)), PlotNumbers.expand(s, "plots"));
            if (subset.plots().isEmpty()) {
                s.problem(Rule.DESIGN_MISSING, "plots", "", "a subset lists its plots");
            }
            if (subsets.stream().anyMatch(other -> other.name().equals(subset.name()))) {
                s.problem(Rule.DESIGN_VALUE, "name", subset.name(), "two subsets are called " + subset.name());
            }
            PlotNumbers.checkTwice(s, "plots", subset.plots(), plots);
            subsets.add(subset);
            s.close();
        }
        return subsets;
    }
}
