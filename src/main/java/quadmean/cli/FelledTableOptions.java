package quadmean.cli;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import quadmean.field.FelledOptions;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.Policy;

/** What the columns of a table of felled trees hold, and what becomes of rows that cannot be used. */
final class FelledTableOptions {
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

    @Option(
            names = "--tree",
            paramLabel = "NAME",
            description = "Column of tree names, for the lists, and to tell which points are of one stem.")
    private @Nullable String tree;

    @Option(
            names = "--at",
            paramLabel = "NAME[:UNIT]",
            description =
                    "Column of heights above ground of points of stems, in a table with a row a point; volumes are"
                            + " then summed section by section.")
    private @Nullable String at;

    @Option(names = "--diameter", paramLabel = "NAME[:UNIT]", description = "Column of diameters at those points.")
    private @Nullable String diameter;

    @Option(
            names = "--bark",
            paramLabel = "NAME[:UNIT]",
            description = "Column of bark thickness at those points, measured on one side: twice as much comes off the"
                    + " diameter.")
    private @Nullable String bark;

    @Option(
            names = "--bad-rows",
            paramLabel = "refuse|drop",
            converter = Choices.BadRows.class,
            description = "What happens where a row cannot be used: nothing is fitted, or the row is left out and"
                    + " listed, with a stem the whole tree. Default: refuse.")
    private Policy badRows = Policy.REFUSE;

    FelledOptions options() {
        Map<Measure, String> columns = new EnumMap<>(Measure.class);
        put(columns, Measure.TREE, tree);
        put(columns, Measure.SPECIES, species);
        put(columns, Measure.DBH, dbh);
        put(columns, Measure.HEIGHT, height);
        put(columns, Measure.VOLUME, volume);
        put(columns, Measure.AT, at);
        put(columns, Measure.DIAMETER, diameter);
        put(columns, Measure.BARK, bark);
        FelledOptions options = new FelledOptions(columns, badRows);
        if (options.isOfPoints() && volume != null) {
            throw new CommandException(
                    ExitCode.USAGE, "--volume and points of stems exclude each other: volumes are summed from points");
        }
        if (!options.isOfPoints() && bark != null) {
            throw new CommandException(ExitCode.USAGE, "--bark needs points of stems: add --at and --diameter");
        }
        return options;
    }

    private static void put(Map<Measure, String> columns, Measure measure, @Nullable String name) {
        if (name != null) {
            columns.put(measure, name);
        }
    }
}
