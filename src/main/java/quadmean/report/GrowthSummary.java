package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.audit.AttributeGrowth;
import quadmean.audit.Component;
import quadmean.audit.Growth;
import quadmean.chart.Wording;

/** Growth in a few lines of plain text, for the console. */
public final class GrowthSummary {
    private GrowthSummary() {}

    /** Components of the target with their errors, pairing, findings. */
    public static List<String> of(Growth growth) {
        GrowthText text = new GrowthText(growth);
        AttributeGrowth g = growth.attributes().get(0);
        List<String> lines = new ArrayList<>();
        lines.add(growth.after().design().name() + ": " + Headline.count(growth.plots(), "plot") + " at two dates "
                + Wording.plain(growth.settings().years()) + " years apart");
        lines.add(Wording.capital(g.attribute().label()) + " in " + text.unitLabel(g.attribute())
                + ", standard errors in brackets:");
        for (Component c : text.components()) {
            lines.add("  " + c.label() + ": " + text.mean(g, c) + " (" + text.se(g, c) + ")"
                    + (c.isChange() ? ", " + text.yearly(g, c) + " a year" : ""));
        }
        lines.add(text.pairing(g));
        lines.add(text.standing(g));
        growth.findings().forEach(f -> lines.add("  look again: " + f));
        lines.addAll(growth.notes());
        return lines.stream()
                .filter(l -> !l.isEmpty())
                .map(l -> l.replace('\u00a0', ' '))
                .toList();
    }
}
