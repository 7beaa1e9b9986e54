package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.chart.Wording;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.Explain;
import quadmean.cruise.ExplainRequest;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.estimate.Worksheet;
import quadmean.support.ShippedCruises;
import quadmean.support.SmallDesign;
import quadmean.units.Attribute;
import quadmean.units.Basis;

class ExplainTextTest {
    private static final List<String> DESIGNS = designs();
    private static final Pattern PLOT_VALUE =
            Pattern.compile("  plot ([^,]+), (?:value|sum of its trees): ([-0-9.]+) .*");

    /** Sums of printed numbers differ from what is printed by rounding only. */
    private static final double ROUNDING = 1e-11;

    /** All shipped designs that can be estimated. */
    private static List<String> designs() {
        try (Stream<Path> files = Files.list(Path.of("designs"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".toml")
                            && !f.startsWith("simulate-")
                            && !List.of(
                                            "demo-mistakes.toml",
                                            "estate.toml",
                                            "pilot-plan.toml",
                                            "plan-kinds.toml",
                                            "plan-strata.toml")
                                    .contains(f))
                    .map(f -> f.substring(0, f.length() - ".toml".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> explain(CruiseRun run, String number) {
        CruiseResult result = Objects.requireNonNull(run.result());
        Worksheet sheet = Objects.requireNonNull(run.worksheet());
        return ExplainText.of(result, Explain.of(result, sheet, ExplainRequest.parse(number, result, sheet)));
    }

    static Stream<Arguments> numbers() {
        List<Arguments> all = new ArrayList<>();
        for (String name : DESIGNS) {
            Worksheet sheet = Objects.requireNonNull(ShippedCruises.run(name).worksheet());
            for (Attribute a : sheet.settings().attributes()) {
                all.add(Arguments.of(name, a));
            }
            all.add(Arguments.of(name, Attribute.QUADRATIC_MEAN_DIAMETER));
        }
        return all.stream();
    }

    /** The text ends in the very number of the file, and every line of arithmetic holds when worked out from what is printed. */
    @ParameterizedTest
    @MethodSource("numbers")
    void totalsEndInTheNumberOfTheFile(String name, Attribute attribute) {
        CruiseRun run = ShippedCruises.run(name);
        List<String> lines = explain(run, "total:" + attribute.id());
        Basis basis = attribute == Attribute.QUADRATIC_MEAN_DIAMETER ? Basis.RATIO : Basis.TOTAL;
        if (Double.isNaN(json(run, attribute, basis))) {
            assertTrue(lines.get(lines.size() - 1).contains("= not known ("), "the reason is said");
            return;
        }
        assertEquals(json(run, attribute, basis), last(lines));
        assertTrue(checked(lines) >= 4, "lines of arithmetic");
        if (basis == Basis.TOTAL) {
            String mean = lines.stream()
                    .filter(l ->
                            l.startsWith("  in all, mean = ") || l.startsWith("  mean = ") || l.startsWith("  mean: "))
                    .reduce((a, b) -> b)
                    .orElseThrow();
            double perArea = json(run, attribute, Basis.PER_AREA);
            assertEquals(perArea, number(mean), ROUNDING * Math.abs(perArea), "the steps end in the mean");
        }
    }

    /** Trees add up to their plot, and the plot is the one that the total starts from. */
    @ParameterizedTest
    @MethodSource("numbers")
    void plotsAddUpAndAreThoseOfTheTotal(String name, Attribute attribute) {
        if (attribute == Attribute.QUADRATIC_MEAN_DIAMETER) {
            return;
        }
        CruiseRun run = ShippedCruises.run(name);
        if (Double.isNaN(json(run, attribute, Basis.TOTAL))) {
            return;
        }
        int found = 0;
        for (String line : explain(run, "total:" + attribute.id())) {
            Matcher m = PLOT_VALUE.matcher(line);
            if (m.matches() && found < 8) {
                List<String> lines = explain(run, "plot:" + m.group(1) + ":" + attribute.id());
                assertEquals(Double.parseDouble(m.group(2)), last(lines), ROUNDING * Math.abs(last(lines)));
                checked(lines);
                found++;
            }
        }
        assertTrue(found >= Math.min(8, run.worksheet().plots().size()), found + " plots");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tree:6-2", "plot:17:PSME", "total:PSME:N", "total:C:board_feet", "plot:3:LAOC:value"})
    void partsAreExplainedToo(String number) {
        assertTrue(checked(explain(ShippedCruises.run("demo"), number)) > 0);
    }

    /** Species add up to the plot. */
    @Test
    void speciesAddUp() {
        double sum = Stream.of("PSME", "LAOC", "ABGR", "PICO")
                .mapToDouble(s -> last(explain(ShippedCruises.run("demo"), "plot:17:" + s)))
                .sum();
        double plot = last(explain(ShippedCruises.run("demo"), "plot:17"));
        assertEquals(plot, sum, ROUNDING * plot);
    }

    /**
     * By hand: V = D²·H/32000, 20 cm and 16 m give 6400/32000 = 0.2 m³, on 0.1 ha 2 m³/ha; 40 cm and 20 m give 1 m³ and 10 m³/ha. Mean 6,
     * s² = (4² + 4²)/1 = 32, 32/2 = 16, standard error 4; t for 95 % on 1 degree of freedom is tan(0.475·π) = 12.706...; 10 ha make
     * 60 m³.
     */
    @Test
    void aDesignWorkedByHand(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("tally.csv"), "plot,tree,species,dbh,height\n1,1,PSME,20,16\n2,1,PSME,40,20\n");
        Design design = new SmallDesign().plus("""
                        [volume."*"]
                        form = "combined_variable"
                        a = 0
                        b = 0.00003125
                        dbh_unit = "cm"
                        height_unit = "m"
                        volume_unit = "m3"
                        source = "by hand"
                        standing = "invented"
                        """).valid(folder);
        CruiseRun run = Cruise.run(design);
        assertEquals("""
                Plot 1, stratum stand, whole stand: volume, all species
                Tree 1-1, tally.csv line 2: PSME, Douglas-fir, dbh 20 cm
                  height, measured (column height: 16): 16 m
                  equation: V = a + b·D²·H with a 0, b 0.00003125, D 20 cm, H 16 m; by hand (invented)
                  equation gives V 0.2 m³
                  volume of one tree: 0.2 m³
                  stands for: 1 / 0.1 = 10 trees/ha
                  adds, by 1 tree: 10 × 1 × 0.2 = 2 m³/ha
                Together
                  sum: 2 = 2 m³/ha
                plot 1, volume, all species = 2 m³/ha
                """, String.join("\n", explain(run, "plot:1")) + "\n");
        List<String> total = explain(run, "total");
        for (String line : List.of(
                "  plot 1, value: 2 m³/ha",
                "  plot 2, value: 10 m³/ha",
                "  mean: 12 / 2 = 6 m³/ha",
                "  standard error: √(16) = 4 m³/ha",
                "  degrees of freedom, plots less strata: 2 - 1 = 1",
                "  estimate: 10 × 6 = 60 m³",
                "volume, total = 60 m³")) {
            assertTrue(
                    total.stream().anyMatch(l -> l.replaceAll(" \\(about.*", "").equals(line)),
                    line + " is not in\n" + String.join("\n", total));
        }
        assertEquals(
                32,
                Double.parseDouble(after(total, "  variance between plots, sum of (value - mean)² over 1: ")),
                1e-12);
        assertEquals("16", after(total, "  variance of the mean: ").replaceAll(".* = ", ""));
        String t = total.stream()
                .filter(l -> l.contains("Student's t"))
                .findFirst()
                .orElseThrow();
        assertEquals(Math.tan(0.475 * Math.PI), Double.parseDouble(t.substring(t.lastIndexOf(' '))), 1e-9);
    }

    /** The rule of the limits is said in words, and its arithmetic holds where it has any. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "simple-random | log | on the log scale | t × SE / estimate",
                "ratio | log | on the log scale | t × SE / estimate",
                "simple-random | percentile | by the bootstrap, percentiles of | they come from resamples",
                "simple-random | bca | corrected for bias and skewness | they come from resamples",
                "cluster | bca | corrected for bias and skewness | they come from resamples",
                "unequal-probability | bca | corrected for bias and skewness | they come from resamples"
            })
    void limitsByOtherRules(String name, String interval, String words, String more, @TempDir Path folder)
            throws IOException {
        String text = Files.readString(Path.of("designs", name + ".toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        String key = "interval = \"" + interval + "\"\n" + (interval.equals("log") ? "" : "replicates = 1000\n");
        Path file = folder.resolve("design.toml");
        Files.writeString(
                file,
                text.contains("[estimate]\n")
                        ? text.replace("[estimate]\n", "[estimate]\n" + key)
                        : text + "\n[estimate]\n" + key);
        var reading = DesignReader.read(file);
        assertTrue(reading.design() != null, () -> reading.problems().toString());
        CruiseRun run = Cruise.run(Objects.requireNonNull(reading.design()));
        List<String> lines = explain(run, "total:basal_area");
        String all = String.join("\n", lines);
        assertTrue(all.contains(words), all);
        assertTrue(all.contains(more), all);
        assertEquals(json(run, Attribute.BASAL_AREA, Basis.TOTAL), last(lines));
        assertTrue(checked(lines) >= 4);
    }

    private static String after(List<String> lines, String start) {
        return lines.stream()
                .filter(l -> l.startsWith(start))
                .map(l -> l.substring(start.length()))
                .findFirst()
                .orElseThrow();
    }

    private static double last(List<String> lines) {
        return number(lines.get(lines.size() - 1));
    }

    private static double number(String line) {
        return Double.parseDouble(
                line.substring(line.lastIndexOf('=') + 1).strip().split(" ")[0]);
    }

    private static int checked(List<String> lines) {
        int checked = 0;
        for (String line : lines) {
            Optional<Sums.Check> check = Sums.of(line);
            if (check.isPresent()) {
                Sums.Check c = check.get();
                assertEquals(c.value(), c.stated(), ROUNDING * c.size(), line);
                checked++;
            }
        }
        return checked;
    }

    private static double json(CruiseRun run, Attribute attribute, Basis basis) {
        CruiseResult result = Objects.requireNonNull(run.result());
        for (JsonNode row : EstimateJson.tree(result).get("estimates")) {
            boolean isWhole = Stream.of("stratum", "species", "product", "log")
                    .allMatch(k -> row.get(k).asText().equals("*"));
            boolean isIt = row.get("attribute").asText().equals(attribute.id())
                    && row.get("basis").asText().equals(basis.id())
                    && row.get("unit")
                            .asText()
                            .equals(Wording.unitSymbol(
                                    result.design(),
                                    attribute,
                                    basis,
                                    result.design().units()));
            if (isWhole && isIt) {
                return row.get("mean").asDouble(Double.NaN);
            }
        }
        throw new AssertionError("no " + attribute);
    }
}
