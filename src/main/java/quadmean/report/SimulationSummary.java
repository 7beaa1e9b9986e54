package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.simulate.AttributeOutcome;
import quadmean.simulate.Coverage;
import quadmean.simulate.SimulationResult;
import quadmean.simulate.SimulationStudy;

/** What many cruises of a known forest came to, as plain text for the console. */
public final class SimulationSummary {
    private SimulationSummary() {}

    /** The lines. */
    public static List<String> of(SimulationStudy study) {
        List<String> lines = new ArrayList<>();
        lines.add(study.first().design().name() + ": "
                + Rounding.count(study.first().cruises()) + " cruises of " + study.words());
        lines.addAll(table(study.first()));
        study.beside().forEach(r -> {
            lines.add(r.design().name()
                    + String.format(Locale.ROOT, ", %.1f plots:", r.cost().plots()));
            lines.addAll(table(r));
        });
        study.verdict().forEach(v -> lines.add("  " + v));
        return lines;
    }

    private static List<String> table(SimulationResult result) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "  %-24s %9s %8s %9s %9s  %s",
                "in percent of the truth",
                "bias",
                "+-",
                "true SE",
                "est. SE",
                "limits that held the truth"));
        for (AttributeOutcome a : result.attributes()) {
            List<String> covered = new ArrayList<>();
            for (Coverage c : a.coverages()) {
                covered.add(c.rule().id() + " " + percent("%.1f", 100 * c.share())
                        + (c.intervals() < result.cruises() ? " of " + Rounding.count(c.intervals()) : ""));
            }
            lines.add(String.format(
                    Locale.ROOT,
                    "  %-24s %9s %8s %9s %9s  %s",
                    a.attribute().label(),
                    percent("%+.2f", a.biasPercent()),
                    percent("%.2f", 100 * a.biasError() / a.truth()),
                    percent("%.2f", 100 * a.sd() / a.truth()),
                    percent("%.2f", 100 * a.meanSe() / a.truth()),
                    String.join(", ", covered)));
        }
        return lines;
    }

    private static String percent(String digits, double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, digits + "%%", value) : "-";
    }
}
