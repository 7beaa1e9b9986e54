package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import quadmean.units.AngleScale;

/** What {@code quadmean height} is told about a tree. */
final class HeightOptions {
    @Option(
            names = "--scale",
            paramLabel = "SCALE",
            converter = Choices.Scale.class,
            description = "percent (default), topo (66 ft), deg, m15 or m20 (made for 15 or 20 m).")
    AngleScale scale = AngleScale.PERCENT;

    @Option(
            names = "--top",
            paramLabel = "READING",
            required = true,
            converter = Amount.NumberConverter.class,
            description = {
                "Reading to the tip; below the eye it carries a minus. For merchantable height, or the height to a break,"
                        + " sight that mark instead. Repeat it, with --base, for several readings."
            })
    List<Double> tops = new ArrayList<>();

    @Option(
            names = "--base",
            paramLabel = "READING",
            required = true,
            converter = Amount.NumberConverter.class,
            description = "Reading to the base, one for each --top.")
    List<Double> bases = new ArrayList<>();

    @Option(
            names = "--distance",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Horizontal distance, such as 66ft or 20m; one for all readings, or one for each.")
    List<Amount> distances = new ArrayList<>();

    @Option(
            names = "--slope-distance",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Distance not taped level: with --ground-slope along the ground, with --to-base straight from"
                    + " the eye to the base.")
    List<Amount> slopeDistances = new ArrayList<>();

    @Option(
            names = "--ground-slope",
            paramLabel = "SLOPE",
            converter = Amount.Converter.class,
            description = "Slope of the ground under --slope-distance, such as 20%% or 11deg.")
    @Nullable
    Amount groundSlope;

    @Option(names = "--to-base", description = "The --slope-distance runs straight from the eye to the base.")
    boolean toBase;

    @Option(
            names = "--laser",
            paramLabel = "LENGTH",
            arity = "2",
            converter = Amount.Converter.class,
            description = "Three-shot laser: straight distance to the top, then to the base.")
    List<Amount> laser = new ArrayList<>();

    @Option(
            names = "--lean",
            paramLabel = "ANGLE",
            converter = Amount.Converter.class,
            description = "Lean from the vertical, such as 5deg: says how much the height can be off.")
    @Nullable
    Amount lean;

    @Option(
            names = "--sides",
            paramLabel = "any|opposite",
            converter = Choices.Sides.Converter.class,
            description = "opposite: two readings of a leaning tree, from opposite sides in the plane of its lean.")
    Choices.Sides sides = Choices.Sides.ANY;

    @Option(
            names = "--eye",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Height of the eye above the ground. Default 1.5m (common practice, no source).")
    @Nullable
    Amount eye;

    @Option(
            names = "--reading-sd",
            paramLabel = "ANGLE",
            converter = Amount.Converter.class,
            description = "Sd of a reading: 0.25deg (default: common practice, no source), or a number of units of the"
                    + " scale, such as 0.5.")
    @Nullable
    Amount readingSd;

    @Option(
            names = "--distance-sd",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Sd of a distance. Default 0.1m (common practice, no source).")
    @Nullable
    Amount distanceSd;

    @Option(
            names = "--slope-sd",
            paramLabel = "ANGLE",
            converter = Amount.Converter.class,
            description = "Sd of the ground slope. Default 0.5deg (common practice, no source).")
    @Nullable
    Amount slopeSd;

    @Option(
            names = "--index-error",
            paramLabel = "UNITS",
            converter = Amount.NumberConverter.class,
            description = "What the instrument reads too high, in units of the scale (from quadmean slope).")
    @Nullable
    Double indexError;

    @Option(names = "--verbose", description = "Show the arithmetic step by step.")
    boolean verbose;
}
