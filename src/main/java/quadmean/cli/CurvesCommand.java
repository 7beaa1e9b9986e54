package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import quadmean.chart.ChartSet;
import quadmean.chart.CurveCharts;
import quadmean.cruise.Cruise;
import quadmean.cruise.CurvesRun;
import quadmean.design.Design;
import quadmean.report.CurveOutputs;
import quadmean.report.CurveSummary;

/** {@code quadmean curves}: which height curves fit, and how well. */
@Command(
        name = "curves",
        description = "Fits every height-diameter curve form to the heights of the tally, species by species, and shows"
                + " which is used and why; estimates nothing.",
        footer = {
            "",
            "Writes curves.html with plots, curves.json and curves.csv. Examples:",
            "  quadmean curves designs/idaho-points.toml",
            "  quadmean curves designs/demo.toml --out results/demo"
        })
final class CurvesCommand extends DesignCommand {
    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "curves");
        CurvesRun run = Cruise.curves(design, talk().progress());
        CurvesRun.Result result = run.result();
        if (result == null) {
            return refuse(run.tally().problems(), inputs(design));
        }
        ProblemPrinter.print(talk().notes(), run.tally().problems());
        ChartSet charts = CurveCharts.of(result);
        if (!charts.missing().isEmpty()) {
            talk().notes().println(charts.missing());
        }
        List<Path> written = write(design, CurveOutputs.of(result, charts));
        CurveSummary.of(result).forEach(out()::println);
        out().println(ProblemPrinter.rows(run.tally().rows()));
        written.stream().filter(p -> p.endsWith("curves.html")).forEach(p -> out().println("Curves: " + p));
        talk().tell(s -> s.curves(result.curves()));
        talk().tell(s -> s.rows(run.tally().rows()));
        talk().tell(s -> s.problems(run.tally().problems()));
        talk().next("open " + folder().resolve("curves.html") + ", then quadmean estimate " + design.file());
        return ExitCode.DONE;
    }
}
