package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.LogRule;
import quadmean.model.Scaling.Figures;
import quadmean.model.Standing;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Whole tables: 6 to 30 in by even lengths of 8 to 20 ft, from log-rule-tables.csv. */
class LogRuleTablesTest {
    /** Cells of a public Doyle scale table. */
    static Stream<NamedCsvRecord> printedDoyle() {
        return rows("Doyle").filter(r -> r.getField("status").equals("confirmed"));
    }

    @ParameterizedTest
    @MethodSource("printedDoyle")
    void eachPrintedCellOfTheDoyleTable(NamedCsvRecord row) {
        double printed = ReferenceFiles.number(row, "published_seen_bf");
        assertEquals(printed, figure(LogRule.DOYLE, row, Figures.AS_TABLED).boardFeet());
    }

    @Test
    void eightyFourCellsOfTheDoyleTableWereSeen() {
        assertEquals(84, printedDoyle().count());
    }

    /** Computed from the formulas, apart from this program; halves up, International to the nearest 5. */
    @ParameterizedTest
    @CsvSource({"DOYLE, Doyle", "SCRIBNER_FORMULA, Scribner formula", "INTERNATIONAL_QUARTER, International 1/4-inch"})
    void all175CellsOfTheFormulas(LogRule rule, String name) {
        List<NamedCsvRecord> rows = rows(name).toList();
        assertEquals(175, rows.size());
        for (NamedCsvRecord row : rows) {
            double unrounded = figure(rule, row, Figures.UNROUNDED).boardFeet();
            Tolerance.printed(3).check(ReferenceFiles.number(row, "unrounded_bf"), unrounded, row.toString());
            double tabular = ReferenceFiles.number(row, "tabular_bf");
            assertEquals(tabular, figure(rule, row, Figures.AS_TABLED).boardFeet(), row::toString);
        }
    }

    /** The table that ships against the reference table, cell by cell, with what is known of each. */
    @Test
    void all175CellsOfDecimalC() {
        List<NamedCsvRecord> rows = rows("Scribner Decimal C").toList();
        assertEquals(175, rows.size());
        for (NamedCsvRecord row : rows) {
            RuleFigure figure = figure(LogRule.SCRIBNER_DECIMAL_C, row, Figures.AS_TABLED);
            boolean seen = row.getField("status").equals("confirmed");
            double boardFeet = ReferenceFiles.number(row, "tabular_bf");
            Standing standing = seen ? Standing.VERIFIED : Standing.FROM_MEMORY;
            assertEquals(new RuleFigure(boardFeet, Coverage.TABLE, standing), figure, row::toString);
        }
    }

    /** Cells seen in print (Bailey, Farm and Garden Rule-Book). */
    @ParameterizedTest
    @CsvSource({"6, 8, 5", "10, 8, 30", "10, 10, 30", "10, 12, 30", "30, 16, 660"})
    void theFiveCellsOfDecimalCThatWereSeenInPrint(double inches, double feet, double printed) {
        RuleFigure figure = DecimalC.table().figure(inches, feet, Figures.AS_TABLED);
        assertEquals(new RuleFigure(printed, Coverage.TABLE, Standing.VERIFIED), figure);
    }

    private static RuleFigure figure(LogRule rule, NamedCsvRecord row, Figures figures) {
        double inches = ReferenceFiles.number(row, "small_end_dib_in");
        double feet = ReferenceFiles.number(row, "length_ft");
        return BoardFootRule.of(rule).figure(inches, feet, figures);
    }

    private static Stream<NamedCsvRecord> rows(String rule) {
        return ReferenceFiles.csv("log-rule-tables.csv").stream()
                .filter(r -> r.getField("rule").equals(rule));
    }
}
