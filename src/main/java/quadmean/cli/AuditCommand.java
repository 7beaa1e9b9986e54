package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import quadmean.audit.Audit;
import quadmean.audit.AuditRun;
import quadmean.audit.CheckCruise;
import quadmean.design.Design;
import quadmean.report.AuditOutputs;
import quadmean.report.AuditSummary;

/** {@code quadmean audit}: a cruise held against a checker's tally. */
@Command(
        name = "audit",
        description =
                "Holds a cruise against a checker's second tally of some plots: trees matched one by one, readings"
                        + " against their limits, crews, and what the differences do to plots and stand.",
        footer = {
            "",
            "The checker's tally and the limits stand under [audit] in the design.",
            "Writes audit.html, audit.json, audit-trees.csv, audit-plots.csv and problems.csv. Example:",
            "  quadmean audit designs/demo.toml",
            "Whether the cruise passed stands in the output; the exit code does not tell."
        })
final class AuditCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "audit");
        if (design.followUp().audit().isEmpty()) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "\"audit\" needs the checker's tally; add [audit] and [[audit.tally]] to " + design.file()
                            + ", as designs/README.md tells");
        }
        checkThere(design.followUp().audit().orElseThrow().tallies());
        AuditRun run = Audit.run(design);
        CheckCruise check = run.result();
        if (check == null) {
            return refuse(run.problems(), inputs(design));
        }
        ProblemPrinter.print(err(), run.problems());
        List<Path> written = write(design, AuditOutputs.of(run, check));
        AuditSummary.of(check).forEach(out()::println);
        out().println("Cruise: " + ProblemPrinter.rows(run.cruise().rows()));
        out().println("Check: " + ProblemPrinter.rows(run.check().rows()));
        out().println("Report: " + written.get(0));
        return ExitCode.DONE;
    }
}
