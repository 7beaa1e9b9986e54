package quadmean.cli;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code quadmean completion}: a script by which a shell completes commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Prints a script for bash or zsh by which the Tab key completes commands and options.",
        footer = {
            "",
            "Example, for the shell that runs now; in its start-up file, for all of them:",
            "  source <(quadmean completion)"
        })
final class CompletionCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine root = spec.root().commandLine();
        spec.commandLine().getOut().print(AutoComplete.bash(root.getCommandName(), root));
        spec.commandLine().getOut().flush();
    }
}
