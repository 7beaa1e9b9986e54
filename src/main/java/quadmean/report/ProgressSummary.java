package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.audit.ProgressReport;
import quadmean.audit.SubsetState;
import quadmean.model.Stratum;

/** A cruise under way in a few lines of plain text, for the console. */
public final class ProgressSummary {
    private ProgressSummary() {}

    /** Plots, estimate, decision, crews. */
    public static List<String> of(ProgressReport report) {
        ProgressText text = new ProgressText(report);
        List<String> lines = new ArrayList<>();
        lines.add(report.design().name() + ": " + text.plots());
        for (Stratum s : report.design().stratumList()) {
            List<String> missing = text.missing(s.code());
            if (!missing.isEmpty()) {
                lines.add("  missing in " + s.code() + ": " + String.join(", ", missing));
            }
        }
        for (SubsetState s : report.subsets()) {
            lines.add("  subset " + s.name() + ": " + s.done() + " of " + s.plots() + (s.isWhole() ? ", whole" : ""));
        }
        lines.add(report.stopping().state().label() + ".");
        lines.addAll(text.stopping());
        lines.add("All plots so far: " + text.estimate());
        lines.add(text.target());
        lines.add(text.standing());
        lines.add(text.caution());
        report.crews()
                .forEach(c -> lines.add("  crew " + c.crew() + ": " + Headline.count(c.plots(), "plot") + ", "
                        + AuditText.signedPercent(c.percent()) + " of the mean"
                        + (Double.isNaN(c.pValue()) ? "" : ", " + AuditText.p(c.pValue()))));
        if (!report.cruise().remeasure().isEmpty()) {
            lines.add("Measure again first: "
                    + String.join(
                            ", ",
                            report.cruise().remeasure().stream()
                                    .limit(5)
                                    .map(r -> r.tree().tree().label())
                                    .toList()));
        }
        return lines.stream()
                .filter(l -> !l.isEmpty())
                .map(l -> l.replace('\u00a0', ' '))
                .toList();
    }
}
