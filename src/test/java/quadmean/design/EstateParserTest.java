package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** The unit of the areas in a table of stands: an area in the other unit would be off by 2.47 and never show. */
class EstateParserTest {
    @TempDir
    Path folder;

    private DesignReading read(String units, String area) throws IOException {
        return DesignReader.read(Files.writeString(folder.resolve("e.toml"), """
                schema = 1
                [cruise]
                name = "e"
                units = "%s"
                [plot]
                kind = "fixed"
                area = 0.1
                [estate]
                stands = "s.csv"
                [estate.columns]
                stand = "stand"
                area = %s
                [[tally]]
                file = "t.csv"
                [tally.columns]
                stand = "stand"
                plot = "plot"
                species = "species"
                dbh = "dbh_cm"
                """.formatted(units, area)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    us     | "size"                          | ACRE
                    metric | "size"                          | HECTARE
                    us     | "area_ha"                       | HECTARE
                    metric | "Area (acres)"                  | ACRE
                    us     | { name = "size", unit = "ha" }  | HECTARE
                    us     | { name = "size_ha" }            | HECTARE
                    metric | { name = "s_ac", unit = "ac" }  | ACRE
                    """)
    void unitIsTheDesignsOrTheHeaders(String units, String area, Unit unit) throws IOException {
        Design design = Objects.requireNonNull(read(units, area).design());
        assertEquals(unit, design.estate().orElseThrow().areaUnit());
    }

    @Test
    void contradictionIsRefused() throws IOException {
        var problems = read("us", "{ name = \"area_ha\", unit = \"ac\" }").problems();
        assertEquals(1, problems.size());
        assertEquals(Rule.DESIGN_VALUE, problems.get(0).rule());
        assertTrue(problems.get(0).detail().contains("is in ha by its name, and in ac by the design"));
    }
}
