package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quadmean.measure.HorizontalSighting;
import quadmean.measure.InstrumentUse;
import quadmean.measure.Readings;
import quadmean.measure.TwoWaySlope;
import quadmean.stats.PairedDifference;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/** {@code quadmean calibrate}: index error, known heights and slopes, pacing. */
@Command(
        name = "calibrate",
        description =
                "Checks instruments: the index error of a clinometer from two-way readings or a known slope, heights"
                        + " against a known one, and paces against a known course; several readings give an error.",
        footer = {
            "",
            "Examples:",
            "  quadmean calibrate --pair 18.5,-17.5 --pair 12,-11 --pair 25.5,-24",
            "  quadmean calibrate --known-slope 20%% --reading 20.5 --reading 21",
            "  quadmean calibrate --known-height 25m --distance 20m --sighting 118,-8",
            "  quadmean calibrate --course 330ft --paces 62 --paces 64 --paces 63",
            "",
            "The correction goes into [instrument] of a design; \"estimate\" then applies it and says so."
        })
final class CalibrateCommand extends PocketCommand {
    private static final double CONFIDENCE = 0.95;

    /** What {@code index_error} of a design takes at most, in units of the scale. */
    private static final int LARGEST_INDEX = 8;

    /** What {@code distance_factor} takes at most, and one over it at least. */
    private static final double LARGEST_FACTOR = 2;

    @Option(
            names = "--pair",
            paramLabel = "THERE,BACK",
            description = "Two-way readings with one instrument, with their signs; once for each pair.")
    private List<String> pairs = List.of();

    @Option(
            names = "--scale",
            paramLabel = "SCALE",
            converter = Choices.Scale.class,
            description = "Scale of the readings: percent (default), topo, deg, m15 or m20.")
    private AngleScale scale = AngleScale.PERCENT;

    @Option(
            names = "--known-slope",
            paramLabel = "SLOPE",
            converter = Amount.Converter.class,
            description = "A slope that is known, such as 20%% or 11deg, from eye to a mark.")
    private @Nullable Amount knownSlope;

    @Option(
            names = "--reading",
            paramLabel = "READING",
            converter = Amount.NumberConverter.class,
            description = "A reading of the known slope; once for each.")
    private List<Double> readings = List.of();

    @Option(
            names = "--known-height",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "A height that is known, such as that of a mast.")
    private @Nullable Amount knownHeight;

    @Option(
            names = "--distance",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "Horizontal distance to it.")
    private @Nullable Amount distance;

    @Option(
            names = "--sighting",
            paramLabel = "TOP,BASE",
            description = "Readings of its top and base, with their signs; once for each.")
    private List<String> sightings = List.of();

    @Option(
            names = "--course",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "A course of known length, on ground like that of the cruise.")
    private @Nullable Amount course;

    @Option(
            names = "--paces",
            paramLabel = "NUMBER",
            converter = Amount.NumberConverter.class,
            description = "Paces that it took; once for each walk.")
    private List<Double> paces = List.of();

    @Override
    List<String> answer() {
        long asked = Stream.of(!pairs.isEmpty(), knownSlope != null, knownHeight != null, course != null)
                .filter(b -> b)
                .count();
        if (asked != 1) {
            throw usage(
                    "give one check: --pair, --known-slope with --reading, --known-height with --distance and --sighting,"
                            + " or --course with --paces");
        }
        if (!pairs.isEmpty()) {
            return index(pairs.stream()
                    .mapToDouble(p -> {
                        double[] both = two(p, "--pair");
                        return new TwoWaySlope(scale, both[0], both[1], InstrumentUse.SAME_INSTRUMENT).indexError();
                    })
                    .toArray());
        }
        if (knownSlope != null) {
            double known = slope(knownSlope, "--known-slope").on(scale);
            needs(!readings.isEmpty(), "--known-slope needs --reading, once for each");
            return index(readings.stream().mapToDouble(r -> r - known).toArray());
        }
        return knownHeight != null ? height(knownHeight) : pacing();
    }

    private List<String> index(double[] errors) {
        PairedDifference d = PairedDifference.of(errors);
        List<String> lines = new ArrayList<>();
        lines.add("Index error " + HeightAdvice.signed(d.mean(), 2) + " " + scale.id() + error(d, scale.id()));
        if (TwoWaySlope.isBeyondHalfUnit(d.mean()) && (d.n() < 2 || isShown(d))) {
            lines.add(
                    "! index-error: more than half a unit (common practice, no source): have the instrument adjusted, or"
                            + " take the error off every reading.");
        }
        if (Math.abs(d.mean()) > LARGEST_INDEX) {
            lines.add("! index-error: more than " + LARGEST_INDEX
                    + " units (common practice, no source) is no index error that [instrument] takes: look for a sign that"
                    + " was forgotten, or another scale.");
            return lines;
        }
        lines.addAll(design("index_error = " + Figures.number(d.mean(), 3), d));
        return lines;
    }

    private List<String> height(Amount known) {
        if (distance == null || sightings.isEmpty()) {
            throw usage("--known-height needs --distance, and --sighting once for each");
        }
        double truth = metres(known, "--known-height");
        double away = metres(distance, "--distance");
        needs(truth > 0, "--known-height must be above 0");
        needs(away > 0, "--distance must be above 0");
        Figures figures = new Figures(system(known));
        PairedDifference d = PairedDifference.of(sightings.stream()
                .mapToDouble(s -> {
                    double[] both = two(s, "--sighting");
                    return new HorizontalSighting(new Readings(scale, both[0], both[1]), away).height() - truth;
                })
                .toArray());
        double factor = truth / (truth + d.mean());
        List<String> lines = new ArrayList<>();
        lines.add("Heights come out " + figures.off(d.mean()) + " on average, "
                + HeightAdvice.signed(100 * d.mean() / truth, 1) + " %" + error(d, 100 / truth, "%"));
        lines.add(
                "Heights grow in proportion to the distance: if it is the tape, a factor for distances mends it. An index error"
                        + " hardly shows here; check it with --pair.");
        if (factor < 1 / LARGEST_FACTOR || factor > LARGEST_FACTOR) {
            lines.add("! factor: " + Figures.number(factor, 4)
                    + " is none that [instrument] takes: look at the known height, the distance and the scale.");
            return lines;
        }
        lines.addAll(design("distance_factor = " + Figures.number(factor, 4), d));
        return lines;
    }

    private List<String> pacing() {
        if (course == null || paces.isEmpty()) {
            throw usage("--course needs --paces, once for each walk");
        }
        double metres = metres(course, "--course");
        needs(metres > 0, "--course must be above 0");
        needs(paces.stream().allMatch(p -> p > 0), "--paces must be above 0");
        PairedDifference d = PairedDifference.of(
                paces.stream().mapToDouble(Double::doubleValue).toArray());
        Figures figures = new Figures(system(course));
        double chain = Unit.CHAIN.convert(1, Unit.METRE);
        List<String> lines = new ArrayList<>();
        lines.add("Pace " + figures.length(metres / d.mean(), 3) + ": " + Figures.number(d.mean() * chain / metres, 2)
                + " paces a chain, " + Figures.number(d.mean() * 100 / metres, 1) + " paces in 100 m");
        lines.add(
                d.n() < 2
                        ? "One walk tells no error: pace the course again, both ways."
                        : "One walk of this length varies by " + Figures.number(100 * d.sd() / d.mean(), 1)
                                + " % (standard deviation), the mean by " + Figures.number(100 * d.se() / d.mean(), 1)
                                + " % (standard error, " + d.n() + " walks)");
        lines.add(
                "Uphill, in brush and late in the day a pace is shorter: calibrate on ground like that of the cruise.");
        return lines;
    }

    private static String error(PairedDifference d, String unit) {
        return error(d, 1, unit);
    }

    private static String error(PairedDifference d, double scale, String unit) {
        if (d.n() < 2) {
            return "; one reading tells no error, take several";
        }
        double half = d.sd() == 0 ? 0 : scale * d.estimate().halfWidth(CONFIDENCE);
        return " ± " + Figures.number(half, 2) + " " + unit + " (95 % limits, " + d.n() + " readings)";
    }

    /** What to write into a design, where the error is more than chance. */
    private static List<String> design(String line, PairedDifference d) {
        if (d.n() < 2) {
            return List.of();
        }
        return List.of(
                isShown(d)
                        ? "For a design: [instrument] " + line + ", and why = \"where and when it was checked\""
                        : "No error is shown beyond chance; leave the readings as they are.");
    }

    private static boolean isShown(PairedDifference d) {
        return d.sd() == 0 ? d.mean() != 0 : d.pValue() < 1 - CONFIDENCE;
    }

    private static double[] two(String text, String option) {
        String[] parts = text.split(",", -1);
        try {
            if (parts.length == 2) {
                return new double[] {Double.parseDouble(parts[0].strip()), Double.parseDouble(parts[1].strip())};
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw usage(option + " " + text
                + " is no pair: write two numbers with a decimal point, parted by a comma, such as" + " 18.5,-17.5");
    }

    private static void needs(boolean given, String message) {
        if (!given) {
            throw usage(message);
        }
    }
}
