package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstateSpread;
import quadmean.estimate.EstimateRow;
import quadmean.units.Basis;

/** An estate in a few lines of plain text, for the console. */
public final class EstateSummary {
    private EstateSummary() {}

    /**
     * How much, how sure, is it enough, and of what ground.
     *
     * @param spread how the stands differ in the attribute of the target
     */
    public static List<String> of(EstateResult result, EstateSpread spread) {
        List<String> lines = new ArrayList<>();
        lines.add(result.design().name() + ": " + EstateHeadline.where(result));
        Stream.of(Basis.TOTAL, Basis.PER_AREA)
                .map(basis -> line(result, EstateHeadline.row(result, basis)))
                .forEach(lines::add);
        lines.add(Headline.verdict(EstateHeadline.verdict(result)) + ": " + EstateHeadline.achieved(result));
        lines.addAll(EstateExtent.sentences(result));
        if (spread.known() > 0) {
            lines.add("Stand by stand, half of " + Headline.count(spread.known(), "sampling error") + " lie below "
                    + Rounding.percent(spread.medianErrorPercent()) + ".");
        }
        lines.addAll(result.notes());
        // consoles get plain spaces
        return lines.stream().map(line -> line.replace('\u00a0', ' ')).toList();
    }

    private static String line(EstateResult result, EstimateRow row) {
        Design design = result.design();
        RowText text = RowText.of(design, row, design.units());
        String standing = Wording.standing(result.used(), row.attribute(), row.species());
        String warning =
                standing.isEmpty() ? "" : "  [" + Wording.standsBehind(row.attribute()) + ": " + standing + "]";
        String what = row.attribute().label() + " " + text.estimate();
        return RowText.hasLimits(row)
                ? what + ", " + Wording.confidence(result.estimate().confidence()) + " limits " + text.limits()
                        + warning
                : what + ", no limits: " + row.reason() + warning;
    }
}
