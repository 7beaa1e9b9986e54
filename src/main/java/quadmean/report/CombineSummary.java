package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.audit.Combined;
import quadmean.audit.StandTotal;
import quadmean.chart.Wording;

/** Combined stands in a few lines of plain text, for the console. */
public final class CombineSummary {
    private CombineSummary() {}

    /** Stands, groups, the sum with both errors, notes. */
    public static List<String> of(Combined combined) {
        CombineText text = new CombineText(combined);
        List<String> lines = new ArrayList<>();
        lines.add(Wording.capital(combined.attribute().label()) + " in " + text.unitLabel() + ", "
                + Wording.confidence(combined.confidence()) + " limits with all errors known:");
        combined.totals().forEach(t -> lines.add("  " + line(text, t)));
        combined.groups().forEach(t -> lines.add("  group " + line(text, t)));
        lines.add(line(text, combined.all()));
        combined.all().shared().forEach((source, se) -> {
            if (Double.isFinite(se)) {
                lines.add("  of it " + source.label() + ": standard error " + text.se(combined.all(), se));
            }
        });
        lines.add(text.sharing());
        lines.add(text.standing());
        lines.addAll(combined.notes());
        return lines.stream()
                .filter(l -> !l.isEmpty())
                .map(l -> l.replace('\u00a0', ' '))
                .toList();
    }

    private static String line(CombineText text, StandTotal t) {
        return t.name() + ": " + text.area(t) + ", " + Headline.count(t.plots(), "plot") + ", " + text.totalWithUnit(t)
                + ", sampling error " + text.error(t.sampling()) + ", with all " + text.error(t.withAll()) + ", limits "
                + text.limits(t);
    }
}
