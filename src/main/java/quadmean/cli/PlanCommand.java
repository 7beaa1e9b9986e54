package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import quadmean.design.Design;
import quadmean.design.PlanSettings.Pilot;
import quadmean.layout.BoundaryReader;
import quadmean.layout.SheetSet;
import quadmean.layout.Tract;
import quadmean.layout.TractReading;
import quadmean.model.Problem;
import quadmean.plan.CruisePlan;
import quadmean.plan.Planner;
import quadmean.report.Content;
import quadmean.report.FieldSheets;
import quadmean.report.PlanOutputs;
import quadmean.report.PlanWords;

/** {@code quadmean plan}: how many plots the target takes. */
@Command(
        name = "plan",
        description = "Works out how many plots reach the target error, and how they are shared among strata.",
        footer = {
            "",
            "Writes plan.html, plan.json, plan.csv and sheets.html, which the crew takes",
            "along; with [layout] in the design also the plots on the map, the walk, and",
            "files for receivers. The variation comes from [plan] cv or range, from",
            "expected_mean and expected_cv of each stratum, with pilot = \"tally\" from the",
            "tally, or with previous = \"estimate.json\" from a cruise before.",
            "Example:",
            "  quadmean plan designs/demo.toml"
        })
final class PlanCommand extends DesignCommand {
    @Override
    boolean readsTally(Design design) {
        return design.plan().pilot() == Pilot.TALLY;
    }

    @Override
    ExitCode run(Design design) throws IOException {
        PlanSources sources = PlanSources.of(design, talk().progress());
        if (sources.targets().isEmpty()) {
            return refuse(sources.problems(), inputs(design));
        }
        ProblemPrinter.print(talk().notes(), sources.remarks());
        List<String> remarks = new ArrayList<>();
        Tract tract = null;
        if (design.tract().isPresent()) {
            TractReading reading = BoundaryReader.read(design);
            tract = reading.tract();
            if (tract == null) {
                return refuse(reading.problems(), inputs(design));
            }
            ProblemPrinter.print(talk().notes(), reading.problems());
            TractLines.of(design, tract).forEach(out()::println);
            remarks.addAll(tract.notes());
        }
        CruisePlan plan = Planner.planAll(design, sources.words(), sources.targets());
        PlanWords.console(design, plan).forEach(out()::println);
        PlanLayout layout = PlanLayout.of(design, tract, plan);
        if (layout.outcome() == PlanLayout.Outcome.REFUSED) {
            return refuse(layout.problems(), inputs(design));
        }
        layout.notes().forEach(n -> out().println("  " + n));
        PlanKinds kinds = PlanKinds.of(design, plan.outlook(), sources.pilot());
        if (kinds.isRefused()) {
            return refuse(kinds.problems(), inputs(design));
        }
        ProblemPrinter.print(talk().notes(), kinds.problems());
        kinds.lines().forEach(out()::println);
        Map<String, Content> files =
                new LinkedHashMap<>(PlanOutputs.of(design, plan, kinds.comparison(), layout.field()));
        files.putAll(kinds.files());
        files.put("sheets.html", FieldSheets.of(design, SheetSet.withoutPlaces(remarks), Optional.empty()));
        files.putAll(layout.files());
        PlotListFile list = new PlotListFile(design, folder());
        Optional<Problem> replaced = list.replaced(files.get("plots.csv"));
        if (replaced.isPresent()) {
            return refuse(List.of(replaced.get()), inputs(design));
        }
        list.compared(files.get("plots.csv")).ifPresent(n -> out().println("  " + n));
        for (Path p : write(files, list.kept(inputs(design)))) {
            out().println("Written: " + p);
        }
        talk().tell(s -> s.plan(design, plan));
        talk().next("print " + folder().resolve("sheets.html") + ", tally the plots, then quadmean check "
                + design.file());
        return ExitCode.DONE;
    }
}
