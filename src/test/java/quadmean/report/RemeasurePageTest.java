package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import quadmean.chart.SampleCruise;

class RemeasurePageTest {

    @Test
    void theSheetHasTreesReasonsLegendAndCautions() throws IOException {
        String page = Written.text(RemeasurePage.of(SampleCruise.us()));
        assertTrue(page.contains("Trees to measure again"), page);
        assertTrue(page.contains("<dt>distance-short</dt>") && page.contains("too near &lt;the&gt; tree"), page);
        assertTrue(page.contains("12 m from the centre"), page);
        assertTrue(page.contains("New reading") && page.contains("Safety in the woods"), page);
    }

    @Test
    void withoutDoubtsItSaysSo() throws IOException {
        assertTrue(Written.text(RemeasurePage.of(SampleCruise.empty())).contains("No tree needs measuring again."));
        assertTrue(RemeasureSection.markup(SampleCruise.empty()).contains("No reading is in doubt."));
    }

    @Test
    void theFileHasBothUnitsAndEmptyCellsForWhatIsUnknown() throws IOException {
        String[] lines = Written.text(RemeasureTable.csv(SampleCruise.us())).split("\n");
        assertEquals(3, lines.length);
        // 2.5 m are 8.2021 ft, 120 m³ are 4237.76 ft³
        assertTrue(lines[1].contains(",2.5,8.2020997375") && lines[1].contains(",120.0,4237.76"), lines[1]);
        assertTrue(lines[2].contains(",,,,,"), lines[2]);
        assertFalse(lines[2].contains("NaN"), lines[2]);
    }
}
