package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

class EquationBookTest {
    private static final Map<String, String> GROUPS = Map.of("GF", "true firs", "SF", "true firs", "DF", "pines");

    @Test
    void aSpeciesHasItsOwnEquationElseItsGroupsElseTheOneForAllTheRest() {
        EquationBook book = book("GF", "true firs", "*");
        assertEquals("GF", code(book, "GF"));
        assertEquals("true firs", code(book, "SF"));
        assertEquals("*", code(book, "DF"));
        assertEquals("*", code(book, "no group"));
    }

    @Test
    void withoutAnEquationThereIsNone() {
        EquationBook book = book("GF");
        assertTrue(book.find("SF").isEmpty());
        assertTrue(book.find("DF").isEmpty());
        assertTrue(book().isEmpty());
    }

    /** Ormerod's profile with p = 1 is a cone from ground to tip: a third of base times height (definition). */
    @Test
    void eachSpeciesBringsItsOwnStemProfile() {
        VolumeSpec taper = new VolumeSpec(
                "*",
                VolumeForm.TAPER,
                List.of(),
                LogBase.E,
                0,
                Unit.CENTIMETRE,
                Unit.METRE,
                Unit.CUBIC_METRE,
                "test",
                Standing.INVENTED);
        TaperSpec cone = new TaperSpec(
                "GF", TaperForm.ORMEROD, List.of(1.0), Optional.empty(), new Provenance("test", Standing.INVENTED));
        ProfileBook profiles = ProfileBook.of(Map.of("GF", cone), GROUPS, 1.3);
        EquationBook book = EquationBook.of(Map.of("*", taper), GROUPS, profiles::stem);
        double base = 0.30 * 20 / (20 - 1.3); // m
        double expected = Math.PI / 4 * base * base * 20 / 3;
        Tolerance.ROUNDING.check(expected, book.find("GF").orElseThrow().volumeM3(30, 20), "m³");
        assertEquals(Double.NaN, book.find("GF").orElseThrow().volumeM3(30, 1.2));
        assertEquals(
                Optional.of(TreeEquation.Gap.NO_PROFILE),
                book.find("SF").orElseThrow().gap(30, 20, Double.NaN));
    }

    @Test
    void anythingThatADesignStatesForCodesIsFoundAlike() {
        CodeBook<Integer> book = CodeBook.of(Map.of("GF", 1, "true firs", 2), GROUPS);
        assertEquals(
                List.of(1, 2),
                List.of(book.find("GF").orElseThrow(), book.find("SF").orElseThrow()));
        assertTrue(book.find("DF").isEmpty());
        assertEquals(2, book.entries().size());
    }

    private static String code(EquationBook book, String species) {
        return book.find(species).orElseThrow().spec().code();
    }

    private static EquationBook book(String... codes) {
        Map<String, VolumeSpec> specs = new java.util.LinkedHashMap<>();
        for (String code : codes) {
            specs.put(
                    code,
                    new VolumeSpec(
                            code,
                            VolumeForm.HONER,
                            List.of(1.0, 300.0),
                            LogBase.E,
                            0,
                            Unit.INCH,
                            Unit.FOOT,
                            Unit.CUBIC_FOOT,
                            "test",
                            Standing.INVENTED));
        }
        return EquationBook.of(specs, GROUPS);
    }
}
