package quadmean.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code quadmean demo}: the whole job on an invented stand, in a folder of the user's choosing. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Shows the whole job in one go on an invented stand: puts a design and a tally into a folder, then"
                        + " plans, checks, fits curves and estimates.",
        footer = {"", "Replaces nothing that is there already. Examples:", "  quadmean demo", "  quadmean demo try-it"})
final class DemoCommand implements Callable<Integer> {
    private static final String DESIGN = "designs/demo.toml";
    private static final List<String> FILES =
            List.of(DESIGN, "datasets/demo-tally.csv", "datasets/demo-check.csv", "datasets/demo-tract.geojson");

    /** Commands in the order of the job, each with what it is for. */
    private static final Map<String, String> STEPS = steps();

    @Parameters(
            paramLabel = "DIR",
            arity = "0..1",
            defaultValue = "quadmean-demo",
            description = "The folder, made if it is not there. Default: ${DEFAULT-VALUE}.")
    private Path folder;

    @Mixin
    private Talk talk;

    private static Map<String, String> steps() {
        Map<String, String> steps = new LinkedHashMap<>();
        steps.put("plan", "Before the field: how many plots does the target take?");
        steps.put("check", "The tally is in: what is wrong with it?");
        steps.put("curves", "Heights were measured on some trees: which curve fills the others?");
        steps.put("estimate", "What stands there, and how sure is it?");
        return steps;
    }

    @Override
    public Integer call() {
        try {
            return answer();
        } catch (CommandException e) {
            throw talk.fail(e);
        }
    }

    private int answer() {
        Map<String, String> files = new LinkedHashMap<>();
        FILES.forEach(f -> files.put(f, "/quadmean/demo/" + f));
        Packaged.copy(folder, files);
        talk.written(FILES.stream().map(folder::resolve).toList());
        PrintWriter out = talk.out();
        Path design = folder.resolve(DESIGN);
        Path results = folder.resolve("out");
        for (Map.Entry<String, String> step : STEPS.entrySet()) {
            out.println(step.getValue());
            out.println("  quadmean " + step.getKey() + " " + design + " --out " + results);
            int code = Main.run(out, talk.err(), words(step.getKey(), design, results));
            if (code != ExitCode.DONE.code()) {
                return code;
            }
            out.println();
        }
        talk.next("open " + results.resolve("report.html") + ", change a line of " + design
                + " and run a step again; for a cruise of your own: quadmean start DIR");
        return talk.end(ExitCode.DONE);
    }

    private String[] words(String command, Path design, Path results) {
        List<String> words = new ArrayList<>(List.of(command, design.toString(), "--out", results.toString()));
        if (!talk.isInSentences()) {
            words.add("--quiet");
        }
        return words.toArray(String[]::new);
    }
}
