package quadmean.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code quadmean licences}: whose work is in the program, and on which terms; and what changed from version to version. */
@Command(
        name = "licences",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Prints the licences of the program, of the libraries in it, and of the data that come with it.",
        footer = {"", "Examples:", "  quadmean licences", "  quadmean licences --full", "  quadmean licences --changes"
        })
final class LicencesCommand implements Callable<Integer> {
    private static final String NOTICES = "/META-INF/quadmean/THIRD-PARTY.txt";
    private static final String DATA = "/META-INF/quadmean/datasets/README.md";
    private static final String LICENCE = "/META-INF/quadmean/LICENSE";
    private static final String CHANGES = "/META-INF/quadmean/CHANGELOG.md";

    @Option(names = "--full", description = "Also the text of the program's own licence.")
    private boolean isFull;

    @Option(names = "--changes", description = "What changed from version to version instead.")
    private boolean isChanges;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<String> texts =
                isChanges ? List.of(CHANGES) : isFull ? List.of(NOTICES, DATA, LICENCE) : List.of(NOTICES, DATA);
        texts.forEach(t -> spec.commandLine().getOut().println(new String(Packaged.bytes(t), StandardCharsets.UTF_8)));
        return ExitCode.DONE.code();
    }
}
