package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quadmean.chart.ChartSet;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.Explain;
import quadmean.cruise.ExplainRequest;
import quadmean.design.Design;
import quadmean.estimate.Worksheet;
import quadmean.report.ConsoleSummary;
import quadmean.report.CruiseOutputs;
import quadmean.report.ExplainText;

/** {@code quadmean estimate}: from tally to report. */
@Command(
        name = "estimate",
        description = "Works a cruise through: reads the tally, fits and fills heights, and reports trees, basal area"
                + " and volume with their sampling errors.",
        footer = {
            "",
            "Writes report.html, estimate.json and tables as CSV. Examples:",
            "  quadmean estimate designs/idaho-points.toml",
            "  quadmean estimate designs/demo.toml --out results/demo",
            "  quadmean estimate designs/demo.toml --json",
            "An estate, many stands in one tally (see [estate] in designs/README.md):",
            "  quadmean estimate designs/estate.toml",
            "To see the arithmetic of one number, which writes no results:",
            "  quadmean estimate designs/demo.toml --explain plot:17",
            "  quadmean estimate designs/demo.toml --explain plot:17:PSME:board_feet",
            "  quadmean estimate designs/demo.toml --explain tree:6-2",
            "  quadmean estimate designs/demo.toml --explain total:basal_area"
        })
final class EstimateCommand extends DesignCommand {
    private static final int MOST_THREADS = 64;

    @Option(
            names = "--explain",
            paramLabel = "NUMBER",
            description = "Print the arithmetic of one number, step by step, and write no results: "
                    + ExplainRequest.FORMS + ".")
    private @Nullable String explain;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Threads that read an estate, 1 to 64; results do not depend on it. Default: one for each processor.")
    private @Nullable Integer threads;

    @Option(
            names = "--keep-every",
            paramLabel = "SECONDS",
            description = "How often a run over an estate keeps what an interrupted one goes on from. Default: 30.")
    private @Nullable Long keepEvery;

    @Override
    boolean takesEstate() {
        return true;
    }

    @Override
    ExitCode run(Design design) throws IOException {
        if (design.estate().isPresent()) {
            TallyNeeded.check(design, "estimate");
            return estate(design);
        }
        if (threads != null || keepEvery != null) {
            String option = threads != null ? "--threads" : "--keep-every";
            throw new CommandException(ExitCode.USAGE, option + " is for an estate; leave it out for a single stand");
        }
        if (explain != null && !talk().isInSentences()) {
            throw new CommandException(ExitCode.USAGE, "--explain prints sentences; leave out --json and --quiet");
        }
        TallyNeeded.check(design, "estimate");
        CruiseRun run = Cruise.run(design, talk().progress());
        CruiseResult result = run.result();
        if (explain != null) {
            return explain(design, run, explain);
        }
        if (result == null) {
            return refuse(run.tally().problems(), inputs(design));
        }
        talk().tell(s -> s.estimate(result));
        talk().tell(s -> s.rows(run.tally().rows()));
        talk().tell(s -> s.problems(run.tally().problems()));
        ProblemPrinter.print(talk().notes(), run.tally().problems());
        ChartSet charts = ChartSet.of(result);
        if (!charts.missing().isEmpty()) {
            talk().notes().println(charts.missing());
        }
        List<Path> written = write(design, CruiseOutputs.of(result, run.plots(), charts));
        ConsoleSummary.of(result).forEach(out()::println);
        out().println(ProblemPrinter.rows(run.tally().rows()));
        Path report = written.get(0);
        out().println("Report: " + report);
        talk().next("open " + report + "; --explain total shows the arithmetic behind the estimate");
        return ExitCode.DONE;
    }

    private ExitCode estate(Design design) throws IOException {
        if (explain != null) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "--explain goes through the trees of a stand, which an estate does not keep; make a design of the stand in"
                            + " question");
        }
        int n = threads == null ? Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()) : threads;
        if (n < 1 || n > MOST_THREADS) {
            throw new CommandException(ExitCode.USAGE, "--threads " + n + " is not between 1 and " + MOST_THREADS);
        }
        long seconds = keepEvery == null ? EstateWork.KEEP_EVERY_SECONDS : keepEvery;
        if (seconds < 0) {
            throw new CommandException(ExitCode.USAGE, "--keep-every " + seconds + " is below 0");
        }
        return EstateWork.of(design, folder(), talk(), n, seconds).estimate();
    }

    /** Prints how one number comes about. */
    private ExitCode explain(Design design, CruiseRun run, String number) {
        CruiseResult result = run.result();
        Worksheet sheet = run.worksheet();
        if (result == null || sheet == null) {
            return refuse(run.tally().problems(), inputs(design));
        }
        try {
            ExplainRequest request = ExplainRequest.parse(number, result, sheet);
            ExplainText.of(result, Explain.of(result, sheet, request)).forEach(out()::println);
            return ExitCode.DONE;
        } catch (IllegalArgumentException e) {
            throw new CommandException(ExitCode.USAGE, "--explain: " + e.getMessage());
        }
    }
}
