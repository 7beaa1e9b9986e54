package quadmean.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quadmean.units.UnitSystem;

/** {@code quadmean start}: a folder for a new cruise. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Sets up a folder for a new cruise: a design whose every line is explained, and an empty tally with"
                        + " the headings that it expects.",
        footer = {
            "",
            "Replaces nothing that is there already. Examples:",
            "  quadmean start north-forty",
            "  quadmean start south-slope --units metric",
            "With a tally that exists, draft its design instead: quadmean check --init TALLY.csv"
        })
final class StartCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "The folder, made if it is not there.")
    private Path folder;

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            converter = Choices.Units.class,
            description = "us (in, ft, ac) or metric (cm, m, ha). Default: us.")
    private UnitSystem units = UnitSystem.US;

    @Mixin
    private Talk talk;

    @Override
    public Integer call() {
        try {
            return talk.end(answer());
        } catch (CommandException e) {
            throw talk.fail(e);
        }
    }

    private ExitCode answer() {
        String system = units.id();
        Map<String, String> files = new LinkedHashMap<>();
        files.put("cruise.toml", "cruise-" + system + ".toml");
        files.put("tally.csv", "tally-" + system + ".csv");
        Packaged.copy(folder, files);
        Path design = folder.resolve("cruise.toml");
        PrintWriter out = talk.out();
        talk.written(files.keySet().stream().map(folder::resolve).toList());
        out.println("Design: " + design + " (read it through, and set area, plots and species)");
        out.println("Tally:  " + folder.resolve("tally.csv") + " (a row a tree; a plot without trees has a row with its"
                + " number alone)");
        talk.next("quadmean plan " + design + " before the field, quadmean check " + design + " after it");
        return ExitCode.DONE;
    }
}
