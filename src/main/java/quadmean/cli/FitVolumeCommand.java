package quadmean.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quadmean.chart.ChartSet;
import quadmean.chart.VolumeFitCharts;
import quadmean.field.FelledOptions;
import quadmean.field.FelledReader;
import quadmean.model.FelledData;
import quadmean.report.ProblemsCsv;
import quadmean.report.VolumeFitOutputs;
import quadmean.report.VolumeFitSummary;
import quadmean.units.UnitSystem;
import quadmean.volume.FelledSections;
import quadmean.volume.VolumeFitForm;
import quadmean.volume.VolumeFitSettings;
import quadmean.volume.VolumeFitWeights;
import quadmean.volume.VolumeFits;

/** {@code quadmean fit-volume}: tree volume equations from felled trees. */
@Command(
        name = "fit-volume",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Fits tree volume equations to felled trees by weighted least squares, and writes the best as a piece of a"
                        + " design. A row is a tree with dbh, height and volume, or a point of its stem.",
        footer = {
            "",
            "Columns are found by name, with their units in the header (dbh_in,",
            "\"Height (m)\", volume_ft3), or named by an option. Forms:",
            "  combined_variable  V = a + b·D²·H",
            "  schumacher_hall    ln V = a + b·ln D + c·ln H",
            "  honer              V = D²/(a + b/H)",
            "  form_factor        V = f·g·H",
            "  log_polynomial     ln V = a + b·ln D + c·ln H + d·(ln D)² + e·(ln H)²",
            "                     + f·ln D·ln H, from 30 trees on",
            "Writes fit-volume.html, volume.toml, fit-volume.json, fit-volume.csv,",
            "problems.csv, and sections.csv where volumes are summed from points of stems.",
            "Examples:",
            "  quadmean fit-volume datasets/black-cherry.csv",
            "  quadmean fit-volume datasets/black-cherry.csv --form schumacher_hall",
            "  quadmean fit-volume datasets/black-cherry.csv --units metric --weight equal",
            "  quadmean fit-volume datasets/black-cherry.csv --volume volume_ft3:ft3",
            "  quadmean fit-volume datasets/demo-stems.csv --at at_ft --diameter diameter_in"
        })
final class FitVolumeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FELLED", description = "Table of felled trees, CSV or .xlsx, with a header row.")
    private Path table;

    @Mixin
    private FelledTableOptions columns;

    @Mixin
    private SectionOptions sectioning;

    @Option(
            names = "--form",
            paramLabel = "FORM",
            split = ",",
            converter = Choices.Forms.class,
            description = "Form to fit, or several parted by commas. Default: all.")
    private List<VolumeFitForm> forms = List.of(VolumeFitForm.values());

    @Option(
            names = "--weight",
            paramLabel = "equal|inverse_square",
            converter = Choices.FitWeights.class,
            description = "Weights of the combined variable and the form factor: all alike, or 1/(D²H)². Default:"
                    + " inverse_square.")
    private VolumeFitWeights weights = VolumeFitWeights.INVERSE_SQUARE;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            converter = Choices.Units.class,
            description = "Units of the coefficients: in, ft, ft3 or cm, m, m3. Default: those of the table.")
    private @Nullable UnitSystem units;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder for the results. Default: out/ and the name of the table with -fit-volume.")
    private @Nullable Path out;

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
        Results.checkName(out);
        if (!Files.isRegularFile(table)) {
            String what = Files.isDirectory(table) ? "a table is a file, and this is a folder: " : "there is no file ";
            throw new CommandException(ExitCode.USAGE, what + table + "; see quadmean fit-volume --help");
        }
        FelledOptions options = columns.options();
        FelledData data;
        try {
            data = FelledReader.read(table, options);
        } catch (IOException e) {
            throw new CommandException(ExitCode.USAGE, "a file cannot be read: " + FileTrouble.explain(e));
        }
        return run(data, sections(data, options));
    }

    /** The stems with their sections, where the table is one of points. */
    private Optional<FelledSections> sections(FelledData data, FelledOptions options) {
        if (!options.isOfPoints()) {
            sectioning.checkUnused();
            return Optional.empty();
        }
        return Optional.of(FelledSections.of(data, sectioning.settings(), options.badRows()));
    }

    private ExitCode run(FelledData read, Optional<FelledSections> sections) {
        FelledData data = sections.map(FelledSections::data).orElse(read);
        return data.isRefused() || data.trees().isEmpty() ? refuse(data) : fit(data, sections);
    }

    private ExitCode refuse(FelledData data) {
        PrintWriter err = talk.err();
        talk.tell(s -> s.problems(data.problems()));
        ProblemPrinter.print(err, data.problems());
        List<Path> written = write(Map.of("problems.csv", ProblemsCsv.of(data.problems())));
        String why = data.isRefused() ? "" : "The table has no tree that can be used: ";
        err.println("Refused. " + why + (why.isEmpty() ? "Nothing" : "nothing") + " was fitted; all problems are in "
                + written.get(0) + ".");
        if (Files.exists(folder().resolve("fit-volume.html"))) {
            err.println("The other files in " + folder() + " are from an earlier run.");
        }
        return ExitCode.REFUSED;
    }

    private ExitCode fit(FelledData data, Optional<FelledSections> sections) {
        PrintWriter answer = talk.out();
        PrintWriter err = talk.notes();
        talk.tell(s -> s.problems(data.problems()));
        talk.tell(s -> s.rows(data.rows()));
        ProblemPrinter.print(err, data.problems());
        VolumeFits fits = VolumeFits.of(
                data,
                new VolumeFitSettings(
                        forms.stream().distinct().sorted().toList(), weights, units == null ? data.units() : units));
        ChartSet charts = VolumeFitCharts.of(fits);
        if (!charts.missing().isEmpty()) {
            err.println(charts.missing());
        }
        List<Path> written = write(VolumeFitOutputs.of(fits, charts, sections));
        VolumeFitSummary.of(fits).forEach(answer::println);
        answer.println();
        answer.println(ProblemPrinter.rows(data.rows()));
        answer.println("Report: " + written.get(0));
        answer.println("For a design: " + written.get(1));
        if (sections.isPresent()) {
            answer.println("Sections: " + folder().resolve("sections.csv"));
        }
        talk.next("open " + written.get(0) + ", then put what " + written.get(1) + " says into a design");
        return ExitCode.DONE;
    }

    private Path folder() {
        String name = String.valueOf(table.getFileName());
        int dot = name.lastIndexOf('.');
        return Results.folder(out, table, dot > 0 ? name.substring(dot) : "", "-fit-volume");
    }

    private List<Path> write(Map<String, quadmean.report.Content> files) {
        return talk.written(Results.write(folder(), new ArrayList<>(List.of(table)), files));
    }
}
