package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.cruise.Estate;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.design.EstateSettings;
import quadmean.field.EstateFiles;
import quadmean.report.EstateFolder;
import quadmean.report.EstateOutputs;

/** What {@code estimate} does with a design of an estate. */
final class EstateWork {
    private static final long KEEP_EVERY_SECONDS = 30;

    private final Design design;
    private final EstateSettings settings;
    private final Path results;
    private final int threads;
    private final Talk talk;

    EstateWork(Design design, EstateSettings settings, Path results, int threads, Talk talk) {
        this.design = design;
        this.settings = settings;
        this.results = results;
        this.threads = threads;
        this.talk = talk;
    }

    ExitCode run() throws IOException {
        List<Path> inputs = inputs();
        try (EstateFolder folder = EstateFolder.take(results, fingerprint(inputs), KEEP_EVERY_SECONDS)) {
            Optional<EstateResult> result = Estate.run(design, threads, folder, talk.progress());
            ProblemPrinter.print(talk.notes(), folder.gravest());
            if (result.isEmpty()) {
                return ExitCode.REFUSED;
            }
            talk.written(Results.write(results, inputs, EstateOutputs.of(result.get(), folder.problemList())));
            talk.out().println(ProblemPrinter.rows(result.get().rows()));
            folder.done();
            return ExitCode.DONE;
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
