package quadmean.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program {@code quadmean}. */
@Command(
        name = "quadmean",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            PlanCommand.class,
            CheckCommand.class,
            CurvesCommand.class,
            EstimateCommand.class,
            SimulateCommand.class,
            ProgressCommand.class,
            AuditCommand.class,
            GrowthCommand.class,
            CombineCommand.class,
            HeightCommand.class,
            SlopeCommand.class,
            BorderlineCommand.class,
            CalibrateCommand.class,
            EquationsCommand.class,
            FitVolumeCommand.class,
            StartCommand.class,
            DemoCommand.class,
            LicencesCommand.class,
            CompletionCommand.class
        },
        sortOptions = false,
        description = "Plans a timber cruise, turns field readings into heights, fills the heights nobody measured,"
                + " and reports what stands on the ground with its sampling error.",
        footer = {
            "",
            "Examples:",
            "  quadmean demo                          # the whole job on an invented stand",
            "  quadmean start north-forty             # a folder for a cruise of your own",
            "  quadmean plan designs/demo.toml        # how many plots the target takes",
            "  quadmean check designs/demo.toml       # what is wrong with the tally",
            "  quadmean curves designs/demo.toml      # which height curves fit",
            "  quadmean estimate designs/demo.toml    # the report, out/demo/report.html",
            "  quadmean simulate --help               # try a design in a known forest",
            "  quadmean progress designs/demo-progress.toml  # under way: may it stop?",
            "  quadmean audit designs/demo.toml       # a checker's tally of some plots",
            "  quadmean growth designs/demo-growth.toml  # plots at two dates",
            "  quadmean combine designs/stands.csv    # many stands together",
            "  quadmean fit-volume --help             # a volume equation from felled trees",
            "  quadmean height --help                 # also slope, borderline, calibrate",
            "  quadmean equations douglas-fir         # published equations for a design",
            "  quadmean licences                      # whose work is in the program",
            "",
            "Exit codes: 0 done; 1 input refused, problems listed; 2 wrong usage or a named",
            "file is missing; 70 a defect in the program; 74 the results cannot be written.",
            "",
            "An estimate is no appraisal and no scale."
        })
public final class Main implements Runnable {
    @Option(
            names = "--color",
            paramLabel = "WHEN",
            scope = ScopeType.INHERIT,
            description = "Colour of help: auto, never or always. Default: auto, on a terminal unless NO_COLOR is set.")
    @SuppressWarnings("UnusedVariable") // Color.askedFor looks at it before the arguments are read
    private Color color = Color.AUTO;

    @Spec
    private CommandSpec spec;

    private Main() {}

    /** Runs the program and exits with its code. */
    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, args);
        if (code != ExitCode.DONE.code()) {
            System.exit(code);
        }
    }

    /**
     * Runs the program without exiting.
     *
     * @param out takes what the user asked for
     * @param err takes problems and progress
     * @return exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        try {
            return new CommandLine(new Main())
                    .setCaseInsensitiveEnumValuesAllowed(true)
                    .setColorScheme(CommandLine.Help.defaultColorScheme(
                            Color.askedFor(args).ansi()))
                    .setOut(out)
                    .setErr(err)
                    .setExecutionExceptionHandler((e, command, result) -> explain(e, err))
                    .execute(args);
        } catch (OutOfMemoryError | StackOverflowError e) {
            err.println("quadmean: the input is too large for the memory of the program ("
                    + e.getClass().getSimpleName() + "); split it, or give Java more memory with -Xmx");
            return ExitCode.DEFECT.code();
        } catch (Error e) {
            return explain(e, err);
        }
    }

    private static int explain(Throwable e, PrintWriter err) {
        if (e instanceof CommandException c) {
            err.println("quadmean: " + c.getMessage());
            return c.exitCode().code();
        }
        err.println("quadmean: a defect in the program, not in your data: " + e);
        StackTraceElement[] trace = e.getStackTrace();
        if (trace.length > 0) {
            err.println("Please report this line with the design and the tally: " + trace[0]);
        }
        return ExitCode.DEFECT.code();
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "name a command: plan, check, curves, estimate, simulate, progress, audit, growth, combine, height, slope, borderline, calibrate, equations, fit-volume, start, demo, licences or completion");
    }
}
