package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** The answer in a few lines of plain text, for the console. */
public final class ConsoleSummary {
    private ConsoleSummary() {}

    /** How much, how sure, is it enough. */
    public static List<String> of(CruiseResult result) {
        List<String> lines = new ArrayList<>();
        lines.add(result.design().name() + ": "
                + Headline.count(result.tally().plots().size(), "plot") + ", "
                + Headline.count(result.trees().size(), "tree"));
        for (Basis basis : List.of(Basis.TOTAL, Basis.PER_AREA)) {
            result.estimate()
                    .row(EstimateRow.ALL, EstimateRow.ALL, result.design().targetAttribute(), basis)
                    .ifPresent(row -> lines.add(line(result, row)));
        }
        for (Attribute attribute : List.of(Attribute.NET_BOARD_FEET, Attribute.NET_LOG_VOLUME, Attribute.VALUE)) {
            result.estimate()
                    .row(EstimateRow.ALL, EstimateRow.ALL, attribute, Basis.TOTAL)
                    .filter(row -> attribute != result.design().targetAttribute())
                    .ifPresent(row -> lines.add(line(result, row)));
        }
        PlotsNeeded target = result.estimate().needed().get(0);
        lines.add(Headline.verdict(target) + ": " + Headline.achieved(result, target));
        lines.add(Headline.more(target));
        result.budgets().stream().limit(1).forEach(b -> {
            lines.addAll(List.of(BudgetSection.summary(b), b.advice()));
            if (!b.offsets().isEmpty()) {
                lines.add(b.offsets());
            }
        });
        lines.addAll(ThreePSection.line(result));
        result.estimate().notes().forEach(lines::add);
        // consoles get plain spaces
        return lines.stream().map(line -> line.replace('\u00a0', ' ')).toList();
    }

    private static String line(CruiseResult result, EstimateRow row) {
        RowText text = RowText.of(result.design(), row, result.design().units());
        String what = row.attribute().label() + " " + text.estimate();
        String standing = Facts.standing(result, row);
        String warning =
                standing.isEmpty() ? "" : "  [" + Wording.standsBehind(row.attribute()) + ": " + standing + "]";
        return RowText.hasLimits(row)
                ? what + ", " + Wording.confidence(result.estimate().confidence()) + " limits " + text.limits()
                        + warning
                : what + ", no limits: " + row.reason() + warning;
    }
}
