package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quadmean.audit.Combine;
import quadmean.audit.Combined;
import quadmean.audit.CombinedStand;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseRun;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.field.StandList;
import quadmean.model.ListedStand;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.report.CombineOutputs;
import quadmean.report.CombineSummary;
import quadmean.report.ProblemsCsv;
import quadmean.units.Attribute;

/** {@code quadmean combine}: many stands together. */
@Command(
        name = "combine",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Adds up the cruises of a list of stands: totals with their errors, where errors of shared curves,"
                        + " equations and instruments add up and do not average out.",
        footer = {
            "",
            "LIST is a CSV file with a column \"design\" (paths as seen from the list) and, if wanted, \"stand\" (name),",
            "\"group\" (to add up by), and \"curves\", \"equations\", \"crew\": stands with the same entry share that error.",
            "Writes combine.html, combine.json, combine.csv and problems.csv. Example:",
            "  quadmean combine designs/stands.csv",
            "  quadmean combine designs/stands.csv --attribute basal_area --confidence 0.9"
        })
final class CombineCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LIST", description = "The list of stands.")
    private Path list;

    @Option(
            names = "--attribute",
            paramLabel = "NAME",
            description =
                    "What to add up, as designs name it: volume, basal_area, trees, net_board_feet ... Default: the target"
                            + " of the first design.")
    private @Nullable String attribute;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            description = "Confidence level of all limits, such as 0.95. Default: that of the first design.")
    private @Nullable Double confidence;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder for the results. Default: out/ and the name of the list with -combined.")
    private @Nullable Path out;

    @Spec
    private CommandSpec spec;

    private final List<Problem> problems = new ArrayList<>();
    private final List<Path> inputs = new ArrayList<>();

    @Override
    public Integer call() {
        Results.checkName(out);
        if (!Files.isRegularFile(list)) {
            throw usage("there is no file " + list + "; see quadmean combine --help");
        }
        if (confidence != null && !(confidence >= 0.01 && confidence <= 0.9999)) {
            throw usage("--confidence " + confidence + " is not between 0.01 and 0.9999, such as 0.95");
        }
        try {
            return work().code();
        } catch (IOException e) {
            throw usage("a file cannot be read: " + FileTrouble.explain(e));
        }
    }

    private ExitCode work() throws IOException {
        inputs.add(list);
        List<CombinedStand> stands = new ArrayList<>();
        for (ListedStand stand : StandList.read(list, problems)) {
            add(stand, stands);
        }
        if (problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE)) {
            ProblemPrinter.print(spec.commandLine().getErr(), problems);
            List<Path> written = Results.write(folder(), inputs, Map.of("problems.csv", ProblemsCsv.of(problems)));
            spec.commandLine()
                    .getErr()
                    .println("Refused. Nothing was added up; all problems are in " + written.get(0) + ".");
            return ExitCode.REFUSED;
        }
        Attribute what = attribute(stands);
        double level = confidence != null
                ? confidence
                : stands.get(0).cruise().design().confidence();
        Combined combined = Combine.of(stands, what, level);
        ProblemPrinter.print(spec.commandLine().getErr(), problems);
        List<Path> written = Results.write(folder(), inputs, CombineOutputs.of(combined, problems));
        CombineSummary.of(combined).forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println(ProblemPrinter.rows(rows(stands)));
        spec.commandLine().getOut().println("Report: " + written.get(0));
        return ExitCode.DONE;
    }

    /** Rows of all tallies together. */
    private static RowCount rows(List<CombinedStand> stands) {
        return stands.stream()
                .map(s -> s.cruise().tally().rows())
                .reduce(
                        new RowCount(0, 0, 0, 0),
                        (a, b) -> new RowCount(
                                a.in() + b.in(), a.used() + b.used(), a.dropped() + b.dropped(), a.kept() + b.kept()));
    }

    /** Works a stand through; what is wrong with it joins the problems of all. */
    private void add(ListedStand stand, List<CombinedStand> stands) throws IOException {
        Path file = path(stand);
        if (file == null) {
            return;
        }
        inputs.add(file);
        DesignReading reading = DesignReader.read(file);
        reading.problems().forEach(p -> problems.add(of(stand, p)));
        Design design = reading.design();
        if (design == null) {
            return;
        }
        DesignCommand.checkNoEstate(design);
        inputs.addAll(DesignCommand.inputs(design));
        TallyNeeded.check(design, "combine");
        DesignCommand.checkThere(design.tallies());
        CruiseRun run = Cruise.run(design);
        run.tally().problems().forEach(p -> problems.add(of(stand, p)));
        if (run.result() != null) {
            stands.add(new CombinedStand(stand, run.result()));
        }
    }

    /** A problem that names its stand too: stands may have files of the same name. */
    private static Problem of(ListedStand stand, Problem p) {
        String file = stand.design().endsWith(p.file()) ? stand.design() : stand.design() + ": " + p.file();
        return new Problem(file, p.row(), p.column(), p.value(), p.rule(), p.policy(), p.detail());
    }

    private @Nullable Path path(ListedStand stand) {
        try {
            Path file = list.toAbsolutePath().resolveSibling(stand.design()).normalize();
            if (inputs.contains(file)) {
                return refuse(stand, stand.design() + " is listed before by another path");
            }
            if (Files.isRegularFile(file)) {
                return file;
            }
        } catch (InvalidPathException e) {
            // said below
        }
        return refuse(stand, "there is no design " + stand.design());
    }

    private @Nullable Path refuse(ListedStand stand, String detail) {
        problems.add(new Problem(
                String.valueOf(list.getFileName()),
                stand.line(),
                "design",
                stand.design(),
                Rule.STAND_LIST,
                Policy.REFUSE,
                detail));
        return null;
    }

    private Attribute attribute(List<CombinedStand> stands) {
        Attribute what = stands.get(0).cruise().design().targetAttribute();
        if (attribute != null) {
            what = java.util.Arrays.stream(Attribute.values())
                    .filter(a -> a.id().equals(attribute))
                    .findFirst()
                    .orElseThrow(() -> usage("--attribute " + attribute + " is none that designs estimate"));
        }
        Attribute chosen = what;
        List<String> without = stands.stream()
                .filter(s -> !Combine.estimates(s, chosen))
                .map(CombinedStand::name)
                .toList();
        if (!without.isEmpty()) {
            throw usage("no total of " + chosen.label() + " in: " + String.join(", ", without)
                    + "; choose another with --attribute");
        }
        return chosen;
    }

    private Path folder() {
        return Results.folder(out, list, ".csv", "-combined");
    }

    private static CommandException usage(String message) {
        return new CommandException(ExitCode.USAGE, message);
    }
}
