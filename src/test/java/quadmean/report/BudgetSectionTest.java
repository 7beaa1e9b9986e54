package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.chart.BudgetChart;
import quadmean.chart.Picture;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.ErrorBudget;
import quadmean.cruise.ErrorPart;
import quadmean.cruise.Remedy;
import quadmean.support.ShippedCruises;

/** Error budgets on the page, as a chart and in JSON. */
class BudgetSectionTest {
    private static CruiseResult result(String design) {
        return Objects.requireNonNull(ShippedCruises.run(design).result());
    }

    /** Every number of the budget, unrounded, comes back from JSON. */
    @ParameterizedTest
    @ValueSource(strings = {"demo", "cluster", "count-points"})
    void jsonHoldsTheBudget(String design) {
        CruiseResult result = result(design);
        JsonNode list = JsonBudget.of(result);
        assertEquals(result.budgets().size(), list.size());
        for (int i = 0; i < list.size(); i++) {
            ErrorBudget budget = result.budgets().get(i);
            JsonNode node = list.get(i);
            assertEquals(budget.attribute().id(), node.get("attribute").asText());
            assertEquals(budget.totalSe(), node.get("totalSe").asDouble());
            assertEquals(budget.df(), node.get("df").asDouble());
            assertEquals(
                    budget.totalErrorPercent(), node.get("totalErrorPercent").asDouble());
            assertEquals(
                    budget.gain(Remedy.MORE_HEIGHTS),
                    node.get("shareOfVarianceTakenOff").get("more_heights").asDouble());
            for (int k = 0; k < budget.parts().size(); k++) {
                ErrorPart part = budget.parts().get(k);
                JsonNode entry = node.get("parts").get(k);
                assertEquals(
                        part.kind().name().toLowerCase(java.util.Locale.ROOT),
                        entry.get("kind").asText());
                assertEquals(
                        Double.isNaN(part.variance()), entry.get("variance").isNull(), part.words());
                if (!Double.isNaN(part.variance())) {
                    assertEquals(part.variance(), entry.get("variance").asDouble());
                }
            }
        }
    }

    /** Bars are as long as their shares: the width of a bar over that of another is the share over the other's. */
    @ParameterizedTest
    @ValueSource(strings = {"demo", "count-points"})
    void barsAreAsLongAsTheirShares(String design) {
        ErrorBudget budget = result(design).budgets().get(0);
        Picture picture = BudgetChart.picture(budget);
        List<Double> widths = java.util.regex.Pattern.compile("<rect x=\"10\" y=\"\\d+\" width=\"([0-9.]+)\"")
                .matcher(picture.svg())
                .results()
                .map(m -> Double.valueOf(m.group(1)))
                .toList();
        List<ErrorPart> known =
                budget.parts().stream().filter(p -> !Double.isNaN(p.variance())).toList();
        assertEquals(known.size(), widths.size());
        double widest = known.stream().mapToDouble(budget::share).max().orElseThrow();
        for (int i = 0; i < widths.size(); i++) {
            double share = budget.share(known.get(i));
            assertEquals(Math.max(1, 490 * share / Math.max(1, widest)), widths.get(i), 0.051, "bar " + i);
            assertTrue(picture.svg().contains(quadmean.chart.Wording.capital(budget.label(known.get(i)))));
        }
        assertTrue(picture.svg().startsWith("<svg") && picture.svg().endsWith("</svg>"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cluster | twice as many clusters would take | Between clusters",
                "double-sampling | listed and visited alike | Between plots",
                "regression | as they cover more of the tract | Between plots",
                "threep | No error budget: 3P sampling weighs | 3P",
                "complete | No error budget: every tree was tallied | sampling error"
            })
    void thePageSaysWhatTheBudgetRestsOn(String design, String words, String more) {
        String page = BudgetSection.markup(result(design));
        assertTrue(page.contains(words), page);
        assertTrue(page.contains(more), page);
    }
}
