package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
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
        EquationBook book = EquationBook.of(
                Map.of("*", taper),
                GROUPS,
                species -> species.equals("GF") ? Optional.of((d, h) -> 1.5) : Optional.empty());
        assertEquals(1.5, book.find("GF").orElseThrow().volumeM3(30, 20));
        assertEquals(Double.NaN, book.find("SF").orElseThrow().volumeM3(30, 20));
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
