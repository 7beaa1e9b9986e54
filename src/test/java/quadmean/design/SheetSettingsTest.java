package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;
import quadmean.units.AngleScale;

class SheetSettingsTest {
    @TempDir
    Path folder;

    @Test
    void whatADesignGetsThatSaysNothing() {
        SheetSettings metric = new SmallDesign().valid(folder).sheets();
        assertEquals(new SheetSettings(Paper.A4, List.of(15.0, 20.0, 25.0, 30.0), null, 5), metric);
        SheetSettings us =
                new SmallDesign().with("\"metric\"", "\"us\"").valid(folder).sheets();
        assertEquals(Paper.LETTER, us.paper());
        assertNull(us.scale());
        // 66 ft are a chain of 20.1168 m by definition
        assertEquals(20.1168, us.distancesM().get(1), 1e-12);
    }

    @Test
    void whatADesignSays() {
        SheetSettings said = new SmallDesign()
                .plus("[output]\nsheet_paper = \"letter\"\nsheet_scale = \"m20\"\nsheet_distances = [30, 20, 20]\n"
                        + "sheet_height_every = 3")
                .valid(folder)
                .sheets();
        assertEquals(new SheetSettings(Paper.LETTER, List.of(20.0, 30.0), AngleScale.METRES_AT_20, 3), said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sheet_paper = \"a5\" | not one of letter, a4",
                "sheet_scale = \"mils\" | not one of percent",
                "sheet_distances = [] | must be a list of numbers",
                "sheet_distances = [20, 0] | a distance from 1 to 500",
                "sheet_distances = [1, 2, 3, 4, 5, 6, 7, 8, 9] | room for 8 distances",
                "sheet_height_every = 0 | a whole number from 1 to 100",
                "sheet_height_every = 2.5 | a whole number from 1 to 100"
            })
    void mistakesAreNamed(String line, String said) {
        List<Problem> problems = new SmallDesign().plus("[output]\n" + line).problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).detail().contains(said), problems.get(0).detail());
    }
}
