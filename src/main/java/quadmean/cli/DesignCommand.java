package quadmean.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.design.KindsSettings;
import quadmean.design.TallyFile;
import quadmean.model.Problem;
import quadmean.report.Content;
import quadmean.report.ProblemsCsv;

/** What all commands on a design share: reading it, refusing it, writing results. */
@Command(mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false)
abstract class DesignCommand implements Callable<Integer> {
    private static final String PROBLEMS = "problems.csv";
    static final String MEND = "mend what is listed, as its column to_do says, and run the command again";

    @Parameters(paramLabel = "DESIGN", description = "The design file, such as designs/demo.toml.")
    private Path designFile;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder for the results. Default: out/ and the name of the design.")
    private @Nullable Path out;

    @Mixin
    private Talk talk;

    /** Does the work on a design that is in order. */
    abstract ExitCode run(Design design) throws IOException;

    /** Whether the command takes a design of an estate, and not of a single stand alone. */
    boolean takesEstate() {
        return false;
    }

    /** Whether the command reads the tally of a design; one that does not can do without the files. */
    boolean readsTally(Design design) {
        return true;
    }

    @Override
    public final Integer call() throws IOException {
        try {
            return talk.end(answer());
        } catch (CommandException e) {
            throw talk.fail(e);
        }
    }

    private ExitCode answer() throws IOException {
        Results.checkName(out);
        if (!Files.isRegularFile(designFile)) {
            String what =
                    Files.isDirectory(designFile) ? "a design is a file, and this is a folder: " : "there is no file ";
            throw new CommandException(
                    ExitCode.USAGE,
                    what + designFile
                            + "; designs/README.md tells how to write one, and quadmean start DIR sets one up");
        }
        try {
            Optional<ExitCode> done = insteadOfDesign(designFile, out);
            if (done.isEmpty() && designFile.toString().matches("(?i).*\\.(csv|xlsx|xls)")) {
                throw new CommandException(
                        ExitCode.USAGE,
                        designFile
                                + " looks like a tally, and this takes a design; draft one with: quadmean check --init "
                                + designFile);
            }
            return done.isPresent() ? done.get() : work();
        } catch (IOException e) {
            throw new CommandException(ExitCode.USAGE, "a file cannot be read: " + FileTrouble.explain(e));
        }
    }

    /**
     * What a command does with the file where it is no design.
     *
     * @param out what {@code --out} says
     * @return empty if the file is a design
     */
    Optional<ExitCode> insteadOfDesign(Path file, @Nullable Path out) throws IOException {
        return Optional.empty();
    }

    private ExitCode work() throws IOException {
        DesignReading reading = DesignReader.read(designFile);
        Design design = reading.design();
        if (design == null) {
            checkOwnProblems(reading.problems());
            return refuse(reading.problems(), List.of(designFile));
        }
        if (!takesEstate()) {
            checkNoEstate(design);
        }
        checkThere(readsTally(design) ? design.tallies() : List.of());
        Path list = design.exceptions().plotList();
        if (list != null && readsTally(design) && Files.notExists(list)) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "the design names a list of plots that is not there: " + list
                            + (design.layout().isPresent()
                                    ? "; quadmean plan lays the plots out and writes plots.csv, which goes there"
                                    : ""));
        }
        return run(design);
    }

    /** Stops at a design of an estate, where one of a single stand is needed. */
    static void checkNoEstate(Design design) {
        if (design.estate().isPresent()) {
            throw new CommandException(
                    ExitCode.USAGE,
                    design.file()
                            + " describes an estate, which quadmean estimate and quadmean check work through; for the"
                            + " rest make a design of the stand in question");
        }
    }

    /** Stops where a tally file is missing. */
    static void checkThere(List<TallyFile> tallies) {
        List<Path> missing =
                tallies.stream().map(TallyFile::path).filter(Files::notExists).toList();
        if (!missing.isEmpty()) {
            throw new CommandException(
                    ExitCode.USAGE, "the design names tally files that are not there: " + join(missing));
        }
    }

    /** A design that cannot be read does not say which files are its tallies; one of them could be problems.csv. */
    private void checkOwnProblems(List<Problem> problems) throws IOException {
        Path target = folder().resolve(PROBLEMS);
        if (Files.isRegularFile(target) && !ProblemsCsv.isOne(target)) {
            ProblemPrinter.print(err(), problems);
            throw new CommandException(
                    ExitCode.USAGE,
                    target + " is no list of problems, perhaps a tally, and stays as it is; name another folder with"
                            + " --out");
        }
    }

    /** Lists the problems, writes them, and refuses. */
    final ExitCode refuse(List<Problem> problems, List<Path> inputs) {
        return refuse(problems, inputs, Map.of());
    }

    /** The same with further files that were asked for. */
    final ExitCode refuse(List<Problem> problems, List<Path> inputs, Map<String, Content> further) {
        talk.tell(s -> s.problems(problems));
        ProblemPrinter.print(err(), problems);
        Map<String, Content> files = new LinkedHashMap<>();
        files.put(PROBLEMS, ProblemsCsv.of(problems));
        files.putAll(further);
        List<Path> written = write(files, inputs);
        written.stream().skip(1).forEach(p -> err().println("To mend: " + p));
        err().println("Refused. Nothing was estimated; all problems are in " + written.get(0) + ".");
        if (Files.exists(folder().resolve("report.html"))) {
            err().println("The other files in " + folder() + " are from an earlier run.");
        }
        talk.tell(s -> s.next(MEND));
        err().println("Next: " + MEND);
        return ExitCode.REFUSED;
    }

    /** Writes the results of a design into the output folder. */
    final List<Path> write(Design design, Map<String, Content> files) {
        return write(files, inputs(design));
    }

    /** Writes files into the output folder, none of them over an input. */
    final List<Path> write(Map<String, Content> files, List<Path> inputs) {
        return talk.written(Results.write(folder(), inputs, files));
    }

    static List<Path> inputs(Design design) {
        List<Path> inputs = new ArrayList<>(List.of(design.file()));
        design.tallies().forEach(t -> inputs.add(t.path()));
        design.followUp().tallies().forEach(t -> inputs.add(t.path()));
        Path plotList = design.exceptions().plotList();
        if (plotList != null) {
            inputs.add(plotList);
        }
        Path previous = design.plan().previous();
        if (previous != null) {
            inputs.add(previous);
        }
        design.tract().ifPresent(t -> inputs.add(t.boundary()));
        design.plan()
                .kinds()
                .flatMap(KindsSettings::map)
                .ifPresent(m -> inputs.add(m.table().path()));
        return inputs;
    }

    final Path folder() {
        return Results.folder(out, designFile, ".toml", "");
    }

    /** How the command talks. */
    final Talk talk() {
        return talk;
    }

    final PrintWriter out() {
        return talk.out();
    }

    final PrintWriter err() {
        return talk.err();
    }

    private static String join(List<Path> paths) {
        return String.join(", ", paths.stream().map(Path::toString).toList());
    }
}
