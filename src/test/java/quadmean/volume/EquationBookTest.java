package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
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
