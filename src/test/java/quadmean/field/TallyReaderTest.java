package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.Policy;
import quadmean.model.Rule;

/** Tallies held to the rules: the cases are data, in {@code src/test/resources/field}. */
class TallyReaderTest {
    /** Rules that the design file or a later room raises. */
    private static final Set<Rule> OF_OTHER_ROOMS = Set.of(
            Rule.CURVE_FILE, // EstateBrokenTest
            Rule.PLOT_SCATTERED,
            Rule.STAND_TABLE,
            Rule.STAND_UNKNOWN,
            Rule.STAND_WITHOUT_PLOTS,
            Rule.DESIGN_SYNTAX,
            Rule.DESIGN_KEY,
            Rule.DESIGN_TYPE,
            Rule.DESIGN_VALUE,
            Rule.DESIGN_MISSING,
            Rule.STAND_LIST, // CombineCommandTest
            Rule.TREE_UNNUMBERED, // GrowthCommandTest
            Rule.TREE_ABSENT,
            Rule.STEM_MAP, // StemMapReaderTest
            Rule.STEM_MAP_ROW,
            Rule.BOUNDARY_UNREADABLE, // BoundaryReaderTest
            Rule.BOUNDARY_POSITION,
            Rule.BOUNDARY_SHAPE,
            Rule.BOUNDARY_WALK,
            Rule.BOUNDARY_STRATUM,
            Rule.BOUNDARY_OVERLAP,
            Rule.BOUNDARY_AREA,
            Rule.BOUNDARY_ABSURD,
            Rule.BOUNDARY_READ,
            Rule.FELLED_COLUMN, // FelledReaderTest
            Rule.FELLED_VALUE,
            Rule.FELLED_REPEATED,
            Rule.FELLED_UNLIKELY,
            Rule.FELLED_POINT,
            Rule.FELLED_DIFFERS,
            Rule.FELLED_STEM,
            Rule.FELLED_BULGE,
            Rule.FELLED_CUT,
            Rule.FOREST_COLUMN, // SimulateCommandTest
            Rule.FOREST_VALUE,
            Rule.PLOT_FACT_UNUSABLE, // PlotFactsTest
            Rule.STRATUM_ONE_PLOT,
            Rule.CELL_UNUSABLE, // TallyWorkbookTest
            Rule.FORMULA_VALUE,
            Rule.CELLS_MERGED,
            Rule.HEIGHT_OFF_CURVE,
            Rule.DBH_UNLIKELY,
            Rule.RATIO_UNLIKELY,
            Rule.UNIT_SLIP,
            Rule.VOLUME_EQUATION_MISSING);

    @TempDir
    Path folder;

    static Stream<TallyCase> cases() {
        return Stream.of("tally-cases.txt", "stratum-cases.txt", "detail-cases.txt", "format-cases.txt")
                .flatMap(TallyCase::load);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void tallyIsHeldToTheRules(TallyCase c) throws IOException {
        assertEquals(String.join("\n", c.expected()), String.join("\n", TallyCase.describe(c.read(folder))));
    }

    @Test
    void everyRuleOfTheRoomHasACaseForEachPolicy() {
        List<String> expected = cases().flatMap(c -> c.expected().stream()).toList();
        TreeSet<String> without = new TreeSet<>();
        for (Rule rule : Rule.values()) {
            for (Policy policy : rule.allowed()) {
                String start = rule.code() + " " + policy.id() + " ";
                if (!OF_OTHER_ROOMS.contains(rule) && expected.stream().noneMatch(e -> e.startsWith(start))) {
                    without.add(start);
                }
            }
        }
        assertEquals(new TreeSet<>(), without);
    }

    @Test
    void ruleCodesAreUnique() {
        assertEquals(
                Rule.values().length,
                Stream.of(Rule.values()).map(Rule::code).distinct().count());
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void ruleSaysWhatItHoldsAndWhatToDo(Rule rule) {
        assertTrue(rule.code().matches("[a-z]+(-[a-z]+)+"), rule.code());
        assertTrue(!rule.sentence().isBlank() && !rule.remedy().isBlank());
        assertTrue(rule.allowed().contains(Policy.REFUSE), "anything may be refused");
        assertTrue(rule.allowed().contains(rule.defaultPolicy()));
    }
}
