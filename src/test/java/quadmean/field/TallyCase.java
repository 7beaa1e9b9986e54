package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Tally;

/**
 * A case of {@code src/test/resources/field}: a tally, how to read it, and what is expected.
 *
 * @param id what the case shows
 * @param settings lines of settings, such as {@code policy: dbh-missing = drop}
 * @param csv the tally
 * @param expected lines of what is expected
 */
record TallyCase(String id, List<String> settings, String csv, List<String> expected) {
    private static final List<String> SETTINGS = List.of("design: ", "policy: ", "tally: ", "column: ");

    static Stream<TallyCase> load(String resource) {
        try (InputStream in = TallyCase.class.getResourceAsStream("/field/" + resource)) {
            assertNotNull(in, resource);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Stream.of(text.split("\n## ")).skip(1).map(TallyCase::parse);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TallyCase parse(String text) {
        List<String> settings = new ArrayList<>();
        List<String> csv = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (String line : text.stripTrailing().lines().skip(1).toList()) {
            if (line.startsWith("> ")) {
                expected.add(line.substring(2));
            } else if (SETTINGS.stream().anyMatch(line::startsWith)) {
                settings.add(line);
            } else {
                csv.add(line);
            }
        }
        return new TallyCase(text.lines().findFirst().orElse(""), settings, String.join("\n", csv) + "\n", expected);
    }

    private String values(String setting, String prefix, String suffix) {
        return settings.stream()
                .filter(s -> s.startsWith(setting))
                .map(s -> prefix + s.substring(setting.length()) + suffix + "\n")
                .collect(Collectors.joining());
    }

    String designText() {
        String more = values("design: ", "", "");
        String head = "schema = 1\n[cruise]\nname = \"Case\"\nunits = \"metric\"\n";
        String area = more.contains("[[stratum]]") ? "[selection]\nmethod = \"stratified\"\n" : "area = 10\n";
        String plot = more.contains("[plot]") ? "" : "[plot]\nkind = \"fixed\"\narea = 0.1\n";
        String tally = "[[tally]]\nfile = \"t.csv\"\n" + values("tally: ", "", "") + "[tally.columns]\n" + columns();
        String policies = values("policy: ", "", "\"").replace(" = ", " = \"");
        return head + area + plot + tally + (policies.isEmpty() ? "" : "[policy]\n" + policies) + more;
    }

    /** Those named by "column: ", then plot, species and dbh (or girth), and of the others those that the header has. */
    private String columns() {
        List<String> header = List.of(csv.lines().findFirst().orElse("").split("[,;\t]"));
        String named = values("column: ", "", "");
        List<String> always = List.of("plot", "species", header.contains("girth") ? "girth" : "dbh");
        return named
                + Stream.of(ColumnRole.values())
                        .filter(r -> always.contains(r.key()) || header.contains(r.key()))
                        .filter(r -> !named.contains(r.key() + " = ")
                                && !(named.contains("girth") && r.key().equals("dbh")))
                        .map(TallyCase::column)
                        .collect(Collectors.joining());
    }

    private static String column(ColumnRole role) {
        boolean thickness = role == ColumnRole.DBH || role == ColumnRole.GIRTH;
        String unit = thickness ? "cm" : role.measure() == ColumnRole.Measure.ANGLE ? "percent" : "m";
        return role.measure().hasUnit()
                ? "%s = { name = \"%s\", unit = \"%s\" }\n".formatted(role.key(), role.key(), unit)
                : "%s = \"%s\"\n".formatted(role.key(), role.key());
    }

    Tally read(Path folder) throws IOException {
        Files.writeString(folder.resolve("t.csv"), csv);
        DesignReading reading = DesignReader.read(Files.writeString(folder.resolve("d.toml"), designText()));
        assertEquals(List.of(), reading.problems(), designText());
        Design design = Objects.requireNonNull(reading.design());
        return TallyReader.read(design);
    }

    /** What came of it, in the words of the case. */
    static List<String> describe(Tally tally) {
        List<String> lines = new ArrayList<>();
        for (Problem p : tally.problems()) {
            lines.add("%s %s line %d %s \"%s\""
                    .formatted(
                            p.rule().code(),
                            p.policy().id(),
                            p.row(),
                            p.column().isEmpty() ? "-" : p.column(),
                            p.value()));
        }
        RowCount rows = tally.rows();
        String plots =
                tally.plots().stream().map(p -> p.id() + "=" + p.trees().size()).collect(Collectors.joining(" "));
        lines.add("rows %d = %d + %d, kept %d; plots %s"
                .formatted(rows.in(), rows.used(), rows.dropped(), rows.kept(), plots.isEmpty() ? "-" : plots));
        return lines;
    }

    @Override
    public String toString() {
        return id;
    }
}
