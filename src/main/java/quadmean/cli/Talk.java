package quadmean.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import quadmean.model.Progress;
import quadmean.report.RunSummary;

/** How a command talks: in sentences, of errors alone, or in one JSON object for scripts. */
final class Talk {
    @Option(
            names = {"-q", "--quiet"},
            description = "Print nothing but errors and other problems of the input.")
    private boolean isQuiet;

    @Option(
            names = "--json",
            description = "Print one JSON object instead of sentences: exit code, files written, headline figures.")
    private boolean isJson;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private @Nullable RunSummary summary;

    /** For what the user asked for, in sentences. */
    PrintWriter out() {
        return isQuiet || isJson ? nowhere() : spec.commandLine().getOut();
    }

    /** For what is worth knowing and no error. */
    PrintWriter notes() {
        return isQuiet ? nowhere() : err();
    }

    /** For errors. */
    PrintWriter err() {
        return spec.commandLine().getErr();
    }

    /** Whether sentences were asked for, which is so if nothing else was. */
    boolean isInSentences() {
        return !isQuiet && !isJson;
    }

    /** How far long work has come, for people alone. */
    Progress progress() {
        return isInSentences() ? ProgressLine.of(err()) : Progress.SILENT;
    }

    /** Tells scripts something; nothing is worked out for them where none asked. */
    void tell(Consumer<RunSummary> what) {
        if (isJson) {
            what.accept(summary());
        }
    }

    private RunSummary summary() {
        if (summary == null) {
            summary = new RunSummary(spec.name());
        }
        return summary;
    }

    /** Names the files that were written. */
    List<Path> written(List<Path> files) {
        tell(s -> s.files(files));
        return files;
    }

    /** Names the next step. */
    void next(String words) {
        tell(s -> s.next(words));
        out().println("Next: " + words);
    }

    /** Ends the run. */
    int end(ExitCode code) {
        if (isJson) {
            spec.commandLine().getOut().println(summary().text(code.code()));
        }
        return code.code();
    }

    /** Ends a run that came to nothing. */
    CommandException fail(CommandException e) {
        tell(s -> s.error(String.valueOf(e.getMessage())));
        end(e.exitCode());
        return e;
    }

    private static PrintWriter nowhere() {
        return new PrintWriter(Writer.nullWriter());
    }
}
