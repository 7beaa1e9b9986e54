package quadmean.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quadmean.model.Rule;
import quadmean.units.UnitSystem;

/** Reads what a design says of the work during and after the cruise. */
final class FollowUpParser {
    private FollowUpParser() {}

    static FollowUp parse(Section root, Path file, UnitSystem units, List<TallyFile> cruise) {
        return new FollowUp(
                crews(root),
                AuditParser.parse(root, file, units, cruise),
                ProgressParser.parse(root),
                RemeasurementParser.parse(root, file, units, cruise),
                InstrumentParser.parse(root));
    }

    private static List<Crew> crews(Section root) {
        List<Crew> crews = new ArrayList<>();
        Set<String> plots = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (Section s : root.tableList("crew")) {
            Crew crew = new Crew(s.requiredText("name"), PlotNumbers.expand(s, "plots"));
            if (!names.add(crew.name())) {
                s.problem(Rule.DESIGN_VALUE, "name", crew.name(), "crew " + crew.name() + " is there twice");
            }
            if (crew.plots().isEmpty()) {
                s.problem(Rule.DESIGN_MISSING, "plots", "", "\"crew.plots\" is missing: the plots that the crew ran");
            }
            PlotNumbers.checkTwice(s, "plots", crew.plots(), plots);
            crews.add(crew);
            s.close();
        }
        return crews;
    }
}
