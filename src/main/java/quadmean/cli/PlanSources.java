package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.design.Design;
import quadmean.design.PlanSettings.Pilot;
import quadmean.design.StratumEntry;
import quadmean.estimate.EstimateRow;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Progress;
import quadmean.model.Rule;
import quadmean.plan.PlanTarget;
import quadmean.plan.StatedVariation;
import quadmean.plan.StratumOutlook;
import quadmean.plan.TargetOutlook;
import quadmean.report.PreviousCruise;
import quadmean.units.Basis;

/**
 * Where a plan gets its variation from.
 *
 * @param words the source in words
 * @param targets targets with what is expected; none if it is refused
 * @param remarks problems of the source that do not refuse it
 * @param problems what refuses it
 * @param pilot plots of the pilot tally; none without one
 */
record PlanSources(
        String words, List<TargetOutlook> targets, List<Problem> remarks, List<Problem> problems, List<Plot> pilot) {
    /** What a source says of an attribute in a stratum, {@code *} for the whole stand. */
    private interface Source {
        Optional<Shown> of(String stratum, PlanTarget target);
    }

    /** What plots showed: their number, mean and coefficient of variation (percent). */
    private record Shown(int plots, double mean, double cvPercent) {
        boolean isUsable() {
            return plots > 1 && mean > 0 && cvPercent > 0;
        }
    }

    static PlanSources of(Design design, Progress progress) throws IOException {
        if (design.plan().pilot() == Pilot.TALLY) {
            return fromPilot(design, progress);
        }
        Path previous = design.plan().previous();
        if (previous != null) {
            return fromPrevious(design, previous);
        }
        StatedVariation stated = StatedVariation.of(design);
        return new PlanSources(
                stated.words(),
                stated.targets(),
                List.of(),
                stated.missing().stream().map(m -> problem(design, m)).toList(),
                List.of());
    }

    private static PlanSources fromPilot(Design design, Progress progress) throws IOException {
        TallyNeeded.check(design, "plan");
        CruiseRun run = Cruise.run(design, progress);
        CruiseResult result = run.result();
        if (result == null) {
            return new PlanSources("", List.of(), List.of(), run.tally().problems(), List.of());
        }
        Source pilot = (stratum, target) -> result.estimate()
                .row(stratum, EstimateRow.ALL, target.attribute(), Basis.PER_AREA)
                .map(r -> new Shown(r.n(), r.mean(), r.cvPercent()));
        String words = "from the pilot tally of " + run.tally().plots().size() + " plots";
        return read(
                design,
                words,
                "the pilot",
                pilot,
                run.tally().problems(),
                run.tally().plots());
    }

    private static PlanSources fromPrevious(Design design, Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "plan.previous names " + (Files.isDirectory(file) ? "a folder: " : "a file that is not there: ")
                            + file + "; it is the estimate.json of a cruise that was estimated before");
        }
        PreviousCruise previous = PreviousCruise.read(file);
        if (!previous.trouble().isEmpty()) {
            return new PlanSources(
                    "", List.of(), List.of(), List.of(unreadable(design, previous.trouble())), List.of());
        }
        Source source = (stratum, target) ->
                previous.row(stratum, target.attribute()).map(r -> new Shown(r.plots(), r.mean(), r.cvPercent()));
        String words = "from the previous cruise \"" + previous.name() + "\"";
        return read(design, words, "the previous cruise", source, List.of(), List.of());
    }

    private static PlanSources read(
            Design design, String words, String name, Source source, List<Problem> remarks, List<Plot> plots) {
        List<TargetOutlook> outlooks = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        boolean single = design.strata().size() == 1;
        for (PlanTarget target : StatedVariation.targets(design)) {
            List<StratumOutlook> strata = new ArrayList<>();
            for (StratumEntry entry : design.strata()) {
                String code = entry.stratum().code();
                Optional<Shown> shown = source.of(single ? EstimateRow.ALL : code, target);
                if (shown.isPresent() && shown.get().isUsable()) {
                    Shown s = shown.get();
                    strata.add(new StratumOutlook(code, entry.stratum().areaHa(), s.mean(), s.cvPercent(), s.plots()));
                } else {
                    problems.add(problem(design, unusable(name, single ? "" : " in stratum " + code, target, shown)));
                }
            }
            outlooks.add(new TargetOutlook(target, strata));
        }
        return new PlanSources(words, problems.isEmpty() ? outlooks : List.of(), remarks, problems, plots);
    }

    private static String unusable(String name, String where, PlanTarget target, Optional<Shown> shown) {
        String what = target.attribute().label() + where;
        return shown.isEmpty()
                ? name + " has no estimate of " + what + "; state the variation in the design instead"
                : name + " shows no variation of " + what + " (it takes two plots that differ, and a mean above zero)";
    }

    private static Problem unreadable(Design design, String detail) {
        return new Problem(
                design.file().getFileName().toString(),
                0,
                "plan.previous",
                String.valueOf(design.plan().previous()),
                Rule.DESIGN_VALUE,
                Policy.REFUSE,
                detail);
    }

    private static Problem problem(Design design, String detail) {
        return new Problem(
                design.file().getFileName().toString(), 0, "plan", "", Rule.DESIGN_MISSING, Policy.REFUSE, detail);
    }
}
