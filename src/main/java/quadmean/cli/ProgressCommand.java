package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import quadmean.audit.ProgressMaker;
import quadmean.audit.ProgressReport;
import quadmean.audit.ProgressRun;
import quadmean.design.Design;
import quadmean.report.ProgressOutputs;
import quadmean.report.ProgressSummary;

/** {@code quadmean progress}: a cruise under way. */
@Command(
        name = "progress",
        description =
                "Looks at a cruise after a day in the field: plots run and missing, the estimate so far, whether it may"
                        + " stop, crews, and trees to measure again.",
        footer = {
            "",
            "Writes progress.html, progress.json, progress.csv and problems.csv. Example:",
            "  quadmean progress designs/demo-progress.toml",
            "Plots that are not in the tally yet are no mistake here."
        })
final class ProgressCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "progress");
        ProgressRun run = ProgressMaker.run(design);
        ProgressReport report = run.report();
        if (report == null) {
            return refuse(run.tally().problems(), inputs(design));
        }
        ProblemPrinter.print(err(), run.tally().problems());
        List<Path> written = write(design, ProgressOutputs.of(report));
        ProgressSummary.of(report).forEach(out()::println);
        out().println(ProblemPrinter.rows(run.tally().rows()));
        out().println("Report: " + written.get(0));
        return ExitCode.DONE;
    }
}
