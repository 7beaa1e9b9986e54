package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tomlj.Toml;
import quadmean.model.GreenWeight;
import quadmean.model.Problem;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Where tables on logs, prices, board feet and weight go against each other. */
class WoodChecksTest {
    private static final String LOGS = """
            [taper."*"]
            form = "ormerod"
            p = 0.7
            source = "S"
            standing = "invented"
            [logs]
            %s
            [[product]]
            code = "saw"
            lengths = [16]
            min_small_end = 6
            """;

    private static final String PRICE = """
            [prices]
            currency = "USD"
            source = "S"
            standing = "invented"
            [[price]]
            product = "saw"
            amount = 30
            %s
            """;

    private static final Map<String, SpeciesEntry> SPECIES =
            Map.of("DF", species("DF", "firs"), "PP", species("PP", ""));

    private static SpeciesEntry species(String code, String group) {
        return new SpeciesEntry(code, code, group, List.of(), null);
    }

    private static List<String> problems(
            String text,
            UnitSystem units,
            Map<String, VolumeSpec> boardFeet,
            List<String> weights,
            Map<String, SpeciesEntry> species) {
        ProblemLog log = new ProblemLog("design.toml");
        Section root = Section.root(Toml.parse(text), log);
        LogsParser logs = new LogsParser(root, species, units);
        Map<String, GreenWeight> green = new LinkedHashMap<>();
        Provenance test = new Provenance("test", Standing.INVENTED);
        weights.forEach(w -> green.put(w, new GreenWeight(w, 800, test)));
        WoodSettings wood = new WoodSettings(
                boardFeet, logs.tapers(), logs.settings(), logs.prices(), Map.of(), green, java.util.Optional.empty());
        WoodChecks.check(root, wood, species, units);
        List<String> found = new ArrayList<>();
        for (Problem p : log.problems()) {
            found.add(p.column() + ": " + p.detail());
        }
        return found;
    }

    private static void only(List<String> problems, String key, String words) {
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).startsWith(key + ": ") && problems.get(0).contains(words), problems.toString());
    }

    private static Map<String, VolumeSpec> equation() {
        VolumeSpec spec = new VolumeSpec(
                "*",
                VolumeForm.COMBINED_VARIABLE,
                List.of(0.0, 0.01),
                VolumeSpec.LogBase.E,
                0,
                Unit.INCH,
                Unit.FOOT,
                Unit.CUBIC_FOOT,
                "S",
                Standing.INVENTED);
        return Map.of("*", spec);
    }

    private static List<String> logs(String line, UnitSystem units, Map<String, VolumeSpec> boardFeet) {
        return problems(LOGS.replace("%s", line), units, boardFeet, List.of(), SPECIES);
    }

    @Test
    void boardFeetHaveOneOrigin() {
        String rule = "rule = \"doyle\"";
        only(logs(rule, UnitSystem.US, equation()), "logs.rule", "take logs.rule out");
        only(logs("", UnitSystem.US, Map.of()), "logs.rule", "[board_feet.CODE]");
        assertEquals(List.of(), logs("", UnitSystem.US, equation()));
        assertEquals(List.of(), logs("", UnitSystem.METRIC, Map.of()));
        assertEquals(List.of(), logs(rule, UnitSystem.METRIC, Map.of()));
    }

    @Test
    void aScalingConventionNeedsARule() {
        only(logs("figures = \"as_tabled\"", UnitSystem.METRIC, Map.of()), "logs.figures", "name the rule too");
    }

    @Test
    void aPricePerThousandBoardFeetNeedsARule() {
        String text = LOGS.replace("%s", "") + PRICE.replace("%s", "per = \"mbf\"");
        only(problems(text, UnitSystem.METRIC, Map.of(), List.of(), SPECIES), "price.per", "name it in logs.rule");
    }

    /** Which green weights serve a price by weight; {@code lacking} is what the message asks for. */
    @ParameterizedTest
    @CsvSource({
        "*, '', 'DF, PP'",
        "*, DF, PP",
        "*, firs, PP",
        "*, *, ''",
        "firs, '', DF",
        "firs, DF, ''",
        "PP, DF, PP",
        "PP, PP, ''"
    })
    void aPriceByWeightNeedsTheWeightOfItsSpecies(String priced, String weighed, String lacking) {
        String text = LOGS.replace("%s", "") + PRICE.replace("%s", "per = \"t\"\nspecies = \"" + priced + "\"");
        List<String> weights = weighed.isEmpty() ? List.of() : List.of(weighed);
        List<String> found = problems(text, UnitSystem.METRIC, Map.of(), weights, SPECIES);
        if (lacking.isEmpty()) {
            assertEquals(List.of(), found);
        } else {
            only(found, "price.per", "[green_weight.CODE] for " + lacking + " (");
        }
    }

    @Test
    void withoutSpeciesTheWeightIsThatForAll() {
        String text = LOGS.replace("%s", "") + PRICE.replace("%s", "per = \"ton\"");
        only(problems(text, UnitSystem.METRIC, Map.of(), List.of(), Map.of()), "price.per", "for \"*\"");
    }

    @Test
    void aStemProfileThatNothingUsesIsSaid() {
        String taper = LOGS.substring(0, LOGS.indexOf("[logs]"));
        List<String> idle = problems(taper, UnitSystem.US, Map.of(), List.of(), SPECIES);
        assertEquals(1, idle.size(), idle.toString());
        assertTrue(idle.get(0).contains("taper") && idle.get(0).contains("add [logs]"), idle.toString());
        String volume = taper + "[volume.DF]\nform = \"taper\"\n";
        assertEquals(List.of(), problems(volume, UnitSystem.US, Map.of(), List.of(), SPECIES));
    }
}
