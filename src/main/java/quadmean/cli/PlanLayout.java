package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.layout.FieldPlan;
import quadmean.layout.SheetSet;
import quadmean.layout.Tract;
import quadmean.model.Problem;
import quadmean.plan.CruisePlan;
import quadmean.report.Content;
import quadmean.report.LayoutFiles;
import quadmean.report.SheetMap;

/**
 * What {@code plan} does with a design that has a layout.
 *
 * @param files what to write, none if it is refused
 * @param field what was laid out, if it was
 * @param notes what to say
 * @param problems what refuses it
 * @param outcome whether plots were laid out
 */
record PlanLayout(
        Map<String, Content> files,
        Optional<FieldPlan> field,
        List<String> notes,
        List<Problem> problems,
        Outcome outcome) {
    /** Whether plots were laid out. */
    enum Outcome {
        NONE,
        LAID,
        REFUSED
    }

    /** Lays out, if the design asks for it; {@code tract} is null where it has none. */
    static PlanLayout of(Design design, @Nullable Tract tract, CruisePlan plan) {
        if (design.layout().isEmpty() || tract == null) {
            return new PlanLayout(Map.of(), Optional.empty(), List.of(), List.of(), Outcome.NONE);
        }
        FieldPlan field = FieldPlan.of(design, tract, plan.plotsByStratum());
        SheetSet set = field.set();
        if (set == null) {
            return new PlanLayout(Map.of(), Optional.empty(), List.of(), field.problems(), Outcome.REFUSED);
        }
        Map<String, Content> files = LayoutFiles.of(
                design, set, Optional.of(SheetMap.picture(field.areas(), set, design.units(), design.seed())));
        List<String> notes = new ArrayList<>(field.notes());
        if (!files.containsKey("map.png")) {
            notes.add(
                    "map.png could not be drawn, for this computer gives the program no fonts; map.svg has the same map.");
        }
        return new PlanLayout(files, Optional.of(field), notes, List.of(), Outcome.LAID);
    }
}
