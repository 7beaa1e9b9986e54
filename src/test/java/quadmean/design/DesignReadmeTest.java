package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.BiomassSpec;
import quadmean.model.Estimator;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.VarianceForm;
import quadmean.model.VolumeForm;
import quadmean.support.SmallDesign;

/** {@code designs/README.md} names what the reader knows, and nothing else. */
class DesignReadmeTest {
    private static final Pattern KNOWN = Pattern.compile("known here: (.*) \\(line");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    @TempDir
    Path folder;

    /** Sections of the README, from their heading to the next. */
    private static Map<String, String> sections() throws IOException {
        Map<String, String> sections = new LinkedHashMap<>();
        for (String part : Files.readString(Path.of("designs/README.md")).split("\n### ")) {
            sections.put(part.lines().findFirst().orElse(""), part);
        }
        return sections;
    }

    private static String section(String table) throws IOException {
        List<String> found = sections().entrySet().stream()
                .filter(e -> e.getKey().contains("`" + table + "`"))
                .map(Map.Entry::getValue)
                .toList();
        assertEquals(1, found.size(), "sections on " + table);
        return found.get(0);
    }

    /** The codes in the first cells of a section's tables. */
    private static TreeSet<String> documented(String section) {
        return section.lines()
                .filter(l -> l.startsWith("| `"))
                .map(l -> l.split("\\|")[1])
                .flatMap(cell -> CODE.matcher(cell).results().map(m -> m.group(1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Keys that the reader lists when a section has one that resembles none. */
    private TreeSet<String> known(String design) {
        List<Problem> problems = new SmallDesign(design).problems(folder);
        Problem unknown = problems.stream()
                .filter(p -> p.value().equals("qqqqqqqqqqqq"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(problems.toString()));
        Matcher known = KNOWN.matcher(unknown.detail());
        assertTrue(known.find(), unknown.detail());
        return new TreeSet<>(Arrays.asList(known.group(1).split(", ")));
    }

    private static String unknownIn(String line) {
        SmallDesign whole = new SmallDesign().plus("""
                [selection]
                [estimate]
                [height]
                [plan]
                [tract]
                [layout]
                [simulate]
                [output]
                [audit]
                [progress]
                [remeasurement]
                [instrument]
                [[crew]]
                [[stratum]]
                [logs]
                [[product]]
                [prices]
                [[price]]
                """);
        return whole.with(line + "\n", line + "\nqqqqqqqqqqqq = 1\n").text();
    }

    @ParameterizedTest
    @CsvSource({
        "[cruise]",
        "[[stratum]]",
        "[selection]",
        "[estimate]",
        "[[tally]]",
        "[species.CODE]",
        "[height]",
        "[logs]",
        "[[product]]",
        "[prices]",
        "[[price]]",
        "[plan]",
        "[tract]",
        "[layout]",
        "[simulate]",
        "[[crew]]",
        "[audit]",
        "[progress]",
        "[remeasurement]",
        "[instrument]",
        "[output]"
    })
    void everyKeyIsDocumentedWhereItStands(String table) throws IOException {
        TreeSet<String> known = known(unknownIn(table.replace("CODE", "PSME")));
        if (table.equals("[[tally]]")) {
            known.remove("columns");
            known.addAll(known(unknownIn("[tally.columns]")));
        }
        if (table.equals("[selection]")) {
            known.remove("cut");
            known.add("[[selection.cut]]");
            String cut = "[selection]\n[[selection.cut]]\nqqqqqqqqqqqq = 1";
            known(new SmallDesign().plus(cut).text()).forEach(k -> known.add("cut." + k));
        }
        if (table.equals("[plan]")) {
            known.remove("kinds");
            known.add("[plan.kinds]");
            String kinds = "[plan]\n[plan.kinds]\nqqqqqqqqqqqq = 1";
            known(new SmallDesign().plus(kinds).text()).forEach(k -> known.add("kinds." + k));
            for (String part : List.of("cost", "cluster", "two_stage", "double", "count", "threep")) {
                known.remove(part);
                known.add("[plan." + part + "]");
                String keys = "[plan]\n[plan." + part + "]\nqqqqqqqqqqqq = 1";
                known(new SmallDesign().plus(keys).text()).forEach(k -> known.add(part + "." + k));
            }
            known.remove("target");
            known.add("[[plan.target]]");
            String target = "[plan]\n[[plan.target]]\nqqqqqqqqqqqq = 1";
            known(new SmallDesign().plus(target).text()).forEach(k -> known.add("target." + k));
            known.remove("kinds.columns");
            known.add("[plan.kinds.columns]");
            String columns = "[plan]\n[plan.kinds]\nstem_map = \"m.csv\"\n[plan.kinds.columns]\nqqqqqqqqqqqq = 1";
            known(new SmallDesign().plus(columns).text()).forEach(k -> known.add("columns." + k));
        }
        if (table.equals("[estimate]")) {
            known.remove("post_stratum");
            known.add("[[estimate.post_stratum]]");
            String group = "[estimate]\n[[estimate.post_stratum]]\nqqqqqqqqqqqq = 1";
            known(new SmallDesign().plus(group).text()).forEach(k -> known.add("post_stratum." + k));
        }
        assertEquals(known, documented(section(table)));
    }

    /** Estimators and variances stand in the README by the names that designs use, each variance with its estimator. */
    @Test
    void everyEstimatorIsDocumentedWithItsVariances() throws IOException {
        String section = section("[estimate]");
        for (Estimator estimator : Estimator.values()) {
            List<String> rows = section.lines()
                    .filter(l -> l.startsWith("| \"" + estimator.id() + "\" |"))
                    .toList();
            assertEquals(1, rows.size(), estimator.id());
            String cell = rows.get(0).split("\\|")[4];
            List<String> named = Pattern.compile("\"([a-z0-9_]+)\"")
                    .matcher(cell)
                    .results()
                    .map(m -> m.group(1))
                    .toList();
            assertEquals(estimator.variances().stream().map(VarianceForm::id).toList(), named, estimator.id());
        }
    }

    /** Keys that a table knows under any of its forms. */
    private TreeSet<String> knownInForms(String table, Stream<String> forms) {
        TreeSet<String> known = new TreeSet<>();
        forms.forEach(form -> known.addAll(known(new SmallDesign()
                .plus(table + "\nqqqqqqqqqqqq = 1\nform = \"" + form + "\"")
                .text())));
        return known;
    }

    @ParameterizedTest
    @ValueSource(strings = {"[volume.CODE]", "[board_feet.CODE]"})
    void keysOfAllFormsOfVolumeEquationAreDocumented(String table) throws IOException {
        Stream<String> forms = Stream.of(VolumeForm.values()).map(VolumeForm::id);
        assertEquals(knownInForms(table.replace("CODE", "PSME"), forms), documented(section(table)));
        for (VolumeForm form : VolumeForm.values()) {
            assertTrue(section(table).contains("\n| " + form.id() + " | "), form.id());
        }
    }

    @Test
    void keysOfWeightsAreDocumented() throws IOException {
        Stream<String> forms = Stream.of(BiomassSpec.Form.values()).map(BiomassSpec.Form::id);
        assertEquals(knownInForms("[biomass.PSME]", forms), documented(section("[biomass.CODE]")));
        for (String table : List.of("[green_weight.CODE]", "[carbon]")) {
            String unknown = "\n" + table.replace("CODE", "PSME") + "\nqqqqqqqqqqqq = 1";
            assertEquals(known(new SmallDesign().plus(unknown).text()), documented(section(table)));
        }
    }

    @Test
    void keysOfAllKindsOfPlotAreDocumented() throws IOException {
        String plot = "[plot]\nqqqqqqqqqqqq = 1\n";
        TreeSet<String> known = new TreeSet<>();
        for (String kind : List.of("fixed", "point", "nested", "strip", "complete")) {
            known.addAll(known(new SmallDesign()
                    .with("[plot]\n", plot)
                    .with("\"fixed\"", '"' + kind + '"')
                    .text()));
        }
        known.remove("ring");
        known.add("[[plot.ring]]");
        SmallDesign nested = new SmallDesign().with("\"fixed\"", "\"nested\"");
        known(nested.plus("[[plot.ring]]\nqqqqqqqqqqqq = 1").text()).forEach(k -> known.add("ring." + k));
        assertEquals(known, documented(section("[plot]")));
    }

    @Test
    void keysOfAnEstateAreDocumented() throws IOException {
        TreeSet<String> known =
                known(new SmallDesign().plus("[estate]\nqqqqqqqqqqqq = 1").text());
        known.remove("columns");
        known.add("[estate.columns]");
        String columns = "[estate]\n[estate.columns]\nqqqqqqqqqqqq = 1";
        known(new SmallDesign().plus(columns).text()).forEach(k -> known.add("columns." + k));
        assertEquals(known, documented(section("[estate]")));
    }

    @Test
    void keysOfAllFormsOfStemAreDocumented() throws IOException {
        TreeSet<String> known = new TreeSet<>();
        for (String form : List.of("ormerod", "kozak_1969", "form_class")) {
            known.addAll(known(new SmallDesign()
                    .plus("[taper.PSME]\nqqqqqqqqqqqq = 1\nform = \"" + form + '"')
                    .text()));
        }
        known.remove("bark");
        known.add("[taper.CODE.bark]");
        String bark = "[taper.PSME]\nform = \"ormerod\"\n[taper.PSME.bark]\nqqqqqqqqqqqq = 1";
        known(new SmallDesign().plus(bark).text()).forEach(k -> known.add("bark." + k));
        assertEquals(known, documented(section("[taper.CODE]")));
    }

    @Test
    void topLevelKnowsTheTablesThatAreDocumented() throws IOException {
        TreeSet<String> known = known("qqqqqqqqqqqq = 1\n" + SmallDesign.TEXT);
        known.remove("schema");
        TreeSet<String> tables = sections().keySet().stream()
                .flatMap(h -> CODE.matcher(h).results().map(m -> m.group(1)))
                .filter(t -> t.startsWith("["))
                .map(t -> t.replaceAll("[\\[\\]]", "").replace(".CODE", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(known, tables);
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void everyRuleWithAChoiceIsDocumentedWithItsPolicies(Rule rule) throws IOException {
        List<String> rows = section("[policy]")
                .lines()
                .filter(l -> l.startsWith("| `" + rule.code() + "` |"))
                .toList();
        if (rule.allowed().size() == 1) {
            assertEquals(List.of(), rows, "a rule without a choice");
            return;
        }
        assertEquals(1, rows.size());
        String cell = rows.get(0).split("\\|")[3];
        for (Policy policy : Policy.values()) {
            boolean named = Stream.of(cell.split("\\W+")).anyMatch(policy.id()::equals);
            assertEquals(rule.allowed().contains(policy), named, policy + " in " + cell);
        }
    }

    @Test
    void smallestDesignOfTheReadmeIsInOrder() throws IOException {
        String readme = Files.readString(Path.of("designs/README.md"));
        int from = readme.indexOf("```toml\n") + 8;
        String example = readme.substring(from, readme.indexOf("```", from));
        assertEquals(List.of(), new SmallDesign(example).problems(folder));
    }
}
