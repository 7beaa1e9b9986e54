package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import quadmean.field.ForestReader;
import quadmean.model.ForestData;
import quadmean.simulate.ForestRules;
import quadmean.simulate.ForestRules.Pattern;
import quadmean.simulate.Window;

/** How the forest of {@code simulate} is made where its file leaves something open. */
final class ForestOptions {
    @Option(
            names = "--window",
            paramLabel = "W,S,E,N",
            converter = Window4.class,
            description = "Ground of a map of trees: its sides west, south, east and north, in metres. Default: the box"
                    + " around the trees.")
    private @Nullable Window window;

    @Option(
            names = "--heights",
            paramLabel = "FILE",
            description = "Table of heights (dbh, height, and species if they differ) for trees that have none.")
    private @Nullable Path heights;

    @Option(
            names = "--height-scatter",
            paramLabel = "PERCENT",
            description = "How far made-up heights scatter about the table. Default: 0.")
    private double heightScatter;

    @Option(
            names = "--pattern",
            paramLabel = "random|clustered|regular",
            converter = Patterns.class,
            description = "How trees made up from a stand table stand. Default: random.")
    private Pattern pattern = Pattern.RANDOM;

    @Option(
            names = "--clump",
            paramLabel = "TREES",
            description = "Mean number of trees of a clump, for --pattern clustered. Default: 10.")
    private double clump = ForestRules.USUAL.treesPerClump();

    @Option(
            names = "--clump-radius",
            paramLabel = "METRES",
            description = "How far trees stand from the middle of their clump (standard deviation). Default: 5.")
    private double clumpRadius = ForestRules.USUAL.clumpM();

    @Option(
            names = "--forest-seed",
            paramLabel = "SEED",
            description = "Seed of a made-up forest and of made-up heights. Default: 1.")
    private long seed = ForestRules.USUAL.seed();

    ForestRules rules() {
        check("--height-scatter", heightScatter, "0", "100");
        check("--clump", clump, "1", "10000");
        check("--clump-radius", clumpRadius, "0.01", "10000");
        return new ForestRules(pattern, clump, clumpRadius, heightScatter, seed, Optional.ofNullable(window));
    }

    private static void check(String option, double value, String least, String most) {
        if (!(value >= Double.parseDouble(least) && value <= Double.parseDouble(most))) {
            throw new CommandException(
                    ExitCode.USAGE,
                    String.format(Locale.ROOT, "%s takes a number from %s to %s, not %s", option, least, most, value));
        }
    }

    /** The table of heights, if one is named. */
    Optional<ForestData> heights() throws IOException {
        if (heights == null) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(heights)) {
            throw new CommandException(ExitCode.USAGE, "there is no file " + heights);
        }
        return Optional.of(ForestReader.read(heights));
    }

    /** Words for patterns. */
    static final class Patterns implements ITypeConverter<Pattern> {
        @Override
        public Pattern convert(String value) {
            return Arrays.stream(Pattern.values())
                    .filter(p -> p.id().equals(value))
                    .findFirst()
                    .orElseThrow(
                            () -> new TypeConversionException("\"" + value + "\" is not random, clustered or regular"));
        }
    }

    /** Four numbers with commas between them. */
    static final class Window4 implements ITypeConverter<Window> {
        @Override
        public Window convert(String value) {
            try {
                double[] sides = Arrays.stream(value.split(",", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
                return Window.of(sides);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(
                        "\"" + value + "\" is no window: write west,south,east,north in metres, such as 0,0,200,200");
            }
        }
    }
}
