package quadmean.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import quadmean.model.CubicRule;
import quadmean.units.Quantity;
import quadmean.units.Unit;
import quadmean.volume.SectionSettings;
import quadmean.volume.Solid;

/** How volumes are summed from points of stems. */
final class SectionOptions {
    @Option(
            names = "--rule",
            paramLabel = "smalian|huber|newton",
            converter = Choices.CubicRules.class,
            description = "Formula of the sections; huber and newton serve pairs of equal sections, smalian the rest."
                    + " Default: smalian.")
    private @Nullable CubicRule rule;

    @Option(
            names = "--stump",
            paramLabel = "HEIGHT",
            converter = Amount.Converter.class,
            description = "Height of the stump, such as 1ft or 0.3m. Default: the lowest point of each stem.")
    private @Nullable Amount stump;

    @Option(
            names = "--top",
            paramLabel = "DIAMETER",
            converter = Amount.Converter.class,
            description =
                    "Diameter that volumes end at, such as 4in or 10cm; inside bark with --bark. Default: the tip.")
    private @Nullable Amount top;

    @Option(
            names = "--tip",
            paramLabel = "cone|paraboloid|neiloid",
            converter = Choices.Tips.class,
            description = "Solid above the highest point. Default: cone (common practice, no source).")
    private @Nullable Solid tip;

    /** Refuses options that have nothing to work on. */
    void checkUnused() {
        if (rule != null || stump != null || top != null || tip != null) {
            throw new CommandException(
                    ExitCode.USAGE,
                    "--rule, --stump, --top and --tip need points of stems: add --at and --diameter; see quadmean"
                            + " fit-volume --help");
        }
    }

    SectionSettings settings() {
        return new SectionSettings(
                rule == null ? CubicRule.SMALIAN : rule,
                stump == null ? Double.NaN : length(stump, "--stump", Unit.METRE, "1ft or 0.3m"),
                top == null ? 0 : length(top, "--top", Unit.CENTIMETRE, "4in or 10cm"),
                tip == null ? Solid.CONE : tip);
    }

    private static double length(Amount typed, String option, Unit to, String example) {
        return Unit.parse(Quantity.LENGTH, typed.unit())
                .map(unit -> unit.convert(typed.value(), to))
                .filter(value -> value >= 0)
                .orElseThrow(() -> new CommandException(
                        ExitCode.USAGE, option + " " + typed + " is no length: write it like " + example));
    }
}
