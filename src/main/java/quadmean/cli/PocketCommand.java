package quadmean.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import quadmean.measure.Slope;
import quadmean.units.AngleScale;
import quadmean.units.Quantity;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** What the pocket calculators share: amounts with units, errors of usage, the cautions of the field. */
@Command(mixinStandardHelpOptions = true, sortOptions = false)
abstract class PocketCommand implements Callable<Integer> {
    private static final String CARE = "Care: look up for dead tops and hung limbs before you stand under a tree; no"
            + " measuring in high wind; never walk backward while sighting; mind steep and loose ground; do not work"
            + " alone. Local safety codes hold.";

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            converter = Choices.Units.class,
            description = "Unit system of numbers without a unit, and of the answer's first figure.")
    private @Nullable UnitSystem units;

    @Spec
    private CommandSpec spec;

    /** The lines of the answer, with {@link IllegalArgumentException} for input that has none. */
    abstract List<String> answer();

    @Override
    public final Integer call() {
        List<String> lines;
        try {
            lines = answer();
        } catch (IllegalArgumentException e) {
            throw usage(e.getMessage() + "; examples: quadmean " + spec.name() + " --help");
        }
        PrintWriter out = spec.commandLine().getOut();
        lines.forEach(out::println);
        out.println(CARE);
        return ExitCode.DONE.code();
    }

    static CommandException usage(String message) {
        return new CommandException(ExitCode.USAGE, message);
    }

    /** The system asked for, or else that of an amount. */
    final UnitSystem system(Amount typed) {
        if (units != null) {
            return units;
        }
        return switch (typed.unit()) {
            case "ft", "in", "chain", "ac", "ft2/ac" -> UnitSystem.US;
            default -> UnitSystem.METRIC;
        };
    }

    /** The system asked for, for what has no amount to show it. */
    final UnitSystem system(String why) {
        if (units == null) {
            throw usage(why + " add --units us or --units metric");
        }
        return units;
    }

    final double metres(Amount typed, String option) {
        return inUnit(typed, option, Quantity.LENGTH, Unit.METRE, "20m or 66ft");
    }

    final double dbhCm(Amount typed, String option) {
        return inUnit(typed, option, Quantity.LENGTH, Unit.CENTIMETRE, "14in or 30cm");
    }

    final double hectares(Amount typed, String option) {
        return inUnit(typed, option, Quantity.GROUND_AREA, Unit.HECTARE, "0.1ac or 0.04ha");
    }

    final double factor(Amount typed, String option) {
        return inUnit(typed, option, Quantity.STEM_AREA_PER_AREA, Unit.SQUARE_METRES_PER_HECTARE, "20ft2/ac or 4m2/ha");
    }

    /** A slope: percent or degrees, never a bare number. */
    static Slope slope(Amount typed, String option) {
        return switch (typed.unit()) {
            case "%" -> Slope.of(AngleScale.PERCENT, typed.value());
            case "deg", "°" -> Slope.of(AngleScale.DEGREES, typed.value());
            default -> throw usage(option + " " + typed + " is no slope: write 20% or 11deg");
        };
    }

    private double inUnit(Amount typed, String option, Quantity quantity, Unit to, String example) {
        Unit unit = typed.unit().isEmpty()
                ? customary(to, system(option + " " + typed + " lacks a unit: write it like " + example + ", or"))
                : Unit.parse(quantity, typed.unit())
                        .orElseThrow(
                                () -> usage(option + " " + typed + " has a unit that does not fit: write " + example));
        return unit.convert(typed.value(), to);
    }

    private static Unit customary(Unit inside, UnitSystem system) {
        return switch (inside) {
            case CENTIMETRE -> system.diameter();
            case HECTARE -> system.area();
            case SQUARE_METRES_PER_HECTARE -> system.basalAreaFactor();
            default -> system.length();
        };
    }
}
