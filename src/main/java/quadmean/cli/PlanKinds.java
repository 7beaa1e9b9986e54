package quadmean.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.KindsSettings;
import quadmean.field.StemMapReader;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.StemMap;
import quadmean.plan.KindComparer;
import quadmean.plan.KindComparison;
import quadmean.plan.MapStudy;
import quadmean.plan.StratumOutlook;
import quadmean.report.Content;
import quadmean.report.KindsCsv;
import quadmean.report.KindsPart;

/**
 * What {@code plan} does with a design that compares kinds of plot.
 *
 * @param comparison the comparison; empty if the design asks for none, or if it is refused
 * @param lines what to say
 * @param files what to write
 * @param problems what was found of the map of stems
 */
record PlanKinds(
        Optional<KindComparison> comparison, List<String> lines, Map<String, Content> files, List<Problem> problems) {

    /** Compares, if the design asks for it; {@code pilot} are the plots of a pilot, none without one. */
    static PlanKinds of(Design design, List<StratumOutlook> outlook, List<Plot> pilot) throws IOException {
        if (design.plan().kinds().isEmpty()) {
            return new PlanKinds(Optional.empty(), List.of(), Map.of(), List.of());
        }
        KindsSettings settings = design.plan().kinds().get();
        List<Problem> problems = new ArrayList<>();
        StemMap map = null;
        if (settings.map().isPresent()) {
            StemMapReader.Reading reading =
                    StemMapReader.read(design, settings.map().get());
            map = reading.map();
            problems.addAll(reading.problems());
            problems.addAll(tooSmall(settings, map));
        }
        if (isRefused(problems)) {
            return new PlanKinds(Optional.empty(), List.of(), Map.of(), problems);
        }
        KindComparison kinds = KindComparer.compare(design, settings, outlook, map, pilot);
        return new PlanKinds(
                Optional.of(kinds),
                KindsPart.lines(design, kinds),
                Map.of("kinds.csv", KindsCsv.of(design, kinds)),
                problems);
    }

    boolean isRefused() {
        return isRefused(problems);
    }

    private static boolean isRefused(List<Problem> problems) {
        return problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
    }

    private static List<Problem> tooSmall(KindsSettings settings, @Nullable StemMap map) {
        return Optional.ofNullable(map)
                .flatMap(m -> MapStudy.fault(m, KindComparer.plots(settings))
                        .map(detail -> new Problem(m.name(), 0, "", "", Rule.STEM_MAP, Policy.REFUSE, detail)))
                .stream()
                .toList();
    }
}
