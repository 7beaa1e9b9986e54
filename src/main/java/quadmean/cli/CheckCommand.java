package quadmean.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quadmean.cruise.Cruise;
import quadmean.design.Design;
import quadmean.field.DesignDraft;
import quadmean.field.WorkingCopy;
import quadmean.model.Tally;
import quadmean.report.Content;
import quadmean.report.CopyCsv;
import quadmean.report.ProblemsCsv;

/** {@code quadmean check}: reads the tally and lists what is wrong with it. */
@Command(
        name = "check",
        description = "Reads the tally of a design and lists what is wrong with it; estimates nothing.",
        footer = {
            "",
            "Writes problems.csv. Example:",
            "  quadmean check designs/demo.toml",
            "  quadmean check designs/demo.toml --copy",
            "  quadmean check --init datasets/demo-tally.csv --out new.toml",
            "What happens to a row that breaks a rule is set under [policy] in the design:",
            "refuse, drop or keep."
        })
final class CheckCommand extends DesignCommand {
    @Option(
            names = "--init",
            description = "DESIGN is a tally that has no design yet, CSV or .xlsx: draft one from its header and first"
                    + " rows, beside it or in the file that --out names. What only you know is marked FILL IN.")
    private boolean isTally;

    @Option(
            names = "--copy",
            description =
                    "Write a copy of each tally to mend: recodes carried out, a last column that says which rules a"
                            + " row breaks. The tally itself stays as it is.")
    private boolean wantsCopy;

    @Override
    Optional<ExitCode> insteadOfDesign(Path file, @Nullable Path out) throws IOException {
        return isTally ? Optional.of(draft(file, out)) : Optional.empty();
    }

    private ExitCode draft(Path tally, @Nullable Path out) throws IOException {
        String name = String.valueOf(tally.getFileName());
        int dot = name.lastIndexOf('.');
        Path target = out != null ? out : tally.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".toml");
        DesignDraft draft = DesignDraft.of(tally, pathFrom(target, tally));
        ProblemPrinter.print(draft.text().isEmpty() ? err() : out(), draft.problems());
        if (draft.text().isEmpty()) {
            err().println("Refused. Nothing was drafted.");
            return ExitCode.REFUSED;
        }
        write(target, draft.text());
        out().println("Draft: " + target);
        draft.gaps().forEach(line -> out().println("  " + line));
        draft.text()
                .lines()
                .filter(l -> l.startsWith("# not in use") || l.startsWith("plots = "))
                .forEach(l -> out().println("  " + l));
        talk().written(List.of(target));
        talk().next("fill in the " + draft.gaps().size() + " marked lines, then quadmean check " + target);
        return ExitCode.DONE;
    }

    /** The tally as seen from the design's folder, with slashes. */
    private static String pathFrom(Path design, Path tally) {
        Path folder = design.toAbsolutePath().normalize().getParent();
        Path absolute = tally.toAbsolutePath().normalize();
        try {
            return (folder == null ? absolute : folder.relativize(absolute))
                    .toString()
                    .replace('\\', '/');
        } catch (IllegalArgumentException otherDrive) {
            return absolute.toString();
        }
    }

    private static void write(Path target, String text) {
        try {
            Files.writeString(target, text, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw new CommandException(
                    ExitCode.USAGE, target + " is there already and stays as it is; name another file with --out");
        } catch (IOException e) {
            throw new CommandException(ExitCode.CANNOT_WRITE, "the draft cannot be written: " + FileTrouble.explain(e));
        }
    }

    @Override
    boolean takesEstate() {
        return true;
    }

    @Override
    ExitCode run(Design design) throws IOException {
        TallyNeeded.check(design, "check");
        if (design.estate().isPresent()) {
            if (wantsCopy) {
                throw new CommandException(
                        ExitCode.USAGE, "--copy is for the tally of a stand; mend that of an estate by problems.csv");
            }
            return EstateWork.of(design, folder(), talk()).check();
        }
        Tally tally = Cruise.check(design);
        if (tally.isRefused()) {
            return refuse(tally.problems(), inputs(design), copies(design, tally));
        }
        ProblemPrinter.print(out(), tally.problems());
        int trees = tally.plots().stream().mapToInt(p -> p.trees().size()).sum();
        out().println(tally.plots().size() + " plots, " + trees + " trees");
        out().println(ProblemPrinter.rows(tally.rows()));
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("problems.csv", ProblemsCsv.of(tally.problems()));
        files.putAll(copies(design, tally));
        List<Path> written = write(design, files);
        out().println("Problems: " + written.get(0));
        written.stream()
                .skip(1)
                .forEach(p -> out().println("To mend: " + p + " (then name it under file in the design)"));
        talk().tell(s -> s.rows(tally.rows()));
        talk().tell(s -> s.problems(tally.problems()));
        talk().next("quadmean estimate " + design.file());
        return ExitCode.DONE;
    }

    private Map<String, Content> copies(Design design, Tally tally) throws IOException {
        Map<String, Content> copies = new LinkedHashMap<>();
        if (wantsCopy) {
            WorkingCopy.of(design, tally.problems())
                    .forEach((name, rows) -> copies.put("to-mend-" + plainName(name) + ".csv", CopyCsv.of(rows)));
        }
        return copies;
    }

    /** A file name without folders, sheets or signs that files cannot have. */
    private static String plainName(String name) {
        return name.replaceAll("(?i)\\.(csv|xlsx|txt)", "").replaceAll("[^A-Za-z0-9._-]+", "_");
    }
}
