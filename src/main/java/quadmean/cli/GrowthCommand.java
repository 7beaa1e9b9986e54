package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import quadmean.audit.Growth;
import quadmean.audit.GrowthMaker;
import quadmean.audit.GrowthRun;
import quadmean.design.Design;
import quadmean.model.Measuring;
import quadmean.report.GrowthOutputs;
import quadmean.report.GrowthSummary;

/** {@code quadmean growth}: permanent plots at two dates. */
@Command(
        name = "growth",
        description =
                "Compares permanent plots at two dates: survivors, ingrowth, mortality, removals, gross and net growth"
                        + " with errors from the paired plots.",
        footer = {
            "",
            "The design's tally is that of the later date; the earlier one stands under [remeasurement].",
            "Writes growth.html, growth.json, growth.csv, growth-trees.csv and problems.csv. Example:",
            "  quadmean growth designs/demo-growth.toml"
        })
final class GrowthCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "growth");
        if (design.followUp().remeasurement().isEmpty()) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "\"growth\" needs the tally of the earlier date; add [remeasurement] and [[remeasurement.tally]] to "
                            + design.file() + ", as designs/README.md tells");
        }
        if (!(design.plot().measuring() instanceof Measuring.All)) {
            throw new CommandException(
                    ExitCode.USAGE, "\"growth\" follows measured trees; this design counts or predicts some of them");
        }
        checkThere(design.followUp().remeasurement().orElseThrow().tallies());
        GrowthRun run = GrowthMaker.run(design);
        Growth growth = run.growth();
        if (growth == null) {
            return refuse(run.problems(), inputs(design));
        }
        ProblemPrinter.print(err(), run.problems());
        List<Path> written = write(design, GrowthOutputs.of(growth, run.problems()));
        GrowthSummary.of(growth).forEach(out()::println);
        out().println("Earlier date: " + ProblemPrinter.rows(run.before().rows()));
        out().println("Later date: " + ProblemPrinter.rows(run.after().rows()));
        out().println("Report: " + written.get(0));
        return ExitCode.DONE;
    }
}
