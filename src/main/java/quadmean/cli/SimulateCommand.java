package quadmean.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.field.ForestReader;
import quadmean.model.ForestData;
import quadmean.model.IntervalRule;
import quadmean.model.Problem;
import quadmean.report.SimulationOutputs;
import quadmean.report.SimulationSummary;
import quadmean.simulate.Forest;
import quadmean.simulate.ForestMaker;
import quadmean.simulate.SimulationStudy;
import quadmean.simulate.SimulationStudy.Trial;
import quadmean.simulate.Simulator;

/** {@code quadmean simulate}: many cruises of a known forest. */
@Command(
        name = "simulate",
        description =
                "Cruises a forest in which every tree is known, thousands of times by the design, and tells what its"
                        + " estimates and limits are worth.",
        footer = {
            "",
            "FOREST is a CSV file: a map of trees (columns such as x_m, y_m, dbh_cm, and if",
            "known species and height_m), or a stand table (dbh_cm, trees_per_ha, species,",
            "height_m, stratum) from which a forest is made up on the design's own tract.",
            "Writes simulate.html, simulate.json and simulate.csv. Examples:",
            "  quadmean simulate designs/simulate-points.toml --cruises 500 \\",
            "      --forest datasets/longleaf-map.csv",
            "  quadmean simulate designs/simulate-points.toml --cruises 500 \\",
            "      --forest datasets/longleaf-map.csv --beside designs/simulate-plots.toml",
            "  quadmean simulate designs/simulate-points.toml --cruises 500 \\",
            "      --forest datasets/forests/uneven-aged.csv --pattern clustered",
            "designs/simulate-volume.toml tries a stand that exists as a table alone."
        })
final class SimulateCommand extends DesignCommand {
    private static final int MOST_DESIGNS = 6;
    private static final double LONG_WAIT_SECONDS = 120;
    private static final int FEW_CRUISES = 500;

    @Option(
            names = {"-f", "--forest"},
            paramLabel = "FOREST",
            required = true,
            description = "Map of trees or stand table.")
    private Path forestFile;

    @Option(
            names = "--cruises",
            paramLabel = "N",
            description = "Number of cruises, 100 to 10,000,000. Default: ${DEFAULT-VALUE}.",
            defaultValue = "10000")
    private long cruises;

    @Option(
            names = "--beside",
            paramLabel = "DESIGN",
            description = "Another design to compare with, with as many plots as take the same time; up to five.")
    private List<Path> others = List.of();

    @Option(
            names = "--bootstrap",
            description =
                    "Try bootstrap limits too; takes long. Without it they are tried if the design asks for them.")
    private boolean bootstrap;

    @Mixin
    private ForestOptions options;

    @Override
    boolean readsTally(Design design) {
        return false;
    }

    @Override
    ExitCode run(Design design) throws IOException {
        checkOptions();
        List<Path> inputs = new ArrayList<>(inputs(design));
        inputs.add(forestFile);
        ForestData data = ForestReader.read(forestFile);
        List<Problem> problems = new ArrayList<>(data.problems());
        Optional<ForestData> heights = options.heights();
        heights.ifPresent(h -> problems.addAll(h.problems()));
        if (!problems.isEmpty()) {
            return refuse(problems, inputs);
        }
        try {
            return simulate(design, data, heights, inputs);
        } catch (IllegalArgumentException e) {
            throw unusable(design, e);
        }
    }

    private ExitCode simulate(Design design, ForestData data, Optional<ForestData> heights, List<Path> inputs)
            throws IOException {
        ForestMaker.Making making = ForestMaker.make(design, data, heights, options.rules());
        Forest forest = making.forest();
        if (forest == null) {
            return refuse(making.problems(), inputs);
        }
        sayWhatIsLeftOut(data, forest);
        List<Trial> trials = new ArrayList<>(List.of(new Trial(design, forest)));
        Set<IntervalRule> rules = EnumSet.of(IntervalRule.STUDENT_T, IntervalRule.LOG_SCALE);
        rules.add(design.estimation().interval());
        if (bootstrap) {
            rules.addAll(EnumSet.of(IntervalRule.PERCENTILE, IntervalRule.BCA));
        }
        for (Path other : others) {
            DesignReading reading = DesignReader.read(other);
            Design read = reading.design();
            if (read == null) {
                return refuse(reading.problems(), inputs);
            }
            checkNoEstate(read);
            inputs.addAll(inputs(read));
            ForestMaker.Making own = again(read, forest);
            if (own.forest() == null) {
                return refuse(own.problems(), inputs);
            }
            trials.add(new Trial(read, own.forest()));
        }
        List<Problem> problems =
                trials.stream().flatMap(t -> problems(t).stream()).distinct().toList();
        if (!problems.isEmpty()) {
            return refuse(problems, inputs);
        }
        if (cruises > FEW_CRUISES) {
            sayHowLong(trials, rules);
        }
        SimulationStudy study =
                SimulationStudy.of(trials, new SimulationStudy.Rules(cruises, design.seed(), rules), talk().progress());
        List<Path> written = write(SimulationOutputs.of(study), inputs);
        SimulationSummary.of(study).forEach(out()::println);
        talk().tell(s -> s.simulation(study));
        out().println("Report: " + written.get(0));
        talk().next("open " + written.get(0) + "; --beside tries another design for the same time");
        return ExitCode.DONE;
    }

    private static ForestMaker.Making again(Design design, Forest forest) throws IOException {
        try {
            return ForestMaker.again(design, forest);
        } catch (IllegalArgumentException e) {
            throw unusable(design, e);
        }
    }

    private static List<Problem> problems(Trial trial) {
        try {
            return Simulator.of(trial.design(), trial.forest(), 1).problems();
        } catch (IllegalArgumentException e) {
            throw unusable(trial.design(), e);
        }
    }

    /** Of several designs the one that is meant. */
    private static CommandException unusable(Design design, IllegalArgumentException e) {
        return new CommandException(ExitCode.USAGE, design.file().getFileName() + ": " + e.getMessage());
    }

    /** Trees that are left out are named where nobody needs to open the page. */
    private void sayWhatIsLeftOut(ForestData data, Forest forest) {
        int left = data.trees().size() - forest.trees().size();
        if (data.kind() == ForestData.Kind.MAP && left > 0) {
            talk().notes()
                    .println(left + " of " + data.trees().size()
                            + " trees of the map stand outside of the tract and are left out.");
        }
    }

    /** A warning before a long wait; fitting every form of curve anew in each cruise is what takes most. */
    private void sayHowLong(List<Trial> trials, Set<IntervalRule> rules) {
        double seconds = trials.stream()
                .mapToDouble(t -> Simulator.of(t.design(), t.forest(), 1).seconds(cruises, rules))
                .sum();
        if (seconds > LONG_WAIT_SECONDS) {
            talk().notes()
                    .printf(
                            Locale.ROOT,
                            "This will take about %.0f minutes. Fewer --cruises take less, and so does a form of height curve"
                                    + " named under [species.CODE]: without one every form is fitted anew each time.%n",
                            Math.ceil(seconds / 60));
            talk().notes().flush();
        }
    }

    private void checkOptions() {
        if (cruises < 100 || cruises > 10_000_000) {
            throw new CommandException(ExitCode.USAGE, "--cruises takes a number from 100 to 10000000, not " + cruises);
        }
        if (others.size() >= MOST_DESIGNS) {
            throw new CommandException(ExitCode.USAGE, "--beside takes five designs at the most");
        }
        List<@Nullable Path> files = new ArrayList<>(others);
        files.add(forestFile);
        for (Path file : files) {
            if (!Files.isRegularFile(file)) {
                throw new CommandException(ExitCode.USAGE, "there is no file " + file);
            }
        }
    }
}
