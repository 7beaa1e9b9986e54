package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;
import quadmean.design.EquationLibrary.Entry;
import quadmean.model.BiomassSpec;
import quadmean.model.Standing;
import quadmean.model.VolumeSpec;

class EquationLibraryTest {
    private static final EquationLibrary LIBRARY = EquationLibrary.shipped();

    /** volume-equations.csv has 44 sets; three red oak fits, three polynomials, ten groups and eight species besides. */
    @Test
    void everySetIsThereOnceWithAllThatIsSaidOfIt() {
        assertEquals(44 + 3 + 3 + 10 + 8, LIBRARY.entries().size());
        Set<String> names = new HashSet<>();
        for (Entry e : LIBRARY.entries()) {
            assertTrue(names.add(e.name()), e.name());
            assertTrue(e.name().matches("[a-z-]+-\\d{4}/[a-z-]+"), e.name());
            assertEquals(e.name(), e.equation().library());
            assertFalse((e.species() + e.region() + e.gives()).isBlank());
        }
    }

    /** What nobody looked up says so in its standing, and what is verified says how. */
    @Test
    void onlyFitsToDataAtHandAreVerified() {
        for (Entry e : LIBRARY.entries()) {
            String source = e.equation().provenance().source();
            boolean fitted = source.contains("refitted to the data");
            assertEquals(
                    fitted ? Standing.VERIFIED : Standing.FROM_MEMORY,
                    e.equation().provenance().standing());
            assertTrue(fitted || source.contains("not looked up"), source);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "honer-1967, 19",
        "browne-1962, 20",
        "BRITISH columbia douglas-fir, 3",
        "verified, 5",
        "doyle, 1",
        "zebra wood, 0",
        "'', 68"
    })
    void searchFindsEquationsThatHaveEveryWord(String text, int count) {
        assertEquals(count, LIBRARY.search(text).size());
    }

    @Test
    void nearNamesAreOfTheKindThatIsWanted() {
        List<String> volume = LIBRARY.near("browne/douglas-fir", VolumeSpec.class);
        assertEquals(3, volume.size());
        assertTrue(volume.stream().allMatch(n -> n.contains("douglas-fir")), volume.toString());
        List<String> biomass = LIBRARY.near("douglas-fir", BiomassSpec.class);
        assertEquals("jenkins-2003/douglas-fir", biomass.get(0));
        assertEquals(List.of(), LIBRARY.near("?", VolumeSpec.class));
    }

    /** Whatever key is taken out of the file, it is missed: nothing has a default but what may be left unsaid. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "kind",
                "gives",
                "region",
                "species",
                "form",
                "a",
                "b",
                "c",
                "d",
                "e",
                "f",
                "log_base",
                "dbh_unit",
                "height_unit",
                "volume_unit",
                "source",
                "standing",
                "checked",
                "a0",
                "c2",
                "percent_per_point",
                "table_form_class",
                "form_class",
                "b0",
                "b1",
                "powers",
                "component"
            })
    void nothingIsSilentlyDefaulted(String key) throws IOException {
        String text = text();
        String without = text.replaceFirst("(?m)^" + key + " = .*\n", "");
        assertFalse(text.equals(without), key);
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> read(without));
        assertTrue(e.getMessage().contains("." + key + "\" is missing"), e.getMessage());
    }

    @Test
    void unknownKeysAndBrokenFilesAreDefects() throws IOException {
        String text = text();
        assertThrows(IllegalStateException.class, () -> read(text + "colour = 1\n"));
        assertThrows(IllegalStateException.class, () -> read(text + "= 1\n"));
        assertEquals(LIBRARY.entries(), read(text).entries());
    }

    private static EquationLibrary read(String text) {
        return EquationLibrary.of(Toml.parse(text), "equations.toml");
    }

    private static String text() throws IOException {
        try (InputStream in = EquationLibrary.class.getResourceAsStream("equations.toml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
