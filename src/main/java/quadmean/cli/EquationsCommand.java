package quadmean.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quadmean.design.EquationLibrary;

/** {@code quadmean equations}: the library of published tree equations. */
@Command(
        name = "equations",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Lists the tree equations that travel with the program: species, region, form, units, sizes, source,"
                        + " and whether anybody checked them.",
        footer = {
            "",
            "Each line can be pasted into a design under [volume.CODE], or where the",
            "heading says so under [board_feet.CODE] or [biomass.CODE]. Examples:",
            "  quadmean equations",
            "  quadmean equations douglas-fir",
            "  quadmean equations british columbia hemlock",
            "  quadmean equations verified"
        })
final class EquationsCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..*",
            paramLabel = "TEXT",
            description = "Words, all of which stand in name, species, region, source or standing, in any case.")
    private List<String> words = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        EquationLibrary library = EquationLibrary.shipped();
        String text = String.join(" ", words);
        List<EquationLibrary.Entry> found = library.search(text);
        EquationList.of(found).forEach(out::println);
        int all = library.entries().size();
        out.println(
                found.isEmpty()
                        ? "No equation has \"" + text + "\". quadmean equations lists all " + all + "."
                        : found.size() + " of " + all + " equations. From memory means that nobody looked the"
                                + " coefficients up: check them against the source before you rely on them.");
        if (!found.isEmpty()) {
            out.println("Next: put a line under [volume.CODE] of a design, then quadmean check DESIGN");
        }
        return ExitCode.DONE.code();
    }
}
