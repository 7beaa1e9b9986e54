package quadmean.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import quadmean.cruise.Cruise;
import quadmean.design.Design;
import quadmean.model.Tally;
import quadmean.report.ProblemsCsv;

/** {@code quadmean check}: reads the tally and lists what is wrong with it. */
@Command(
        name = "check",
        description = "Reads the tally of a design and lists what is wrong with it; estimates nothing.",
        footer = {
            "",
            "Writes problems.csv. Example:",
            "  quadmean check designs/demo.toml",
            "What happens to a row that breaks a rule is set under [policy] in the design: refuse, drop or keep."
        })
final class CheckCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "check");
        Tally tally = Cruise.check(design);
        if (tally.isRefused()) {
            return refuse(tally.problems(), inputs(design));
        }
        ProblemPrinter.print(out(), tally.problems());
        int trees = tally.plots().stream().mapToInt(p -> p.trees().size()).sum();
        out().println(tally.plots().size() + " plots, " + trees + " trees");
        out().println(ProblemPrinter.rows(tally.rows()));
        var written = write(design, new LinkedHashMap<>(Map.of("problems.csv", ProblemsCsv.of(tally.problems()))));
        out().println("Problems: " + written.get(0));
        out().println("Next: quadmean estimate " + design.file());
        return ExitCode.DONE;
    }
}
