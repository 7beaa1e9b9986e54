package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.audit.CheckCruise;

/** A check cruise in a few lines of plain text, for the console. */
public final class AuditSummary {
    private AuditSummary() {}

    /** Verdict with its reasons, findings, effect. */
    public static List<String> of(CheckCruise check) {
        AuditText text = new AuditText(check);
        List<String> lines = new ArrayList<>();
        lines.add(check.cruise().design().name() + ": "
                + Headline.count(check.plots().size(), "check plot") + ", "
                + Headline.count(
                        check.matches().stream().filter(m -> m.isPair()).count(), "tree") + " matched");
        lines.add("Check cruise: " + check.verdict().label());
        check.reasons().forEach(r -> lines.add("  " + r));
        lines.add(Headline.count(check.findings().size(), "finding"));
        check.findings().forEach(f -> lines.add("  " + f.kind().label() + ": " + f.where() + ": " + f.detail()));
        lines.add(text.valueSentence());
        lines.add(text.equivalenceSentence());
        lines.add(text.standSentence());
        lines.add(text.standing());
        lines.addAll(check.notes());
        return lines.stream()
                .filter(l -> !l.isEmpty())
                .map(l -> l.replace('\u00a0', ' '))
                .toList();
    }
}
