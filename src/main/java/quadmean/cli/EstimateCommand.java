package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import quadmean.chart.ChartSet;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.design.Design;
import quadmean.report.ConsoleSummary;
import quadmean.report.CruiseOutputs;

/** {@code quadmean estimate}: from tally to report. */
@Command(
        name = "estimate",
        description = "Works a cruise through: reads the tally, fits and fills heights, and reports trees, basal area"
                + " and volume with their sampling errors.",
        footer = {
            "",
            "Writes report.html, estimate.json and tables as CSV. Examples:",
            "  quadmean estimate designs/idaho-points.toml",
            "  quadmean estimate designs/demo.toml --out results/demo"
        })
final class EstimateCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "estimate");
        CruiseRun run = Cruise.run(design, ProgressLine.of(err(), "Fitting curves to resampled plots"));
        CruiseResult result = run.result();
        if (result == null) {
            return refuse(run.tally().problems(), inputs(design));
        }
        ProblemPrinter.print(err(), run.tally().problems());
        ChartSet charts = ChartSet.of(result);
        if (!charts.missing().isEmpty()) {
            err().println(charts.missing());
        }
        List<Path> written = write(design, CruiseOutputs.of(result, charts));
        ConsoleSummary.of(result).forEach(out()::println);
        out().println(ProblemPrinter.rows(run.tally().rows()));
        written.stream().filter(p -> p.endsWith("report.html")).forEach(p -> out().println("Report: " + p));
        return ExitCode.DONE;
    }
}
