package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import quadmean.chart.ChartSet;
import quadmean.chart.EstateCharts;
import quadmean.cruise.Estate;
import quadmean.cruise.EstateAccount;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.design.EstateSettings;
import quadmean.estimate.EstateEstimate.Extent;
import quadmean.estimate.EstateSpread;
import quadmean.field.EstateFiles;
import quadmean.report.Content;
import quadmean.report.EstateFolder;
import quadmean.report.EstateOutputs;
import quadmean.report.EstateSummary;

/** What {@code estimate} and {@code check} do with a design of an estate. */
final class EstateWork {
    private static final String PROBLEMS = "problems.csv";
    private static final long KEEP_EVERY_SECONDS = 30;

    private final Design design;
    private final EstateSettings settings;
    private final Path results;
    private final int threads;
    private final Talk talk;

    private EstateWork(Design design, EstateSettings settings, Path results, int threads, Talk talk) {
        this.design = design;
        this.settings = settings;
        this.results = results;
        this.threads = threads;
        this.talk = talk;
    }

    /** Work with a thread for each processor. */
    static EstateWork of(Design design, Path results, Talk talk) {
        return of(design, results, talk, Runtime.getRuntime().availableProcessors());
    }

    /** Work with so many threads. */
    static EstateWork of(Design design, Path results, Talk talk, int threads) {
        return new EstateWork(design, design.estate().orElseThrow(), results, threads, talk);
    }

    /** Estimates and writes all results. */
    ExitCode estimate() throws IOException {
        return run(EstateOutputs.NAMES, (result, folder) -> {
            EstateSpread spread = result.spread();
            ChartSet charts = EstateCharts.of(result, spread);
            if (!charts.missing().isEmpty()) {
                talk.notes().println(charts.missing());
            }
            talk.tell(s -> s.estate(result));
            List<Path> written = write(EstateOutputs.of(result, spread, charts, folder.problemList()));
            EstateSummary.of(result, spread).forEach(talk.out()::println);
            talk.out().println(ProblemPrinter.rows(result.rows()));
            talk.out().println("Report: " + written.get(0));
            return "open " + written.get(0) + "; stands.csv has the stands one by one";
        });
    }

    /** Reads everything as for an estimate, and writes the list of problems alone. */
    ExitCode check() throws IOException {
        return run(List.of(PROBLEMS), (result, folder) -> {
            List<Path> written = write(Map.of(PROBLEMS, folder.problemList()));
            Extent extent = result.estimate().stands();
            talk.out().printf(Locale.ROOT, "%,d stands with plots, %,d plots%n", extent.stands(), extent.plots());
            talk.out().println(ProblemPrinter.rows(result.rows()));
            talk.out().println("Problems: " + written.get(0));
            return "quadmean estimate " + design.file();
        });
    }

    /** What is done with an estate that is in order; says what to do next. */
    @FunctionalInterface
    private interface Work {
        String of(EstateResult result, EstateFolder folder) throws IOException;
    }

    private ExitCode run(List<String> names, Work work) throws IOException {
        checkThere();
        List<Path> inputs = inputs();
        Results.check(results, inputs, names);
        try (EstateFolder folder = EstateFolder.take(results, fingerprint(inputs), KEEP_EVERY_SECONDS)) {
            Optional<EstateResult> result = Estate.run(design, threads, folder, talk.progress());
            EstateAccount account = folder.account();
            ProblemPrinter.print(result.isEmpty() ? talk.err() : talk.notes(), folder.gravest(), account.problems());
            talk.tell(s -> s.rows(account.rows()));
            talk.tell(s -> s.problems(account.problems()));
            if (result.isEmpty()) {
                refuse(folder);
                folder.done();
                return ExitCode.REFUSED;
            }
            String next = work.of(result.get(), folder);
            folder.done();
            talk.next(next);
            return ExitCode.DONE;
        }
    }

    private void refuse(EstateFolder folder) throws IOException {
        List<Path> written = write(Map.of(PROBLEMS, folder.problemList()));
        talk.err().println("Refused. Nothing was estimated; all problems are in " + written.get(0) + ".");
        if (Files.exists(results.resolve("report.html"))) {
            talk.err().println("The other files in " + results + " are from an earlier run.");
        }
        talk.tell(s -> s.next(DesignCommand.MEND));
        talk.err().println("Next: " + DesignCommand.MEND);
    }

    private List<Path> write(Map<String, Content> files) throws IOException {
        return talk.written(Results.write(results, inputs(), files));
    }

    /** The tally was looked for before; the other inputs of an estate are looked for here. */
    private void checkThere() {
        List<Path> missing = Stream.concat(Stream.of(settings.stands()), settings.curves().stream())
                .filter(Files::notExists)
                .toList();
        if (!missing.isEmpty()) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "the design names files under [estate] that are not there: "
                            + String.join(
                                    ", ", missing.stream().map(Path::toString).toList()));
        }
    }

    private List<Path> inputs() throws IOException {
        List<Path> inputs = new ArrayList<>(List.of(design.file(), settings.stands()));
        settings.curves().ifPresent(inputs::add);
        inputs.addAll(EstateFiles.paths(design));
        return inputs;
    }

    /** Changes with the design and with name, size and time of each input. */
    private String fingerprint(List<Path> inputs) throws IOException {
        StringBuilder text = new StringBuilder(design.sha256());
        for (Path input : inputs) {
            text.append('\n')
                    .append(input)
                    .append(' ')
                    .append(Files.size(input))
                    .append(' ')
                    .append(Files.getLastModifiedTime(input));
        }
        return Integer.toHexString(text.toString().hashCode()) + " " + text.length();
    }
}
