package quadmean.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quadmean.measure.CommonPractice;
import quadmean.measure.HeightErrors;
import quadmean.measure.HeightFlag;
import quadmean.measure.HorizontalSighting;
import quadmean.measure.OppositeSides;
import quadmean.measure.ReadingCheck;
import quadmean.measure.TreeReadings;
import quadmean.measure.TwoWaySlope;

/** {@code quadmean height}: the height of one tree with its error, as a pocket calculator. */
@Command(
        name = "height",
        description = "The height of one tree from its readings, with its error and what to do better.",
        footer = {
            "",
            "Examples:",
            "  quadmean height --top 72 --base -6 --distance 30m",
            "  quadmean height --scale topo --top 95 --base -8 --distance 66ft",
            "  quadmean height --top 65 --base -22 --slope-distance 32m --ground-slope 20%%",
            "  quadmean height --scale deg --top 35 --base -12 --slope-distance 28m --to-base",
            "  quadmean height --scale deg --top 47 --base -4 --laser 105ft 72ft",
            "  quadmean height --top 72 --base -6 --top 74 --base -6 --distance 30m",
            "  quadmean height --top 72 --base -6 --distance 30m --lean 5deg --verbose",
            "",
            "± is one standard deviation. Both marks above the eye: both readings positive."
        })
final class HeightCommand extends PocketCommand {
    @Mixin
    private HeightOptions options = new HeightOptions();

    @Override
    List<String> answer() {
        SightingBuilder builder = new SightingBuilder(options, this);
        Figures figures = new Figures(system(builder.distances().get(0)));
        TreeReadings tree = builder.readings();
        HeightErrors errors = builder.errors();
        List<String> lines = new ArrayList<>();
        String height = "Height " + figures.withSd(tree.meanHeight(), tree.meanSd(errors));
        lines.add(height + of(tree, figures) + inShort(tree, new HeightAdvice(figures, errors)));
        flags(tree).forEach(flag -> lines.add("! " + flag.code() + ": " + flag.sentence() + detail(flag, tree)));
        lines.addAll(advice(tree, new HeightAdvice(figures, errors)));
        if (options.verbose) {
            tree.sightings().forEach(s -> lines.addAll(HeightSteps.of(s, errors, figures)));
        }
        return lines;
    }

    private List<String> advice(TreeReadings tree, HeightAdvice advice) {
        List<String> lines = new ArrayList<>();
        advice.best(tree).ifPresent(lines::add);
        if (options.indexError != null) {
            lines.add(advice.indexError(tree, options.scale, options.indexError));
        }
        if (options.lean != null) {
            lines.add(advice.lean(tree, SightingBuilder.radians(options.lean, "--lean")));
        }
        lines.add(HeightAdvice.errorsTaken(options));
        return lines;
    }

    /** The advice in the first line: from where to read, and the codes of what is doubtful; the lines below explain. */
    private String inShort(TreeReadings tree, HeightAdvice advice) {
        String codes = flags(tree).stream().map(HeightFlag::code).collect(Collectors.joining(", "));
        return advice.bestInShort(tree).map(b -> "; best read from " + b).orElse("")
                + (codes.isEmpty() ? "; nothing doubtful" : "; doubtful: " + codes);
    }

    private double eye() {
        return options.eye == null ? CommonPractice.EYE_HEIGHT : metres(options.eye, "--eye");
    }

    private String detail(HeightFlag flag, TreeReadings tree) {
        return flag == HeightFlag.GROUND_NOT_LEVEL && tree.sightings().get(0) instanceof HorizontalSighting s
                ? " (here " + Figures.slope(ReadingCheck.groundSlope(s, eye())) + ")."
                : ".";
    }

    private Set<HeightFlag> flags(TreeReadings tree) {
        Set<HeightFlag> flags = EnumSet.noneOf(HeightFlag.class);
        flags.addAll(ReadingCheck.flags(tree, eye()));
        if (options.sides == Choices.Sides.OPPOSITE) {
            flags.remove(HeightFlag.READINGS_DISAGREE);
        }
        if (options.indexError != null && TwoWaySlope.isBeyondHalfUnit(options.indexError)) {
            flags.add(HeightFlag.INDEX_ERROR);
        }
        return flags;
    }

    private String of(TreeReadings tree, Figures figures) {
        int n = tree.sightings().size();
        if (options.sides == Choices.Sides.OPPOSITE) {
            if (n != 2) {
                throw usage("--sides opposite takes two readings: give --top and --base twice");
            }
            OppositeSides sides =
                    new OppositeSides(tree.sightings().get(0), tree.sightings().get(1));
            return ", mean of opposite sides, which still is " + figures.off(sides.errorLeft()) + "; the tip"
                    + " stands " + figures.length(Math.abs(sides.tipOffset()), 1) + " beside the base";
        }
        return n == 1 ? "" : ", mean of " + n + " readings, spread " + figures.length(tree.spread(), 2);
    }
}
