package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quadmean.measure.BorderlineErrors;
import quadmean.measure.BorderlineTree;
import quadmean.measure.PointGauge;
import quadmean.measure.Slope;
import quadmean.stats.NormalCurve;
import quadmean.units.DistanceTo;

/** {@code quadmean borderline}: whether a tree near the limit of a point sample is in. */
@Command(
        name = "borderline",
        description = "Whether a borderline tree of a point sample is in, by how much, and with what chance of being"
                + " wrong; or a table for the pocket.",
        footer = {
            "",
            "Examples:",
            "  quadmean borderline --factor 20ft2/ac --dbh 14in --distance 27ft --to centre",
            "  quadmean borderline --factor 4m2/ha --dbh 30cm --distance 7.6m --to face",
            "  quadmean borderline --table --units us",
            "  quadmean borderline --table --factor 20ft2/ac",
            "  quadmean borderline --table --factor 4 --units metric --dbh-to 60",
            "",
            "Limits to the centre and to the face differ by half a diameter: use one of",
            "them all cruise long."
        })
final class BorderlineCommand extends PocketCommand {
    /** From this chance of being wrong on, the tree is worth a second measurement. Common practice, no source. */
    private static final double CLOSE = 0.10;

    @Option(
            names = "--factor",
            paramLabel = "FACTOR",
            converter = Amount.Converter.class,
            description = "Basal area factor, such as 20ft2/ac or 4m2/ha.")
    private @Nullable Amount factor;

    @Option(
            names = "--dbh",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Dbh, such as 14in or 30cm.")
    private @Nullable Amount dbh;

    @Option(
            names = "--distance",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Distance to the tree as taped, at breast height.")
    private @Nullable Amount distance;

    @Option(
            names = "--to",
            paramLabel = "centre|face",
            converter = Choices.To.class,
            description = "The part of the stem taped to.")
    private @Nullable DistanceTo to;

    @Option(
            names = "--slope",
            paramLabel = "SLOPE",
            converter = Amount.Converter.class,
            description = "Slope of the line to the tree, not of the hill. Default level.")
    private @Nullable Amount slope;

    @Option(
            names = "--distance-sd",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Sd of the distance. Default 0.03m (common practice, no source).")
    private @Nullable Amount distanceSd;

    @Option(
            names = "--dbh-sd",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Sd of the dbh. Default 0.1in (common practice, no source).")
    private @Nullable Amount dbhSd;

    @Option(
            names = "--slope-sd",
            paramLabel = "ANGLE",
            converter = Amount.Converter.class,
            description = "Sd of the slope. Default 0.5deg (common practice, no source).")
    private @Nullable Amount slopeSd;

    @Option(
            names = "--table",
            description = "Plot radius factors by basal area factor, or with --factor limiting distances by dbh.")
    private boolean table;

    @Option(
            names = "--dbh-from",
            paramLabel = "DBH",
            converter = Amount.NumberConverter.class,
            description = "First dbh of the table. Default 4 in or 10 cm.")
    private @Nullable Double from;

    @Option(
            names = "--dbh-to",
            paramLabel = "DBH",
            converter = Amount.NumberConverter.class,
            description = "Last dbh of the table. Default 40 in or 100 cm.")
    private @Nullable Double last;

    @Option(
            names = "--dbh-step",
            paramLabel = "DBH",
            converter = Amount.NumberConverter.class,
            description = "Step of the table. Default 1 in or 2 cm.")
    private @Nullable Double step;

    @Override
    List<String> answer() {
        Slope line = slope == null ? Slope.LEVEL : slope(slope, "--slope");
        if (table) {
            return table(line);
        }
        if (factor == null || dbh == null || distance == null || to == null) {
            throw usage("give --factor, --dbh, --distance and --to (centre or face), or ask for a --table");
        }
        BorderlineTree tree = new BorderlineTree(
                new PointGauge(factor(factor, "--factor")),
                dbhCm(dbh, "--dbh"),
                metres(distance, "--distance"),
                to,
                line);
        return verdict(tree, new Figures(system(distance)));
    }

    private List<String> verdict(BorderlineTree tree, Figures figures) {
        List<String> lines = new ArrayList<>();
        double sd = tree.marginSd(errors());
        double wrong = tree.margin() == 0 ? 0.5 : NormalCurve.lowerTail(-Math.abs(tree.margin()) / sd);
        lines.add(tree.verdict() + ": limit " + figures.length(tree.limit(), 3) + " to the "
                + tree.to().id() + (tree.toTree().ratio() == 0 ? "" : " along the slope") + ", margin "
                + figures.withSd(tree.margin(), sd) + ", chance of being wrong " + percent(wrong));
        if (wrong > CLOSE) {
            lines.add("! close: tape dbh and distance again, by someone else if you can (beyond 10 %: common practice,"
                    + " no source).");
        }
        lines.add("Errors taken: distance " + given(distanceSd, "0.03m") + ", dbh " + given(dbhSd, "0.1in")
                + (tree.toTree().ratio() == 0 ? "" : ", slope " + given(slopeSd, "0.5deg")) + ".");
        return lines;
    }

    private BorderlineErrors errors() {
        BorderlineErrors errors = BorderlineErrors.commonPractice();
        if (distanceSd != null) {
            errors = errors.withDistanceSd(metres(distanceSd, "--distance-sd"));
        }
        if (dbhSd != null) {
            errors = errors.withDbhSd(dbhCm(dbhSd, "--dbh-sd"));
        }
        return slopeSd == null ? errors : errors.withSlopeSd(SightingBuilder.radians(slopeSd, "--slope-sd"));
    }

    private List<String> table(Slope line) {
        if (factor == null) {
            return BorderlineTable.factors(system("a table of factors needs a unit system:"));
        }
        PointGauge gauge = new PointGauge(factor(factor, "--factor"));
        BorderlineTable.Range range = BorderlineTable.Range.of(system(factor), from, last, step);
        return BorderlineTable.limits(gauge, line, range);
    }

    private static String percent(double chance) {
        return chance < 0.001 ? "below 0.1 %" : Figures.number(100 * chance, chance < 0.1 ? 1 : 0) + " %";
    }

    private static String given(@Nullable Amount typed, String standard) {
        return typed == null ? standard + " (common practice, no source)" : typed + " (given by you)";
    }
}
