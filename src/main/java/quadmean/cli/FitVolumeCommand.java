package quadmean.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quadmean.chart.ChartSet;
import quadmean.chart.VolumeFitCharts;
import quadmean.field.FelledOptions;
import quadmean.field.FelledOptions.Measure;
import quadmean.field.FelledReader;
import quadmean.model.FelledData;
import quadmean.model.Policy;
import quadmean.report.ProblemsCsv;
import quadmean.report.VolumeFitOutputs;
import quadmean.report.VolumeFitSummary;
import quadmean.units.UnitSystem;
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
        usageHelpWidth = 100,
        description = "Fits tree volume equations to felled trees by weighted least squares, one row a tree with dbh,"
                + " height and volume, and writes the best as a piece of a design.",
        footer = {
            "",
            "Columns are found by name, with their units in the header (dbh_in, \"Height (m)\", volume_ft3),",
            "or named by an option. Forms:",
            "  combined_variable  V = a + b·D²·H              schumacher_hall  ln V = a + b·ln D + c·ln H",
            "  honer              V = D²/(a + b/H)            form_factor      V = f·g·H",
            "  log_polynomial     ln V = a + b·ln D + c·ln H + d·(ln D)² + e·(ln H)² + f·ln D·ln H, from 30 trees on",
            "Writes fit-volume.html, volume.toml, fit-volume.json, fit-volume.csv and problems.csv. Examples:",
            "  quadmean fit-volume datasets/black-cherry.csv",
            "  quadmean fit-volume datasets/black-cherry.csv --form schumacher_hall --units metric",
            "  quadmean fit-volume datasets/black-cherry.csv --volume volume_ft3:ft3 --weight equal"
        })
final class FitVolumeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FELLED", description = "Table of felled trees, CSV or .xlsx, with a header row.")
    private Path table;

    @Option(names = "--dbh", paramLabel = "NAME[:UNIT]", description = "Column of dbh; unit in, cm or mm.")
    private @Nullable String dbh;

    @Option(names = "--height", paramLabel = "NAME[:UNIT]", description = "Column of total height; unit ft, m or dm.")
    private @Nullable String height;

    @Option(names = "--volume", paramLabel = "NAME[:UNIT]", description = "Column of volume; unit ft3 or m3.")
    private @Nullable String volume;

    @Option(
            names = "--species",
            paramLabel = "NAME",
            description = "Column of species codes: each species is fitted, and all together.")
    private @Nullable String species;

    @Option(names = "--tree", paramLabel = "NAME", description = "Column of tree numbers, for the lists.")
    private @Nullable String tree;

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
            names = "--bad-rows",
            paramLabel = "refuse|drop",
            converter = Choices.BadRows.class,
            description = "What happens where a row cannot be used: nothing is fitted, or the row is left out and"
                    + " listed. Default: refuse.")
    private Policy badRows = Policy.REFUSE;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder for the results. Default: out/ and the name of the table with -fit-volume.")
    private @Nullable Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Results.checkName(out);
        if (!Files.isRegularFile(table)) {
            String what = Files.isDirectory(table) ? "a table is a file, and this is a folder: " : "there is no file ";
            throw new CommandException(ExitCode.USAGE, what + table + "; see quadmean fit-volume --help");
        }
        FelledData data;
        try {
            data = FelledReader.read(table, options());
        } catch (IOException e) {
            throw new CommandException(ExitCode.USAGE, "a file cannot be read: " + FileTrouble.explain(e));
        }
        return (data.isRefused() ? refuse(data) : fit(data)).code();
    }

    private FelledOptions options() {
        Map<Measure, String> columns = new EnumMap<>(Measure.class);
        put(columns, Measure.TREE, tree);
        put(columns, Measure.SPECIES, species);
        put(columns, Measure.DBH, dbh);
        put(columns, Measure.HEIGHT, height);
        put(columns, Measure.VOLUME, volume);
        return new FelledOptions(columns, badRows);
    }

    private static void put(Map<Measure, String> columns, Measure measure, @Nullable String name) {
        if (name != null) {
            columns.put(measure, name);
        }
    }

    private ExitCode refuse(FelledData data) {
        PrintWriter err = spec.commandLine().getErr();
        ProblemPrinter.print(err, data.problems());
        List<Path> written = write(Map.of("problems.csv", ProblemsCsv.of(data.problems())));
        err.println("Refused. Nothing was fitted; all problems are in " + written.get(0) + ".");
        if (Files.exists(folder().resolve("fit-volume.html"))) {
            err.println("The other files in " + folder() + " are from an earlier run.");
        }
        return ExitCode.REFUSED;
    }

    private ExitCode fit(FelledData data) {
        PrintWriter answer = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ProblemPrinter.print(err, data.problems());
        VolumeFits fits = VolumeFits.of(
                data,
                new VolumeFitSettings(
                        forms.stream().distinct().sorted().toList(), weights, units == null ? data.units() : units));
        ChartSet charts = VolumeFitCharts.of(fits);
        if (!charts.missing().isEmpty()) {
            err.println(charts.missing());
        }
        List<Path> written = write(VolumeFitOutputs.of(fits, charts));
        VolumeFitSummary.of(fits).forEach(answer::println);
        answer.println();
        answer.println(ProblemPrinter.rows(data.rows()));
        answer.println("Report: " + written.get(0));
        answer.println("For a design: " + written.get(1));
        return ExitCode.DONE;
    }

    private Path folder() {
        String name = String.valueOf(table.getFileName());
        int dot = name.lastIndexOf('.');
        return Results.folder(out, table, dot > 0 ? name.substring(dot) : "", "-fit-volume");
    }

    private List<Path> write(Map<String, quadmean.report.Content> files) {
        return Results.write(folder(), new ArrayList<>(List.of(table)), files);
    }
}
