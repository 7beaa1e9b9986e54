package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quadmean.measure.FixedPlot;
import quadmean.measure.InstrumentUse;
import quadmean.measure.Slope;
import quadmean.measure.TwoWaySlope;
import quadmean.units.AngleScale;

/** {@code quadmean slope}: two-way check, conversions, and fixed plots on a slope. */
@Command(
        name = "slope",
        description =
                "A slope in percent, degrees and secant, checked from both ends, and what it does to distances and"
                        + " fixed plots.",
        footer = {
            "",
            "Examples:",
            "  quadmean slope --there 18.5 --back -17.5 --instruments same",
            "  quadmean slope --slope 20%% --slope-distance 32m",
            "  quadmean slope --slope 16.7deg --horizontal 66ft",
            "  quadmean slope --slope 45%% --plot 0.1ac",
            "",
            "Two-way check: sight a mark at the height of your own eye on the other's",
            "body, and be sighted back."
        })
final class SlopeCommand extends PocketCommand {
    @Option(
            names = "--there",
            paramLabel = "READING",
            converter = Amount.NumberConverter.class,
            description = "First observer to second, with its sign.")
    private @Nullable Double there;

    @Option(
            names = "--back",
            paramLabel = "READING",
            converter = Amount.NumberConverter.class,
            description = "Second observer to first, with its sign.")
    private @Nullable Double back;

    @Option(
            names = "--scale",
            paramLabel = "SCALE",
            converter = Choices.Scale.class,
            description = "Scale of the two readings: percent (default), topo, deg, m15 or m20.")
    private AngleScale scale = AngleScale.PERCENT;

    @Option(
            names = "--instruments",
            paramLabel = "same|two",
            converter = Choices.Instruments.class,
            description = "Whether both sighted with the same instrument or with two.")
    private @Nullable InstrumentUse instruments;

    @Option(
            names = "--slope",
            paramLabel = "SLOPE",
            converter = Amount.Converter.class,
            description = "The slope, such as 20%% or 11deg, where no two readings are given.")
    private @Nullable Amount slope;

    @Option(
            names = "--slope-distance",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "A length along the slope, to make horizontal.")
    private @Nullable Amount slopeDistance;

    @Option(
            names = "--horizontal",
            paramLabel = "LENGTH",
            converter = Amount.Converter.class,
            description = "A horizontal distance, to lay out along the slope.")
    private @Nullable Amount horizontal;

    @Option(
            names = "--plot",
            paramLabel = "AREA",
            converter = Amount.Converter.class,
            description = "A fixed circular plot, such as 0.1ac or 0.04ha.")
    private @Nullable Amount plot;

    /** Readings beyond this (ratio) are no level ground misread: common practice, no source. */
    private static final double NOT_LEVEL = 0.05;

    @Override
    List<String> answer() {
        List<String> lines = new ArrayList<>();
        Slope found = slope(lines);
        if (slopeDistance != null) {
            double metres = metres(slopeDistance, "--slope-distance");
            Figures figures = new Figures(system(slopeDistance));
            lines.add("Along the slope " + figures.length(metres, 2) + " = horizontal "
                    + figures.length(found.horizontal(metres), 2));
        }
        if (horizontal != null) {
            double metres = metres(horizontal, "--horizontal");
            Figures figures = new Figures(system(horizontal));
            lines.add("Horizontal " + figures.length(metres, 2) + " = along the slope "
                    + figures.length(found.along(metres), 2));
        }
        if (plot != null) {
            lines.addAll(plot(plot, found));
        }
        return lines;
    }

    private Slope slope(List<String> lines) {
        boolean checked = there != null || back != null;
        if (checked == (slope != null)) {
            throw usage("give a slope (--slope 20%) or the two readings of a check (--there and --back), not both");
        }
        if (slope != null) {
            Slope given = slope(slope, "--slope");
            lines.add("Slope " + Figures.slope(given) + ", secant " + Figures.number(given.secant(), 4)
                    + "; a slope distance taken for horizontal is "
                    + Figures.number(100 * given.errorOfIgnoring(), 1) + " % long");
            return given;
        }
        if (there == null || back == null || instruments == null) {
            throw usage("a two-way check needs --there, --back and --instruments same or two");
        }
        TwoWaySlope check = new TwoWaySlope(scale, there, back, instruments);
        lines.addAll(check(check));
        return check.slope();
    }

    private List<String> check(TwoWaySlope check) {
        List<String> lines = new ArrayList<>();
        String error = HeightAdvice.signed(check.indexError(), 2) + " " + scale.id();
        lines.add("Slope " + Figures.slope(check.slope()) + ", secant "
                + Figures.number(check.slope().secant(), 4)
                + switch (check.instruments()) {
                    case SAME_INSTRUMENT -> "; index error of the instrument " + error;
                    case TWO_INSTRUMENTS ->
                        "; mean index error of the two instruments " + error
                                + "; the slope is off by half their difference, which this check cannot show:"
                                + " check again with one instrument";
                });
        boolean sameSign = check.there() * check.back() > 0;
        if (sameSign
                && Math.min(Math.abs(scale.tangent(check.there())), Math.abs(scale.tangent(check.back())))
                        > NOT_LEVEL) {
            lines.add(
                    "! both readings have the same sign: one of them looks up the slope and the other down. Did one lose"
                            + " its minus? Then the slope is "
                            + Figures.slope(
                                    new TwoWaySlope(scale, check.there(), -check.back(), check.instruments()).slope())
                            + ".");
        }
        if (check.isBeyondHalfUnit()) {
            lines.add("! index-error: more than half a unit (common practice, no source): have the instrument"
                    + " adjusted, or take the error off every reading.");
        }
        return lines;
    }

    private List<String> plot(Amount typed, Slope fallLine) {
        FixedPlot fixed = FixedPlot.ofArea(hectares(typed, "--plot"));
        Figures figures = new Figures(system(typed));
        return List.of(
                "Plot " + typed + ": horizontal radius " + figures.length(fixed.radius(), 2) + ". Either, or, never"
                        + " both:",
                "  reduce the distance to each tree to the horizontal by the slope of its own line; along the"
                        + " fall line, and only there, the radius is "
                        + figures.length(fixed.lengthAlongFallLine(fallLine), 2),
                "  or lay one larger circle on the ground, all round "
                        + figures.length(fixed.radiusOnSlope(fallLine), 2));
    }
}
